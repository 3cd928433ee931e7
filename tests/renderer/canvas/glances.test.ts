import { expect, it } from 'vitest';
import { facingResults } from '#model/checks/facing/facing.ts';
import { asId } from '#model/document/ids.ts';
import { glancesOf } from '../../../renderer/canvas/glances.ts';
import { aConcert, aDocument, aPlatform, aPlayer, aSetup, aStand, SETUP } from '../../helpers/build.ts';

/** Three in a row, facing the house; a very high stand between the first two. */
const document = aDocument(
  aConcert(),
  aPlatform(),
  aSetup(),
  aPlayer({ id: asId('player-1'), x: -1500, y: 1500, facing: 90 }),
  aPlayer({ id: asId('player-2'), x: 0, y: 1500, facing: -90 }),
  aPlayer({ id: asId('player-3'), x: 0, y: 3500, facing: 0 }),
  aStand({ id: asId('stand-1'), x: -750, y: 1500, facing: -90, lip: 1500, tilt: 90 }),
);
const facing = facingResults(document, SETUP);

const told = (selection: readonly string[], drafting: boolean) =>
  glancesOf(document, facing, { selection, drafting }).map(({ from, to, seen }) => [
    from.x,
    from.y,
    to.x,
    to.y,
    seen,
  ]);

it('a chosen player has a fan to all whom he must see, with what is hidden told apart', () => {
  expect(told(['player-2'], false)).toEqual([
    [-1500, 1500, 0, 1500, 0],
    [0, 1500, 0, 3500, 1],
  ]);
  expect(told(['player-2'], true)).toEqual(told(['player-2'], false));
});

it('while a stand is moved all pairs have theirs, and none when it rests', () => {
  expect(told(['stand-1'], true)).toHaveLength(facing.pairs.length);
  expect(told(['stand-1'], false)).toEqual([]);
  expect(told([], false)).toEqual([]);
});

it('of many chosen players none has a fan', () => {
  expect(told(['player-1', 'player-2'], false)).toEqual([]);
});
