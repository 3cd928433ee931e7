/** How big the large instruments are and which end of them lies where, so that a crew can set them before the players come. */

import { largeInstrumentModel, type LargeInstrumentModel } from '../../catalogue/large-instruments.ts';
import { pianoModel } from '../../catalogue/pianos.ts';
import { formatBare, type Units } from '../../document/measures.ts';
import type { LargeInstrument, Piano, Point } from '../../document/records.ts';
import { placed } from '../../geometry/frame.ts';
import { isBars, isDrums } from '../plan/large.ts';

/** "2600 × 1020, 950 high", "low end stage left"; nothing of a model that the catalogue does not have. */
export function largeInstrumentNotes(instrument: LargeInstrument, units: Units): string[] {
  const model = largeInstrumentModel(instrument.model);
  if (!model) return [];
  const end = tellingEnd(model);
  return [
    `${sizeOf([model.width, model.depth], units)}, ${formatBare(model.height, units)} high`,
    ...(end ? [`${end.words} ${stageSide(instrument.facing, end.towards)}`] : []),
  ];
}

/** "1510 × 2110", "tail stage right", or where the keys of an upright are. */
export function pianoNotes(piano: Piano, units: Units): string[] {
  const model = pianoModel(piano.model);
  if (!model) return [];
  const [words, towards] =
    model.form === 'grand' ? (['tail', { x: 0, y: -1 }] as const) : (['keys', { x: 0, y: 1 }] as const);
  return [sizeOf([model.width, model.length], units), `${words} ${stageSide(piano.facing, towards)}`];
}

/** "1200 × 600": width and depth as its player sees it. */
export function sizeOf(lengths: readonly number[], units: Units): string {
  return lengths.map((each) => formatBare(each, units)).join(' × ');
}

interface End {
  readonly words: string;
  /** In the instrument's own frame. */
  readonly towards: Point;
}

/** What tells one end from the other: the low bars on the player's left, or the largest drum of a set. */
function tellingEnd(model: LargeInstrumentModel): End | null {
  if (isBars(model)) return { words: 'low end', towards: { x: 1, y: 0 } };
  if (!isDrums(model) || model.boxes.length < 2) return null;
  const [largest, next] = model.boxes.toSorted((a, b) => b.width - a.width);
  return largest && next && largest.width > next.width ? { words: 'largest drum', towards: largest } : null;
}

/** Beyond this share of the whole way a direction counts: the sine of half of 45°. */
const COUNTS = Math.sin(Math.PI / 8);

/** "stage left", "upstage right": to the nearest of the eight directions, for an item turned by `facing` degrees. */
function stageSide(facing: number, towards: Point): string {
  const { x, y } = placed({ x: 0, y: 0, facing }, towards);
  const far = Math.hypot(x, y) * COUNTS;
  const across = x > far ? 'left' : x < -far ? 'right' : '';
  const depth = y > far ? 'upstage' : y < -far ? 'downstage' : '';
  return depth === '' ? `stage ${across}` : [depth, across].filter((word) => word !== '').join(' ');
}
