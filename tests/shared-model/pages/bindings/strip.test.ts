import { describe, expect, it } from 'vitest';
import type { Binding } from '#model/pages/bindings/binding.ts';
import { book, concertina, looseRow, pagesOf, ridgeBooklet } from '#model/pages/bindings/make.ts';
import { needOf } from '#model/pages/bindings/need.ts';
import { jointLabel, stripOf } from '#model/pages/bindings/strip.ts';

const names = (binding: Binding) => stripOf(binding).panels.map(({ name }) => name);
const numbers = (binding: Binding) =>
  stripOf(binding).panels.map(({ pages }) => pages.map((page) => page?.page ?? 0));

describe('the strip of a ridge booklet', () => {
  const order = (leaves: number, stackSide: 0 | 1) =>
    ridgeBooklet({
      leaves,
      pagesPerPanel: 3,
      stackSide,
      sides: [pagesOf('bassoon', 1, 3 * leaves + 3), pagesOf('harp', 1, 3 * leaves + 2)],
    });

  it('is F, 1o, 1i, 2o, 2i, ..., B when the second reader turns, and the reverse when the first does', () => {
    expect(names(order(2, 1))).toEqual(['F', '1o', '1i', '2o', '2i', 'B']);
    expect(names(order(2, 0))).toEqual(['B', '2i', '2o', '1i', '1o', 'F']);
  });

  it.each([0, 1] as const)(
    'has every other panel on its head and is for each side in turn (stack %i)',
    (stack) => {
      const { panels } = stripOf(order(3, stack));
      expect(panels.map(({ upright }) => upright)).toEqual(Array.from({ length: 8 }, (_, i) => i % 2 === 1));
      expect(panels.map(({ side }) => side)).toEqual(Array.from({ length: 8 }, (_, i) => i % 2));
    },
  );

  it('joins heads at the ridge and feet at the hem, with a letter each', () => {
    const { joints } = stripOf(order(2, 0));
    expect(joints.map(({ label, kind }) => `${label} ${kind}`)).toEqual([
      'A ridge',
      'B hem',
      'C ridge',
      'D hem',
      'E ridge',
    ]);
    for (const { kind, first, second } of joints)
      expect([first.edge, second.edge]).toEqual(kind === 'ridge' ? ['head', 'head'] : ['foot', 'foot']);
  });

  it('stiffens each leaf once, on the side of the one who turns', () => {
    for (const stack of [0, 1] as const) {
      const cards = stripOf(order(4, stack)).panels.filter(({ card }) => card);
      expect(cards.map(({ side, leaf }) => [side, leaf]).toSorted()).toEqual(
        [1, 2, 3, 4].map((leaf) => [stack, leaf]),
      );
    }
  });

  it('shows each panel in one state, and each state to both', () => {
    const { panels } = stripOf(order(5, 1));
    for (const side of [0, 1])
      expect(panels.filter((panel) => panel.side === side).flatMap(({ states }) => states)).toEqual([
        0, 1, 2, 3, 4, 5,
      ]);
  });

  it('takes two stands, a row of k pages, and 2(L + 1) panels, of which a blank one is not printed', () => {
    expect(needOf(order(3, 0), 210)).toEqual({
      panels: 8,
      printedPanels: 8,
      printedPages: 23,
      cards: 3,
      stands: 2,
      width: 630,
    });
    const alone = ridgeBooklet({
      leaves: 1,
      pagesPerPanel: 1,
      stackSide: 0,
      sides: [pagesOf('oboe', 1, 2), []],
    });
    expect(needOf(alone, 230)).toMatchObject({ panels: 4, printedPanels: 2, width: 230 });
  });
});

// Common practice, no source: the smallest case of two who read the same from both sides, each turning one of two booklets.
it('of two booklets turned from opposite sides, one shows later pages first where the other shows earlier ones', () => {
  const strip = (stackSide: 0 | 1, from: number) => {
    const both = [...pagesOf('part', from, from + 1), ...pagesOf('part', from + 4, from + 5)];
    return numbers(ridgeBooklet({ leaves: 1, pagesPerPanel: 2, stackSide, sides: [both, both] })).map(
      ([first]) => first,
    );
  };
  const [left, right] = [strip(0, 1), strip(1, 3)];
  expect(left).toEqual([5, 5, 1, 1]);
  expect(right).toEqual([3, 3, 7, 7]);
});

describe('other bindings', () => {
  it('a row of loose pages has a panel a page and no joints', () => {
    const row = looseRow(pagesOf('tuba', 1, 3));
    expect(numbers(row)).toEqual([[1], [2], [3]]);
    expect(stripOf(row).joints).toEqual([]);
    expect(needOf(row, 215.9)).toMatchObject({ panels: 3, stands: 1, width: 3 * 215.9, cards: 0 });
  });

  it('a book shows page one on the right, then two at a time', () => {
    const five = book(pagesOf('cello', 1, 5));
    expect(five.views[0]?.map((view) => view.map((page) => page?.page ?? null))).toEqual([
      [null, 1],
      [2, 3],
      [4, 5],
    ]);
    expect(names(five)).toEqual(['F', '1 recto', '1 verso', '2 recto', '2 verso', 'B']);
    expect(numbers(five).flat()).toEqual([0, 1, 2, 3, 4, 5]);
    expect(needOf(five, 210)).toMatchObject({ printedPages: 5, stands: 1, width: 420 });
    expect(book(pagesOf('cello', 1, 6), true).leaves).toBe(2);
  });

  it('a concertina prints each page once, however many views it is in', () => {
    const seven = concertina(pagesOf('flugelhorn', 1, 7), 3);
    expect(seven.views[0]?.map((view) => view.map((page) => page?.page))).toEqual([
      [1, 2, 3],
      [3, 4, 5],
      [5, 6, 7],
    ]);
    const { panels, joints } = stripOf(seven);
    expect(panels.map(({ pages }) => pages[0]?.page)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(panels.map(({ states }) => states)).toEqual([[0], [0], [0, 1], [1], [1, 2], [2], [2]]);
    // Folded from paper: pages 4 to 7 go behind page 3, and 1 to 4 behind page 5.
    expect(joints.map(({ kind }) => kind)).toEqual([
      'inward',
      'outward',
      'both',
      'both',
      'outward',
      'inward',
    ]);
    expect(needOf(seven, 210)).toMatchObject({ panels: 7, printedPages: 7, width: 630 });
  });
});

it('letters go on after Z', () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(jointLabel)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA']);
});
