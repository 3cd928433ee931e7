/** The strips that the product makes, folded in space by a program that knows nothing of how they were made. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Binding, SideIndex, View } from '#model/pages/bindings/binding.ts';
import { ridgeBooklet } from '#model/pages/bindings/make.ts';
import { stripOf } from '#model/pages/bindings/strip.ts';
import type { FlatPanel, FlatStrip } from './flat-strip.ts';
import { foldOverRidge, onTheWay, passingThrough } from './fold.ts';

/** What is printed and taped, and nothing else that the product knows. */
function flatStrip(binding: Binding): FlatStrip {
  const { panels, joints } = stripOf(binding);
  return {
    panels: panels.map(({ upright, pages }) => ({ upright, pages: pages.map(named) })),
    tapes: joints.map(({ first, second }) => ({ first, second })),
  };
}

function named(page: View[number]): string | null {
  return page && `${page.part} ${page.page}`;
}

function booklet(leaves: number, pagesPerPanel: number, stackSide: SideIndex, readers: 1 | 2 = 2): Binding {
  const places = (leaves + 1) * pagesPerPanel;
  const part = (name: string, from: number) =>
    Array.from({ length: places }, (_, index) => ({ part: name, page: from + index }));
  // The parts differ, and the second is short of one page.
  const sides: [View, View] =
    readers === 2
      ? [part('viola', 1), part('horn', 31).slice(0, -1)]
      : stackSide === 0
        ? [part('viola', 1), []]
        : [[], part('viola', 1)];
  return ridgeBooklet({ leaves, pagesPerPanel, stackSide, sides });
}

const CASES = Array.from({ length: 12 }, (_, index) => index + 1).flatMap((leaves) =>
  [1, 2, 3].flatMap((pages) =>
    ([0, 1] as const).flatMap((stack) =>
      ([1, 2] as const).map((readers) => ({ leaves, pages, stack, readers })),
    ),
  ),
);

describe('a ridge booklet folds, and shows each reader what the binding says', () => {
  it.each(CASES)(
    '$leaves leaves, $pages pages a panel, stack on side $stack, $readers readers',
    ({ leaves, pages, stack, readers }) => {
      const binding = booklet(leaves, pages, stack, readers);
      const { seen, problems } = foldOverRidge(flatStrip(binding), stack, leaves);
      expect(problems).toEqual([]);
      expect(seen).toHaveLength(leaves + 1);
      seen.forEach((views, state) =>
        expect(views).toEqual(binding.views.map((ofSide) => ofSide[state]?.map(named))),
      );
    },
  );

  it('and a strip without leaves is a saddle of two panels', () => {
    const binding = booklet(0, 2, 0);
    expect(foldOverRidge(flatStrip(binding), 0, 0)).toEqual({
      problems: [],
      seen: [
        [
          ['viola 1', 'viola 2'],
          ['horn 31', null],
        ],
      ],
    });
  });

  it('whose leaves are not more than there are', () => {
    const { problems } = foldOverRidge(flatStrip(booklet(3, 1, 0)), 0, 4);
    expect(problems).not.toEqual([]);
  });
});

describe('the simulation finds what is wrong with a strip', () => {
  const strip = flatStrip(booklet(3, 2, 1));
  const whole = foldOverRidge(strip, 1, 3);
  const withPanel = (index: number, change: Partial<FlatPanel>): FlatStrip => ({
    ...strip,
    panels: strip.panels.map((panel, each) => (each === index ? { ...panel, ...change } : panel)),
  });
  const swapped = (a: number, b: number): FlatStrip => ({
    ...strip,
    panels: strip.panels.map((panel, index) => {
      const from = index === a ? b : index === b ? a : index;
      return { ...panel, pages: strip.panels[from]?.pages ?? [] };
    }),
  });

  it('not in one that is right', () => expect(whole.problems).toEqual([]));

  it.each(strip.panels.map((panel, index) => ({ index, upright: !panel.upright })))(
    'panel $index printed the wrong way up',
    ({ index, upright }) => {
      // Its head is now at the other end, so the tapes do not meet.
      expect(foldOverRidge(withPanel(index, { upright }), 1, 3).problems).not.toEqual([]);
      // Taped by where its edges lie, it hangs together, and a reader finds it on its head.
      const turned = withPanel(index, { upright });
      const flip = { head: 'foot', foot: 'head', left: 'right', right: 'left' } as const;
      const held = (at: (typeof strip.tapes)[number]['first']) =>
        at.panel === index ? { ...at, edge: flip[at.edge] } : at;
      const tapes = strip.tapes.map(({ first, second }) => ({ first: held(first), second: held(second) }));
      const { problems, seen } = foldOverRidge({ ...turned, tapes }, 1, 3);
      expect(problems).toEqual([]);
      expect(seen.flat()).toContain('on its head');
    },
  );

  it('any two panels in each other’s place', () => {
    fc.assert(
      fc.property(fc.nat(7), fc.nat(7), (a, b) => {
        fc.pre(a !== b);
        const { seen } = foldOverRidge(swapped(a, b), 1, 3);
        expect(seen).not.toEqual(whole.seen);
      }),
    );
  });

  it('any one tape at a wrong edge', () => {
    const edges = ['head', 'foot', 'left', 'right'] as const;
    fc.assert(
      fc.property(fc.nat(6), fc.boolean(), fc.constantFrom(...edges), (index, atFirst, edge) => {
        const key = atFirst ? 'first' : 'second';
        fc.pre(strip.tapes[index]?.[key].edge !== edge);
        const tapes = strip.tapes.map((tape, each) =>
          each === index ? { ...tape, [key]: { ...tape[key], edge } } : tape,
        );
        expect(foldOverRidge({ ...strip, tapes }, 1, 3).problems).not.toEqual([]);
      }),
    );
  });

  it('a tape to a panel that lies elsewhere, and one left out', () => {
    const [first, ...others] = strip.tapes;
    if (!first) throw new Error('a strip has tapes');
    const elsewhere = { ...first, second: { ...first.second, panel: 3 } };
    expect(foldOverRidge({ ...strip, tapes: [elsewhere, ...others] }, 1, 3).problems).not.toEqual([]);
    expect(foldOverRidge({ ...strip, tapes: others }, 1, 3).problems).not.toEqual([]);
  });

  it('the stack put up on the wrong desk', () => {
    const { seen } = foldOverRidge(strip, 0, 3);
    expect(seen).not.toEqual(whole.seen);
  });

  it('a strip that is one panel short', () => {
    const short = { panels: strip.panels.slice(0, -1), tapes: strip.tapes.slice(0, -1) };
    const { seen, problems } = foldOverRidge(short, 1, 3);
    expect(problems.length > 0 || JSON.stringify(seen) !== JSON.stringify(whole.seen)).toBe(true);
  });

  it('a pile in an order that no folding gives', () => {
    // Desk 0: the first panel. Desk 1: from the desk upwards, as it is, and with two neighbours exchanged.
    expect(passingThrough(strip, { stacks: [[0], [7, 6, 5, 4, 3, 2, 1]] })).toEqual([]);
    expect(passingThrough(strip, { stacks: [[0], [7, 5, 6, 4, 3, 2, 1]] })).not.toEqual([]);
    expect(passingThrough(strip, { stacks: [[0], [7, 6, 5, 4, 1, 2, 3]] })).not.toEqual([]);
  });

  it('a leaf taken from under others', () => {
    const lie = { stacks: [[0], [7, 6, 5, 4, 3, 2, 1]] } as const;
    expect(onTheWay(strip, lie, [1, 2], 1)).toEqual([]);
    expect(onTheWay(strip, lie, [3, 4], 1)).not.toEqual([]);
  });
});
