/** The tree beside the plan; its keys as the tree pattern of the ARIA Authoring Practices Guide (W3C) has them. */

import { group } from '#model/commands/groups.ts';
import { applyDiff } from '#model/document/diff.ts';
import type { Document } from '#model/document/document.ts';
import { describe, expect, it } from 'vitest';
import { outlineRows, rowAfterKey, rowLeft, rowTyped } from '../../../renderer/app/outline-rows.ts';
import { aDocument, aPlayer, aStand, SETUP } from '../../helpers/build.ts';

function grouped(): Document {
  const document = aDocument(
    aPlayer({ id: 'player-1' }),
    aPlayer({ id: 'player-2' }),
    aStand({ id: 'stand-1' }),
    aStand({ id: 'stand-2' }),
  );
  const outcome = group(document, { ids: ['player-2', 'stand-1'] });
  if (!outcome.ok) throw new Error(outcome.reason);
  return applyDiff(document, outcome.diff);
}

const rows = (closed: readonly string[] = []) => outlineRows(grouped(), SETUP, new Set(closed));
const idsOf = (all: ReturnType<typeof rows>) => all.map(({ record }) => record.id as string);
const OPEN = ['platform-1', 'player-1', 'group-1', 'player-2', 'stand-1', 'stand-2'];

describe('the rows', () => {
  it('hold the members of a group under it, where its first thing would stand', () => {
    expect(idsOf(rows())).toEqual(OPEN);
    expect(idsOf(rows(['group-1']))).toEqual(['platform-1', 'player-1', 'group-1', 'stand-2']);
    expect(rows().map(({ level }) => level)).toEqual([1, 1, 1, 2, 2, 1]);
  });

  it('say which of how many they are under the same parent', () => {
    expect(rows().map(({ position, among }) => `${position}/${among}`)).toEqual([
      ...['1/4', '2/4', '3/4'],
      ...['1/2', '2/2'],
      '4/4',
    ]);
  });

  it('stand for all that a group holds, also when it is closed', () => {
    expect(rows(['group-1'])[2]?.ids).toEqual(['player-2', 'stand-1']);
  });
});

describe('keys', () => {
  it.each([
    [0, 'ArrowDown', 1],
    [5, 'ArrowDown', 5],
    [0, 'ArrowUp', 0],
    [-1, 'ArrowDown', 0],
    [3, 'Home', 0],
    [3, 'End', 5],
    [2, 'ArrowRight', 3],
    [1, 'ArrowRight', -1],
    [4, 'ArrowLeft', 2],
    [1, 'ArrowLeft', -1],
  ])('from row %i with %s to %i', (at, key, to) => {
    expect(rowAfterKey(rows(), at, key)).toBe(to);
  });

  it('a letter leads to the next name with it, round the end; more letters from the row itself on', () => {
    const names = ['Platform', 'Viola', 'Violin', 'Cello'];
    expect(rowTyped(names, -1, 'v')).toBe(1);
    expect(rowTyped(names, 1, 'v')).toBe(2);
    expect(rowTyped(names, 2, 'v')).toBe(1);
    expect(rowTyped(names, 1, 'violi')).toBe(2);
    expect(rowTyped(names, 1, 'viol')).toBe(1);
    expect(rowTyped(names, 0, 'x')).toBe(-1);
  });
});

describe('after a removal', () => {
  it('the next row that is there has the focus, or the last before', () => {
    const before = rows();
    const without = (...gone: string[]) => before.filter(({ record }) => !gone.includes(record.id));
    const left = (at: number, ...gone: string[]) => {
      const after = without(...gone);
      return after[rowLeft(before, at, after)]?.record.id;
    };
    expect(left(1, 'player-1')).toBe('group-1');
    expect(left(1, 'player-1', 'group-1', 'player-2')).toBe('stand-1');
    expect(left(5, 'stand-2')).toBe('stand-1');
  });
});
