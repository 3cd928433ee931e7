/** Instruments that stand on the floor. */

import type { Millimetres, Point } from '../document/records.ts';
import { t } from '../words/say.ts';
import { drumOf, type Drum } from './large-instruments/drums.ts';
import { barsOf } from './large-instruments/bars.ts';
import { caseOf } from './large-instruments/cases.ts';
import type { LargeInstrumentModel } from './large-instruments/model.ts';
import { finder } from './sources.ts';

export type { LargeInstrumentModel } from './large-instruments/model.ts';

const drum = (x: Millimetres, y: Millimetres, diameter: Millimetres, top: Millimetres): Drum => ({
  x,
  y,
  diameter,
  top,
});

const BARS = [
  barsOf('marimba', () => t`Marimba, 4 1/3 octaves`, { width: 2130, low: 880, high: 420, height: 900 }),
  barsOf('marimba-5-octave', () => t`Marimba, 5 octaves`, { width: 2600, low: 1020, high: 450, height: 950 }),
  barsOf('vibraphone', () => t`Vibraphone`, { width: 1460, low: 780, high: 480, height: 880 }),
  barsOf('xylophone', () => t`Xylophone`, { width: 1400, low: 740, high: 400, height: 900 }),
  barsOf('glockenspiel', () => t`Glockenspiel on its stand`, {
    width: 780,
    low: 450,
    high: 320,
    height: 880,
  }),
];

/** The player stands at the middle of the arc: kettles 23, 26, 29 and 32 in, the largest on his left. */
const DRUMS = [
  drumOf('timpani', () => t`Timpani, set of four`, {
    drums: [
      drum(1000, 220, 810, 850),
      drum(400, -330, 735, 850),
      drum(-370, -330, 660, 850),
      drum(-930, 200, 585, 850),
    ],
    niche: { halfWidth: 520, from: 60 },
    playerAt: { x: 0, y: 450 },
  }),
  drumOf('timpani-pair', () => t`Timpani, pair`, {
    drums: [drum(400, 0, 735, 850), drum(-400, 0, 660, 850)],
    playerAt: { x: 0, y: 650 },
  }),
  drumOf('snare-drum', () => t`Snare drum on its stand`, {
    drums: [drum(0, 0, 370, 850)],
    playerAt: { x: 0, y: 430 },
  }),
  drumOf('congas', () => t`Congas, pair`, {
    drums: [drum(210, 0, 380, 780), drum(-210, 0, 350, 780)],
    bottom: 50,
    playerAt: { x: 0, y: 420 },
  }),
  drumOf('bongos-on-stand', () => t`Bongos on a stand`, {
    drums: [drum(110, 0, 230, 950), drum(-100, 0, 190, 950)],
    playerAt: { x: 0, y: 400 },
  }),
  drumOf('tom-toms', () => t`Tom-toms, set of four`, {
    drums: [
      drum(560, 120, 400, 900),
      drum(190, -120, 350, 900),
      drum(-180, -120, 330, 900),
      drum(-520, 120, 300, 900),
    ],
    playerAt: { x: 0, y: 480 },
  }),
  drumOf('drum-kit', () => t`Drum kit`, {
    drums: [
      { ...drum(0, -350, 560, 560), bottom: 0 },
      drum(330, 50, 360, 680),
      drum(-420, 120, 410, 650),
      { ...drum(620, -80, 360, 950), bottom: 850 },
      { ...drum(560, -500, 420, 1250), bottom: 1150 },
      { ...drum(-520, -520, 510, 1250), bottom: 1150 },
    ],
    playerAt: { x: 0, y: 560 },
  }),
];

const CASES = [
  caseOf('bass-drum', () => t`Bass drum on its stand`, {
    size: [600, 1000, 1300],
    bottom: 330,
    playerAt: { x: 0, y: 750 },
  }),
  caseOf('tam-tam', () => t`Tam-tam in its frame`, {
    size: [1150, 550, 1600],
    bottom: 500,
    hidesDepth: 60,
    playerAt: { x: 0, y: 500 },
  }),
  caseOf('tubular-bells', () => t`Tubular bells`, {
    size: [850, 650, 1850],
    bottom: 250,
    hidesDepth: 150,
    playerAt: { x: 0, y: 600 },
  }),
  // The column is away from the harpist, the soundbox leans on his right shoulder.
  caseOf('harp', () => t`Concert harp`, {
    size: [560, 1000, 1850],
    bottom: 0,
    hidesWidth: 300,
    playerAt: { x: 120, y: 680 },
  }),
  caseOf('harpsichord', () => t`Harpsichord`, {
    size: [950, 2350, 950],
    bottom: 680,
    playerAt: { x: 0, y: 1500 },
  }),
  caseOf('celesta', () => t`Celesta`, { size: [1200, 600, 1050], bottom: 0, playerAt: { x: 0, y: 630 } }),
  caseOf('chest-organ', () => t`Chest organ`, {
    size: [1100, 700, 1100],
    bottom: 0,
    playerAt: { x: 0, y: 650 },
  }),
  caseOf('cimbalom', () => t`Concert cimbalom`, {
    size: [1600, 1000, 850],
    bottom: 550,
    playerAt: { x: 0, y: 700 },
  }),
];

export const LARGE_INSTRUMENT_MODELS: readonly LargeInstrumentModel[] = [...BARS, ...DRUMS, ...CASES];

export const largeInstrumentModel = finder(LARGE_INSTRUMENT_MODELS);

/** The plan of a large instrument of an unknown model: a metre square. */
export const USUAL_OUTLINE: readonly Point[] = [
  { x: -500, y: -500 },
  { x: 500, y: -500 },
  { x: 500, y: 500 },
  { x: -500, y: 500 },
];
