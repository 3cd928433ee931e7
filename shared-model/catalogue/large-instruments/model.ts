/** What the catalogue says of an instrument that stands on the floor. */

import type { Millimetres, Point } from '../../document/records.ts';
import type { LocalBox } from '../boxes.ts';
import type { Model } from '../sources.ts';

/** Local frame: its player looks along -y over it, +x is his left. */
export interface LargeInstrumentModel extends Model {
  readonly outline: readonly Point[];
  /** Of the outline's bounding box. */
  readonly width: Millimetres;
  readonly depth: Millimetres;
  readonly height: Millimetres;
  /** What it hides. */
  readonly boxes: readonly LocalBox[];
  /** Axis of the player's head and shoulders in the middle of his playing range. */
  readonly playerAt: Point;
}
