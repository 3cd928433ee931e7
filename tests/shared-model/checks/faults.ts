/** For every code of a finding a small concert that has it, and nearly the same one that has not. */

import type { FindingCode } from '#model/checks/finding.ts';
import { rectangle } from '#model/catalogue/shapes.ts';
import type { Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { Person, Player, StandSide } from '#model/document/records.ts';
import {
  aDocument,
  aDoor,
  aLamp,
  anInstrument,
  anInstrumentStand,
  aPagePlan,
  aPlayer,
  aRiser,
  aScore,
  aSeatBlock,
  aShape,
  aStand,
  aTable,
  PERSON,
  SIDE,
} from '../../helpers/build.ts';

export interface Fault {
  readonly faulty: Document;
  readonly sound: Document;
}

const eyesAt = (eyeHeight: number): Person => ({ ...PERSON, measured: { ...PERSON.measured, eyeHeight } });

const readBy1 = (fields: Partial<StandSide> = {}): StandSide => ({
  ...SIDE,
  reader: asId('player-1'),
  ...fields,
});

/** A standing player upstage of a stand that shows him its page. */
const reading = (apart: number, fields: Partial<StandSide> = {}) => [
  aPlayer({ y: 2000 + apart }),
  aStand({ lip: 1050, sides: [readBy1(fields)] }),
];

const facing = (x: number, eyeHeight: number): Player =>
  aPlayer({
    id: x < 0 ? 'player-1' : 'player-2',
    x,
    y: 3000,
    facing: x < 0 ? 90 : -90,
    person: eyesAt(eyeHeight),
  });

/** Upstage of everything; the way out is straight ahead of whoever walks upstage. */
const DOOR = aDoor({ offset: 3500, width: 1000 });
const across = (y: number, end: number) => [
  { x: 2000, y },
  { x: end, y },
];

const wheeled = (): Player =>
  aPlayer({ y: 1500, chair: { model: 'wheelchair', height: 485 }, mobility: 'wheelchair' });

export const FAULTS: Readonly<Record<FindingCode, Fault>> = {
  'sight.house': {
    faulty: aDocument(aPlayer({ y: 2600 }), aStand({ lip: 1200, y: 2000 })),
    sound: aDocument(aPlayer({ y: 2600 }), aStand({ lip: 1200, x: 2500, y: 2000 })),
  },
  'reach.far': {
    faulty: aDocument(...reading(1600, { turned: true })),
    sound: aDocument(...reading(550, { turned: true })),
  },
  'reach.late': {
    faulty: aDocument(...reading(1600, { turned: true, freeTime: 0.5 })),
    sound: aDocument(...reading(1600, { turned: true, freeTime: 60 })),
  },
  'reach.noHand': {
    faulty: aDocument(...reading(550, { turned: true }), anInstrument({ model: 'castanets' })),
    sound: aDocument(...reading(550, { turned: true }), anInstrument({ model: 'clarinet' })),
  },
  'room.overlap': {
    faulty: aDocument(aTable(), aTable({ id: 'table-2', x: 590 })),
    sound: aDocument(aTable(), aTable({ id: 'table-2', x: 600 })),
  },
  'room.offPlatform': {
    faulty: aDocument(aTable({ y: 190 })),
    sound: aDocument(aTable({ y: 200 })),
  },
  'room.elbow': {
    faulty: aDocument(aPlayer(), aPlayer({ id: 'player-2', x: 450 })),
    sound: aDocument(aPlayer(), aPlayer({ id: 'player-2', x: 650 })),
  },
  'room.edge': {
    faulty: aDocument(aStand({ y: 840 })),
    sound: aDocument(aStand({ y: 860 })),
  },
  'room.door': {
    faulty: aDocument(aTable({ x: 3300, y: 3900 })),
    sound: aDocument(aTable({ x: 3300, y: 3880 })),
  },
  'room.route': {
    faulty: aDocument(DOOR, aPlayer({ y: 1000 }), ...gap(900)),
    sound: aDocument(DOOR, aPlayer({ y: 1000 }), ...gap(920)),
  },
  'room.step': {
    faulty: aDocument(DOOR, aPlayer({ y: 1500 }), aRiser({ y: 1500, width: 3000, depth: 2500, height: 210 })),
    sound: aDocument(DOOR, aPlayer({ y: 1500 }), aRiser({ y: 1500, width: 3000, depth: 2500, height: 200 })),
  },
  'room.cable': {
    faulty: aDocument(DOOR, aPlayer({ y: 1000 }), aLamp({ x: 2000, cable: across(3000, -2000) })),
    sound: aDocument(DOOR, aPlayer({ y: 1000 }), aLamp({ x: 2000, cable: across(3000, 500) })),
  },
  'room.noExit': {
    faulty: aDocument(aDoor({ exit: false })),
    sound: aDocument(),
  },
  'room.noStepFreeExit': {
    faulty: aDocument(aDoor({ stepFree: false }), wheeled()),
    sound: aDocument(wheeled()),
  },
  'room.wheelchairLevel': {
    faulty: aDocument(DOOR, wheeled(), aRiser({ y: 1500, width: 3000, depth: 2500, height: 150 })),
    sound: aDocument(DOOR, wheeled(), aRiser({ y: 1500, width: 3000, depth: 2500, height: 6 })),
  },
  'room.wheelchairRoute': {
    faulty: aDocument(DOOR, wheeled(), ...gap(900)),
    sound: aDocument(DOOR, wheeled(), ...gap(920)),
  },
  'room.turning': {
    faulty: aDocument(
      DOOR,
      wheeled(),
      aShape({ y: 1500, outline: rectangle(100, 2600), x: -750 }),
      aShape({ id: 'shape-2', y: 1500, outline: rectangle(100, 2600), x: 750 }),
    ),
    sound: aDocument(
      DOOR,
      wheeled(),
      aShape({ y: 1500, outline: rectangle(100, 2600), x: -820 }),
      aShape({ id: 'shape-2', y: 1500, outline: rectangle(100, 2600), x: 820 }),
    ),
  },
  'room.cableRamp': {
    faulty: aDocument(DOOR, wheeled(), aLamp({ x: 2000, cable: across(3000, -2000), cableCovered: true })),
    sound: aDocument(
      DOOR,
      aPlayer({ y: 1000 }),
      aLamp({ x: 2000, cable: across(3000, -2000), cableCovered: true }),
    ),
  },
  'reading.angle': {
    faulty: aDocument(aPlayer({ y: 2600 }), aStand({ lip: 1050, facing: 100, sides: [readBy1()] })),
    sound: aDocument(...reading(600)),
  },
  'reading.turn': {
    faulty: aDocument(...reading(420, { pagesAcross: 3, pageWidth: 240 })),
    sound: aDocument(...reading(900, { pagesAcross: 1 })),
  },
  'reading.staff': {
    faulty: aDocument(...reading(600, { staffSize: 6.9 })),
    sound: aDocument(...reading(600, { staffSize: 7.5 })),
  },
  'reading.far': {
    faulty: aDocument(...reading(2600, { staffSize: 7.5 })),
    sound: aDocument(...reading(1200, { staffSize: 7.5 })),
  },
  'turns.broken': {
    faulty: aDocument(...playedWithPages(1, null)),
    sound: aDocument(...playedWithPages(1, 2)),
  },
  'facing.blocked': {
    faulty: aDocument(facing(-1200, 1500), facing(1200, 1500), aShape({ y: 3000, height: 1600 })),
    sound: aDocument(facing(-1200, 1500), facing(1200, 1500), aShape({ y: 3000, height: 1400 })),
  },
  'facing.turn': {
    faulty: aDocument(facing(-1200, 1500), { ...facing(1200, 1500), facing: 0 }),
    sound: aDocument(facing(-1200, 1500), facing(1200, 1500)),
  },
  'facing.house': {
    faulty: aDocument(aPlayer({ facing: 120 })),
    sound: aDocument(aPlayer({ facing: 60 })),
  },
};

/** Further things that the sentences tell apart. */
export const MORE_FAULTS: readonly Document[] = [
  aDocument(aPlayer(), anInstrument({ support: asId('instrumentStand-1') }), anInstrumentStand({ x: 3000 })),
  aDocument(aPlayer({ x: -3850 })),
  aDocument(DOOR, aPlayer({ y: 1000 }), ...gap(0)),
  aDocument(DOOR, wheeled(), ...gap(0)),
  aDocument(DOOR, wheeled(), ...gap(840)),
  aDocument(aStand({ y: 2500 }), aRiser({ y: 2500, width: 1000, depth: 1000, height: 900 })),
  aDocument(DOOR, wheeled(), aRiser({ x: -350, y: 3000, width: 7300, depth: 600, height: 400 })),
  aDocument(aDoor({ offset: 3500, width: 880 }), aPlayer({ y: 1000 })),
  aDocument(aSeatBlock({ rows: 1 }), aPlayer({ y: 2600 }), aStand({ lip: 1200, y: 2000 })),
];

/** Two pages are read; of a plan that is kept these lie on the desk. */
function playedWithPages(...pages: readonly (number | null)[]) {
  const station = { station: asId<'stand'>('stand-1'), kind: 'loose', leaves: 0, stackSide: 0 } as const;
  return [
    ...reading(600, { pagesAcross: 2 }),
    aScore({ players: [asId('player-1')] }),
    aPagePlan({ stations: [{ ...station, pagesAcross: [2], views: [[pages]] }] }),
  ];
}

/** A barrier across the platform with one gap in the middle. */
function gap(width: number) {
  const half = (side: 1 | -1) => [
    { x: (side * width) / 2, y: -100 },
    { x: side * 4000, y: -100 },
    { x: side * 4000, y: 100 },
    { x: (side * width) / 2, y: 100 },
  ];
  return [aShape({ y: 3000, outline: half(1) }), aShape({ id: 'shape-2', y: 3000, outline: half(-1) })];
}
