/** Carried instruments: which hands they keep, the room they want and what of them an audience looks for. */

import type { InstrumentModel } from './instruments/model.ts';
import { BOWED, PLUCKED } from './instruments/strings.ts';
import { BRASS, WOODWIND } from './instruments/winds.ts';
import { KEYBOARD, SMALL_PERCUSSION, VOICES } from './instruments/others.ts';
import { finder } from './sources.ts';

export type { Hands, HeldBox, InstrumentFamily, InstrumentModel } from './instruments/model.ts';

export const INSTRUMENT_MODELS: readonly InstrumentModel[] = [
  ...WOODWIND,
  ...BRASS,
  ...BOWED,
  ...PLUCKED,
  ...KEYBOARD,
  ...VOICES,
  ...SMALL_PERCUSSION,
];

export const instrumentModel = finder(INSTRUMENT_MODELS);
