/** A document with every kind of record and every kind of reference. */

import { documentOf, type Document } from '#model/document/document.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { asId } from '#model/document/ids.ts';
import {
  aConcert,
  aDocument,
  aGroup,
  aLamp,
  aLargeInstrument,
  aPagePlan,
  aPdf,
  aPiano,
  aPlace,
  aPlayer,
  aRiser,
  aScore,
  aSeat,
  aSetup,
  aShape,
  aStand,
  aStock,
  aStorage,
  aTable,
  anInstrument,
  anInstrumentStand,
  anUnderlay,
  MUSIC,
  PERSON,
  SETUP,
  SIDE,
} from '../../helpers/build.ts';

/** As it was before version 4 of the file. */
export function documentBeforeStock(): Document {
  const since = new Set(['storage', 'stock', 'underlay', 'group']);
  const known = [...documentOfEveryKind().records.values()].filter(({ kind }) => !since.has(kind));
  return documentOf(known.map(beforeStock));
}

function beforeStock(record: AnyRecord): AnyRecord {
  if (record.kind === 'concert') return { ...record, contacts: [], views: [] };
  return record.kind === 'setup' ? { ...record, variantOf: null, changeTime: null } : record;
}

export function documentOfEveryKind(): Document {
  return aDocument(
    aConcert({
      contacts: [{ name: 'Iva Horn', role: 'stage', reachedAt: '+00 000 12, iva@example.org' }],
      views: ['stalls/A-1'],
    }),
    aSetup({ needNotSee: [[asId('player-1'), asId('player-2')]] }),
    aSetup({
      id: asId('setup-2'),
      name: 'Duo',
      order: 2,
      notes: 'Mind the step.\nLights at half.',
      variantOf: SETUP,
      changeTime: 240,
    }),
    aScore({
      source: 'study.musicxml',
      music: {
        ...MUSIC,
        afterJump: {
          repeats: false,
          otherwise: [
            [0, 3],
            [0, 1],
          ],
        },
        remarks: [{ code: 'tempo.words', bar: 0, text: 'Lento', count: 1 }],
      },
      players: [asId('player-1')],
      pdfs: [aPdf({ file: 'Žalm (oboe).pdf', pages: [2, null], staffSize: 6.9 })],
    }),
    aPagePlan({
      stations: [
        {
          station: asId('stand-1'),
          kind: 'ridge',
          leaves: 1,
          pagesAcross: [2, 2],
          stackSide: 1,
          views: [
            [
              [1, 2],
              [null, 2],
            ],
            [
              [null, null],
              [null, null],
            ],
          ],
        },
      ],
      turns: [
        {
          station: asId('stand-1'),
          player: asId('player-2'),
          hand: 'left',
          place: 2.125,
          fromState: 0,
          toState: 1,
        },
      ],
      pins: [
        { kind: 'page', station: asId('stand-1'), side: 0, state: 1, slot: null, page: 2 },
        { kind: 'turn', station: asId('stand-1'), player: asId('player-2'), from: 2, to: 2.5 },
      ],
    }),
    aPlace(),
    aStorage({ door: asId('door-1') }),
    aStock({ model: 'orchestral', owned: 6, borrowed: 2, storage: asId('storage-1') }),
    anUnderlay(),
    anUnderlay({
      id: asId('underlay-2'),
      turn: -3,
      content: { type: 'picture', media: 'image/png', width: 1, height: 1, base64: 'iVBORw0KGgo=' },
    }),
    aPlayer({ name: 'Clarinet', person: { ...PERSON, size: { by: 'stature', stature: 1780 } } }),
    aPlayer({
      id: asId('player-2'),
      name: 'Viola',
      x: 1000,
      chair: { model: 'orchestra-chair', height: 450 },
    }),
    aPlayer({
      id: asId('player-3'),
      setup: asId('setup-2'),
      person: { ...PERSON, size: { by: 'anyone' } },
      chair: { model: 'wheelchair', height: 485 },
      mobility: 'wheelchair',
    }),
    anInstrumentStand({ x: -600 }),
    anInstrument({ support: asId('instrumentStand-1'), freeTime: 4.5 }),
    anInstrument({ id: asId('instrument-2'), model: 'viola', player: asId('player-2') }),
    aStand({
      form: 'backToBack',
      sides: [
        { ...SIDE, reader: asId('player-1'), staffSize: 7.5 },
        { ...SIDE, reader: asId('player-2'), turned: true, freeTime: 3 },
      ],
    }),
    aStand({ id: asId('stand-2'), setup: asId('setup-2'), sides: [{ ...SIDE, reader: asId('player-3') }] }),
    aTable(),
    aSeat(),
    aPiano({ setup: null }),
    aLargeInstrument({ player: asId('player-2') }),
    aLamp({
      cable: [
        { x: 0, y: 2000 },
        { x: 500, y: 4500 },
      ],
    }),
    aRiser(),
    aShape({ setup: null }),
    aGroup({ name: 'Left pair', members: [asId('player-1'), asId('instrumentStand-1')] }),
    aGroup({ id: asId('group-2'), setup: null, members: [asId('shape-1')], locked: true }),
    aGroup({ id: asId('group-3'), members: [asId('seat-1')], hidden: true }),
  );
}
