/** File names made from titles: without what some system does not allow in a name. */

const LONGEST = 80;

/** Empty when nothing is left. */
export function fileNameFor(title: string): string {
  const plain = title
    .replace(/[\\/:*?"<>|\p{Cc}]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s.]+/, '');
  return Array.from(plain)
    .slice(0, LONGEST)
    .join('')
    .replace(/[\s.]+$/, '');
}
