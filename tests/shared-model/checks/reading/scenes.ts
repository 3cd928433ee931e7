/** Small concerts of any shape for laws: players with stands, tables and columns, and how to turn, move and mirror them. */

import fc from 'fast-check';
import type { Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { isPlaced, type AnyRecord, type PlacedRecord } from '#model/document/records.ts';
import { placed } from '#model/geometry/frame.ts';
import {
  aDocument,
  aPlatform,
  aPlayer,
  aRiser,
  aShape,
  aStand,
  aTable,
  PERSON,
  SIDE,
} from '../../../helpers/build.ts';
import { mirrored } from '../room/mirrored.ts';

const spot = { x: fc.integer({ min: -3500, max: 3500 }), y: fc.integer({ min: 300, max: 4700 }) };
const facing = fc.integer({ min: -179, max: 180 });

const somebody = fc.record({
  ...spot,
  facing,
  seated: fc.boolean(),
  size: fc.constantFrom<typeof PERSON.size>(
    { by: 'percentile', percentile: 30 },
    { by: 'stature', stature: 1810 },
    { by: 'anyone' },
  ),
});

const something = fc.record({
  ...spot,
  facing,
  kind: fc.constantFrom('stand', 'pair', 'table', 'column', 'riser'),
  lip: fc.integer({ min: 650, max: 1400 }),
  tilt: fc.integer({ min: 10, max: 90 }),
  pagesAcross: fc.integer({ min: 0, max: 3 }),
  reader: fc.nat(),
});

/** So wide that nothing comes to stand beside it, however a scene is turned or moved. */
const WIDE = aPlatform({
  outline: [
    { x: -9000, y: -9000 },
    { x: 9000, y: -9000 },
    { x: 9000, y: 9000 },
    { x: -9000, y: 9000 },
  ],
});

export const scenes = fc
  .record({
    people: fc.array(somebody, { minLength: 2, maxLength: 4 }),
    things: fc.array(something, { maxLength: 6 }),
  })
  .map(({ people, things }) => {
    const players = people.map(({ seated, size, ...at }, index) =>
      aPlayer({
        id: `player-${index + 1}`,
        ...at,
        person: { ...PERSON, size },
        chair: seated ? { model: 'orchestra-chair', height: 450 } : null,
      }),
    );
    const others = things.map(({ kind, lip, tilt, pagesAcross, reader, ...at }, index): AnyRecord => {
      const id = `${kind}-${index + 1}`;
      const side = (next: number) => ({
        ...SIDE,
        pagesAcross,
        reader: asId<'player'>(`player-${((reader + next) % people.length) + 1}`),
        staffSize: 6 + next,
      });
      if (kind === 'stand') return aStand({ id, ...at, lip, tilt, sides: [side(0)] });
      if (kind === 'pair')
        return aStand({ id, ...at, form: 'backToBack', lip, tilt, sides: [side(0), side(1)] });
      if (kind === 'table') return aTable({ id, ...at, height: lip + 500 });
      if (kind === 'riser') return aRiser({ id, ...at });
      return aShape({ id, ...at });
    });
    return aDocument(WIDE, ...players, ...others);
  });

type Motion = <R extends PlacedRecord>(record: R) => R;

export function moved(document: Document, motion: Motion): Document {
  const records = new Map(document.records);
  for (const record of document.records.values())
    if (isPlaced(record)) records.set(record.id, motion(record));
  return { records };
}

export const turnedBy =
  (angle: number): Motion =>
  (record) => ({
    ...record,
    ...placed({ x: 0, y: 0, facing: angle }, record),
    facing: record.facing + angle,
  });

export const shiftedBy =
  (dx: number, dy: number): Motion =>
  (record) => ({ ...record, x: record.x + dx, y: record.y + dy });

export const inMirror: Motion = mirrored;
