/** The drawing of one thing of the store by itself, on an empty platform. */

import { applyDiff } from '#model/document/diff.ts';
import { documentOf } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord, Platform } from '#model/document/records.ts';
import { createOccupancy } from '#model/drawing/occupancy.ts';
import { drawItems } from '#model/drawing/plan.ts';
import { drawStorages } from '#model/drawing/plan/storages.ts';
import type { Primitive } from '#model/drawing/primitives.ts';
import { newConcert } from '../../store/new-concert.ts';
import type { Thing } from '../../store/things.ts';
import { smallPicture, wordless } from './small-picture.ts';

export interface Symbol {
  readonly records: readonly AnyRecord[];
  /** At which lines and dashes suit its size. */
  readonly scale: number;
  readonly draw: (scale: number) => Primitive[];
}

const PLATFORM: Platform = {
  id: asId('platform-1'),
  kind: 'platform',
  name: '',
  outline: [
    { x: -20_000, y: -20_000 },
    { x: 20_000, y: -20_000 },
    { x: 20_000, y: 20_000 },
    { x: -20_000, y: 20_000 },
  ],
  height: 0,
  openEdges: [],
};

const EMPTY = newConcert(
  { id: '', name: '', summary: '', seats: 0, source: '', records: () => [PLATFORM] },
  'metric',
);

/** Lines and fills as on a plan at 1:20; of what is drawn as large as a room, as on one at 1:150. */
const [USUAL_SCALE, ROOM_SCALE] = [20, 150];

const SETUP = asId<'setup'>('setup-1');

/** Null for what draws nothing. */
export function symbolOf(thing: Thing, theme: 'light' | 'dark'): Symbol | null {
  const spot = { x: 0, y: 0, setup: SETUP, facing: 0, units: 'metric' } as const;
  const outcome = thing.place(EMPTY, { spot, withStand: false });
  if (!outcome.ok) return null;
  const document = applyDiff(documentOf(EMPTY.records.values()), outcome.diff);
  const records = [...outcome.diff.values()].flatMap(({ after }) => after ?? []);
  return {
    records,
    scale: records.some(({ kind }) => kind === 'storage') ? ROOM_SCALE : USUAL_SCALE,
    draw: (scale) => {
      const context = smallPicture({ document, setup: SETUP, scale, theme, seats: false });
      // The name in the box is told beside the symbol, and would be too small to read in it.
      return [...drawItems(context), ...wordless(drawStorages(context, createOccupancy()))];
    },
  };
}
