/** Pages of a PDF as pages of a part. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  begunAt,
  fittedTo,
  inOrder,
  leftOut,
  pageMapFrom,
  pageMapWords,
  placesOf,
  toggled,
} from '../../../../renderer/app/music/page-map.ts';
import { text } from '../../../../renderer/app/text.ts';
import '../../../helpers/seed.ts';

describe('which page of a PDF is which page of the part', () => {
  it('is told by the pages of the PDF', () => {
    expect(pageMapWords([2, 3, 4, null, 8])).toBe('2-4, \u2013, 8');
    expect(pageMapFrom('2-4, -, 8', 8)).toEqual([2, 3, 4, null, 8]);
    expect(pageMapFrom('3; none; 0; 1', 8)).toEqual([3, null, null, 1]);
    expect(pageMapFrom('', 8)).toEqual([]);
  });

  it.each(['9', '0-3', '4-2', 'x', '1.5', '1-9', '1 2', '-1-2'])(
    'refuses %j of a PDF of 8 pages',
    (typed) => {
      expect(pageMapFrom(typed, 8)).toBeNull();
    },
  );

  it('leaves a title page out, takes it in again, and begins at a page', () => {
    expect(toggled(inOrder(4), 1)).toEqual([2, 3, 4]);
    expect(toggled([2, 3, 4], 1)).toEqual([1, 2, 3, 4]);
    expect(toggled([1, 2], 4)).toEqual([1, 2, 4]);
    expect(begunAt(3, 5)).toEqual([3, 4, 5]);
    expect(fittedTo([2, 3, null, 5], 3)).toEqual([2, 3]);
  });

  it('leaves out what lies behind the last page of the part, and the words say which', () => {
    const left = (pages: number) => leftOut(inOrder(8), pages);
    const said = (pages: number) =>
      text.pdf.tooMany(pages, 8, text.pdf.leftOut(left(pages), pageMapWords(left(pages))));
    expect(said(6)).toBe('The PDF gives 8 pages, the part has 6: PDF pages 7 and 8 are left out.');
    expect(said(7)).toBe('The PDF gives 8 pages, the part has 7: PDF page 8 is left out.');
    expect(said(3)).toBe('The PDF gives 8 pages, the part has 3: PDF pages 4-8 are left out.');
    expect(left(8)).toEqual([]);
    expect(leftOut([1, null, 2, null], 2)).toEqual([2]);
  });

  it('a picture is a page of the part or left out, never both', () => {
    const map = [1, 2, 3, 4, 2];
    const placed = (count: number) => [1, 2, 3, 4, 5].map((page) => placesOf(map, page, count));
    expect(placed(Infinity)).toEqual([[1], [2, 5], [3], [4], []]);
    expect(placed(3)).toEqual([[1], [2], [3], [], []]);
    for (const count of [0, 1, 2, 3, 4, 5]) {
      const kept = map.slice(0, count);
      for (const page of leftOut(map, count))
        expect(placesOf(map, page, count).length > 0).toBe(kept.includes(page));
    }
    expect(text.pdf.behind(3)).toBe('left out: the part has 3 pages');
  });

  it('comes back as it was typed', () => {
    const page = fc.option(fc.integer({ min: 1, max: 30 }));
    fc.assert(
      fc.property(fc.array(page, { maxLength: 30 }), (given) => {
        const map = given.slice(0, given.findLastIndex((each) => each !== null) + 1);
        expect(pageMapFrom(pageMapWords(map), 30)).toEqual(map);
      }),
    );
  });
});
