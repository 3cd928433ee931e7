/** Which page of a PDF is which page of a part, as it is typed and as it is changed at the pictures. */

export type PageMap = readonly (number | null)[];

/** What is typed for a page of the part that the PDF does not have. */
const NONE = '\u2013';

/** "2-6, \u2013, 8": the PDF's pages in the order of the part's. */
export function pageMapWords(map: PageMap): string {
  const pieces: string[] = [];
  for (let index = 0; index < map.length; index += 1) {
    const first = map[index] ?? null;
    if (first === null) {
      pieces.push(NONE);
      continue;
    }
    let last = first;
    while (map[index + 1] === last + 1) [index, last] = [index + 1, last + 1];
    pieces.push(last === first ? `${first}` : `${first}-${last}`);
  }
  return pieces.join(', ');
}

/** Of a PDF with `count` pages; null: it is no such list. */
export function pageMapFrom(typed: string, count: number): PageMap | null {
  const map: (number | null)[] = [];
  for (const piece of typed.split(/[,;]/).map((each) => each.trim())) {
    if (piece === '') continue;
    if (/^(?:[-\u2013\u2014]|0|none)$/i.test(piece)) map.push(null);
    else {
      const [, from, to = from] = /^(\d{1,4})(?:\s*[-\u2013]\s*(\d{1,4}))?$/.exec(piece) ?? [];
      const [first, last] = [Number(from), Number(to)];
      if (!(first >= 1 && first <= last && last <= count)) return null;
      for (let page = first; page <= last; page += 1) map.push(page);
    }
    if (map.length > MOST) return null;
  }
  return trimmed(map);
}

const MOST = 1000;

/** All pages in order. */
export function inOrder(count: number): PageMap {
  return Array.from({ length: count }, (_, index) => index + 1);
}

/** Takes a page of the PDF out of the part, or puts it in before the next higher one that is there. */
export function toggled(map: PageMap, page: number): PageMap {
  if (map.includes(page)) return trimmed(map.filter((each) => each !== page));
  const before = map.findIndex((each) => each !== null && each > page);
  return before < 0 ? [...map, page] : map.toSpliced(before, 0, page);
}

/** From the first page of the part on, the PDF's pages from `page` on; what comes before is left out. */
export function begunAt(page: number, count: number): PageMap {
  return inOrder(count).slice(page - 1);
}

/** A map for another file that has `count` pages: what it does not have is none. */
export function fittedTo(map: PageMap, count: number): PageMap {
  return trimmed(map.map((page) => (page !== null && page > count ? null : page)));
}

/** Which pages of the part's `count`, from 1, a page of the PDF is. */
export function placesOf(map: PageMap, page: number, count: number): number[] {
  return map.slice(0, count).flatMap((each, index) => (each === page ? [index + 1] : []));
}

/** The PDF's pages behind the last of the part's `count`: they are printed nowhere. */
export function leftOut(map: PageMap, count: number): number[] {
  return map.slice(count).filter((page) => page !== null);
}

function trimmed(map: PageMap): PageMap {
  return map.slice(0, map.findLastIndex((page) => page !== null) + 1);
}
