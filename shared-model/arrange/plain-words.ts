/** In small letters without accents, stops and brackets, as words of an ensemble are compared. */
export function plainWords(name: string): string {
  return name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replace(/[.’'()]+/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim();
}
