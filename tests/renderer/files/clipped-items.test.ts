import { applyDiff } from '#model/document/diff.ts';
import type { Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clipped, pasted, readClipped } from '../../../renderer/files/clipped-items.ts';
import {
  aDocument,
  aGroup,
  anInstrument,
  aLamp,
  aPlayer,
  aSetup,
  aStand,
  SETUP,
  SIDE,
} from '../../helpers/build.ts';

const trio = aDocument(
  aPlayer(),
  anInstrument(),
  aStand({ sides: [{ ...SIDE, reader: asId('player-1') }] }),
  aLamp({
    x: 100,
    y: 200,
    cable: [
      { x: 100, y: 200 },
      { x: 900, y: 900 },
    ],
  }),
);

function paste(document: Document, text: string | null, setup = SETUP): Document {
  const items = readClipped(text ?? '');
  if (!items) throw new Error('nothing clipped');
  const outcome = pasted(document, items, { setup, by: { x: 300, y: -300 } });
  if (!outcome.ok) throw new Error(outcome.reason);
  return applyDiff(document, outcome.diff);
}

describe('copy and paste', () => {
  it('puts a player down once more with the instrument and the stand that is read', () => {
    const after = paste(trio, clipped(trio, ['player-1', 'stand-1']));
    expect(after.records.get('player-2')).toMatchObject({ x: 300, y: 1700, setup: SETUP });
    expect(after.records.get('instrument-2')).toMatchObject({ player: 'player-2' });
    expect(after.records.get('stand-2')).toMatchObject({ sides: [{ reader: 'player-2' }] });
    expect(after.records.size).toBe(trio.records.size + 3);
  });

  it('carries them into another window and another setup', () => {
    const other = aDocument(aSetup({ id: 'evening', order: 2 }));
    const after = paste(other, clipped(trio, ['player-1', 'stand-1']), asId('evening'));
    expect(after.records.get('player-1')).toMatchObject({ setup: 'evening' });
    expect(after.records.get('stand-1')).toMatchObject({ setup: 'evening', sides: [{ reader: 'player-1' }] });
    expect(readDocument(writeDocument(after)).ok).toBe(true);
  });

  it('lets go of a reader who was not copied along', () => {
    const after = paste(trio, clipped(trio, ['stand-1']));
    expect(after.records.get('stand-2')).toMatchObject({ sides: [{ reader: null }] });
  });

  it('keeps a whole group together, free and shown, and takes no part of one for a group', () => {
    const group = aGroup({ members: [asId('player-1'), asId('stand-1')], locked: true, hidden: true });
    const grouped = aDocument(...trio.records.values(), group);
    const after = paste(grouped, clipped(grouped, ['stand-1', 'player-1']));
    expect(after.records.get('group-2')).toMatchObject({
      members: ['player-2', 'stand-2'],
      locked: false,
      hidden: false,
    });
    expect(paste(grouped, clipped(grouped, ['stand-1'])).records.has('group-2')).toBe(false);
  });

  it('moves a lamp with its cable', () => {
    const after = paste(trio, clipped(trio, ['lamp-1']));
    expect(after.records.get('lamp-2')).toMatchObject({
      x: 400,
      cable: [
        { x: 400, y: -100 },
        { x: 1200, y: 600 },
      ],
    });
  });

  it('copies nothing of the building', () => {
    expect(clipped(trio, ['platform-1', 'stalls', 'gone'])).toBeNull();
  });

  it('leaves every other text alone', () => {
    for (const text of ['', 'standlines-items', '{"format":"standlines-items"}', '[]', 'null']) {
      expect(readClipped(text)).toBeNull();
    }
    const wrong = { format: 'standlines-items', version: 1, records: [{ ...aStand(), lip: 1e9 }] };
    expect(readClipped(JSON.stringify(wrong))).toBeNull();
    expect(readClipped(JSON.stringify({ ...wrong, records: [trio.records.get('platform-1')] }))).toBeNull();
    fc.assert(fc.property(fc.string(), (text) => readClipped(`standlines-items${text}`) === null));
  });
});
