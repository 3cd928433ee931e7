/** The concertinas that the product makes, set on a desk and moved on by a program that knows nothing of how they were made. */

import { describe, expect, it } from 'vitest';
import type { View } from '#model/pages/bindings/binding.ts';
import { bindingFault } from '#model/pages/bindings/fault.ts';
import { concertina, pagesOf } from '#model/pages/bindings/make.ts';
import { stripOf, type JointKind } from '#model/pages/bindings/strip.ts';
import { movesBy, waysToLie, type Give, type Lying, type Row } from './concertina.ts';

const GIVES: Readonly<Partial<Record<JointKind, readonly Give[]>>> = {
  inward: ['towards'],
  outward: ['away'],
  both: ['towards', 'away'],
  flat: [],
};

const named = (page: View[number]): string | null => page && `${page.part} ${page.page}`;

function rowOf(pages: number, shown: number) {
  const binding = concertina(pagesOf('horn', 1, pages), shown);
  const { panels, joints } = stripOf(binding);
  joints.forEach(({ first, second }, index) => {
    expect(first).toEqual({ panel: index, edge: 'right' });
    expect(second).toEqual({ panel: index + 1, edge: 'left' });
  });
  const row: Row = {
    pages: panels.map((panel) => named(panel.pages[0] ?? null)),
    hinges: joints.map(({ kind }) => new Set(GIVES[kind])),
    upright: panels.map(({ upright }) => upright),
  };
  return { binding, row };
}

function lyingAt(row: Row, state: number, shown: number): Lying[] {
  return waysToLie(row, 2 * state, shown).filter(({ seen }) => Array.isArray(seen));
}

const CASES = [2, 3, 4].flatMap((shown) =>
  Array.from({ length: 11 }, (_, index) => index + 2)
    .filter((pages) => pages >= shown)
    .map((pages) => ({ pages, shown })),
);

describe('a concertina folds, and shows its reader what the binding says', () => {
  it.each(CASES)('$pages pages, $shown open', ({ pages, shown }) => {
    const { binding, row } = rowOf(pages, shown);
    expect(bindingFault(binding)).toBeNull();
    const lying = (binding.views[0] ?? []).map((view, state) => {
      const ways = lyingAt(row, state, shown);
      expect(ways, `view ${state + 1}`).toHaveLength(1);
      expect(ways[0]?.seen).toEqual(view.map(named));
      return ways[0] as Lying;
    });
    lying.slice(1).forEach((next, state) => {
      expect(movesBy(lying[state] as Lying, next, 2 * state), `turn ${state + 1}`).toEqual([]);
    });
    // What is said to bend does so at some time, on each side on which it is scored.
    row.hinges.forEach((gives, hinge) => {
      const bent = lying.flatMap(({ bends }) => bends[hinge] ?? []);
      expect(new Set(bent), `joint ${hinge + 1}`).toEqual(gives);
    });
  });

  it('with three open no scoring to one side alone does', () => {
    const { row } = rowOf(7, 3);
    for (let choice = 0; choice < 2 ** 6; choice++) {
      const hinges = row.hinges.map(
        (_, hinge) => new Set<Give>([choice & (1 << hinge) ? 'towards' : 'away']),
      );
      const states = [0, 1, 2].map((state) => lyingAt({ ...row, hinges }, state, 3).length);
      expect(Math.min(...states)).toBe(0);
    }
  });

  it('and one page open is not made, as every other page would never be seen', () => {
    for (let pages = 2; pages <= 12; pages++)
      expect(bindingFault(concertina(pagesOf('horn', 1, pages), 1))).toContain('at least two');
  });
});

describe('the simulation finds what is wrong with a row', () => {
  const { row } = rowOf(7, 3);
  const zigzag: Row = {
    ...row,
    hinges: row.hinges.map((_, hinge) => new Set<Give>([hinge % 2 ? 'away' : 'towards'])),
  };

  it('bent in turns from A on, page 4 comes to lie in front of page 3', () => {
    expect(waysToLie(zigzag, 0, 3).map(({ seen }) => seen)).toEqual(['covered']);
  });

  it('any one hinge scored to the other side only', () => {
    const { row: two } = rowOf(6, 2);
    two.hinges.forEach((gives, index) => {
      const other = new Set<Give>(gives.has('away') ? ['towards'] : ['away']);
      const hinges = two.hinges.map((each, hinge) => (hinge === index ? other : each));
      const states = [0, 1, 2].map((state) => lyingAt({ ...two, hinges }, state, 2).length);
      expect(Math.min(...states), `hinge ${index}`).toBe(0);
    });
  });

  it('a hinge that is not scored, and a page on its head', () => {
    const stiff = row.hinges.map((gives, hinge) => (hinge === 4 ? new Set<Give>() : gives));
    expect(waysToLie({ ...row, hinges: stiff }, 0, 3)).toEqual([]);
    const upright = row.upright.map((each, index) => each && index !== 2);
    expect(waysToLie({ ...row, upright }, 0, 3).map(({ seen }) => seen)).toContain('on its head');
  });

  it('a turn that goes through other paper', () => {
    const { row: two } = rowOf(8, 2);
    const [now] = lyingAt(two, 1, 2);
    const [next] = lyingAt(two, 2, 2);
    if (!now || !next) throw new Error('the row lies in both views');
    expect(movesBy(now, next, 2)).toEqual([]);
    // The leaf laid over behind the page on the left, where those done with lie.
    const behind = next.bends.map((bend, hinge) => (hinge === 2 && bend ? flipped(bend) : bend));
    expect(movesBy(now, { ...next, bends: behind }, 2)).not.toEqual([]);
  });
});

const flipped = (bend: Give): Give => (bend === 'away' ? 'towards' : 'away');
