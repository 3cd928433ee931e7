/** How big the large instruments are and which end of them lies where, so that a crew can set them before the players come. */

import { largeInstrumentModel, type LargeInstrumentModel } from '../../catalogue/large-instruments.ts';
import { pianoModel } from '../../catalogue/pianos.ts';
import { formatBare, type Units } from '../../document/measures.ts';
import type { LargeInstrument, Piano, Point } from '../../document/records.ts';
import { placed } from '../../geometry/frame.ts';
import { t } from '../../words/say.ts';
import { isBars, isDrums } from '../plan/large.ts';

/** "2600 × 1020, 950 high", "low end stage left"; nothing of a model that the catalogue does not have. */
export function largeInstrumentNotes(instrument: LargeInstrument, units: Units): string[] {
  const model = largeInstrumentModel(instrument.model);
  if (!model) return [];
  const end = tellingEnd(model);
  return [
    t`${sizeOf([model.width, model.depth], units)}, ${formatBare(model.height, units)} high`,
    ...(end ? [end.words(stageSide(instrument.facing, end.towards))] : []),
  ];
}

/** "1510 × 2110", "tail stage right", or where the keys of an upright are. */
export function pianoNotes(piano: Piano, units: Units): string[] {
  const model = pianoModel(piano.model);
  if (!model) return [];
  const { words, towards } = model.form === 'grand' ? TAIL : KEYS;
  return [sizeOf([model.width, model.length], units), words(stageSide(piano.facing, towards))];
}

/** "1200 × 600": width and depth as its player sees it. */
export function sizeOf(lengths: readonly number[], units: Units): string {
  return lengths.map((each) => formatBare(each, units)).join(' × ');
}

interface End {
  /** Of the side of the stage on which it lies. */
  readonly words: (side: string) => string;
  /** In the instrument's own frame. */
  readonly towards: Point;
}

const TAIL: End = { words: (side) => t`tail ${side}`, towards: { x: 0, y: -1 } };
const KEYS: End = { words: (side) => t`keys ${side}`, towards: { x: 0, y: 1 } };
const LOW_END: End = { words: (side) => t`low end ${side}`, towards: { x: 1, y: 0 } };

/** What tells one end from the other: the low bars on the player's left, or the largest drum of a set. */
function tellingEnd(model: LargeInstrumentModel): End | null {
  if (isBars(model)) return LOW_END;
  if (!isDrums(model) || model.boxes.length < 2) return null;
  const [largest, next] = model.boxes.toSorted((a, b) => b.width - a.width);
  if (!largest || !next || largest.width <= next.width) return null;
  return { words: (side) => t`largest drum ${side}`, towards: largest };
}

/** Beyond this share of the whole way a direction counts: the sine of half of 45°. */
const COUNTS = Math.sin(Math.PI / 8);

/** "stage left", "upstage right": to the nearest of the eight directions, for an item turned by `facing` degrees. */
function stageSide(facing: number, towards: Point): string {
  const { x, y } = placed({ x: 0, y: 0, facing }, towards);
  const far = Math.hypot(x, y) * COUNTS;
  const side = x > far ? 'left' : x < -far ? 'right' : 'middle';
  if (y > far) return UPSTAGE[side]();
  return y < -far ? DOWNSTAGE[side]() : side === 'left' ? t`stage left` : t`stage right`;
}

type SideWords = Readonly<Record<'left' | 'middle' | 'right', () => string>>;

const UPSTAGE: SideWords = {
  left: () => t`upstage left`,
  middle: () => t`upstage`,
  right: () => t`upstage right`,
};

const DOWNSTAGE: SideWords = {
  left: () => t`downstage left`,
  middle: () => t`downstage`,
  right: () => t`downstage right`,
};
