/** What the catalogue says of a carried instrument. */

import type { Millimetres } from '../../document/records.ts';
import type { Model } from '../sources.ts';

export type Hands = 'both' | 'left' | 'right' | 'none';

export type InstrumentFamily =
  'woodwind' | 'brass' | 'bowed' | 'plucked' | 'keyboard' | 'percussion' | 'voice';

/** What a large carried instrument hides: a box before the player, in his own frame. */
export interface HeldBox {
  /** Heights count from the floor (instruments on a spike) or from the waist. */
  readonly from: 'floor' | 'waist';
  readonly bottom: Millimetres;
  readonly top: Millimetres;
  /** Middle of the box before the player's axis, and to his left of it. */
  readonly ahead: Millimetres;
  readonly left: Millimetres;
  readonly width: Millimetres;
  readonly depth: Millimetres;
}

export interface InstrumentModel extends Model {
  readonly family: InstrumentFamily;
  /** Hands busy while playing. */
  readonly playing: Hands;
  /** Hands that can let go in a rest while the other holds the instrument; `both`: either of them. */
  readonly freeInRest: Hands;
  /** Room wanted beyond the shoulders, on the player's left and right: elbow, bow, bell, neck. */
  readonly elbowRoom: { readonly left: Millimetres; readonly right: Millimetres };
  /** How far it sticks out before the player's axis. */
  readonly ahead: Millimetres;
  /** Lowest point that should be seen, below the waist; 0: nothing below it. */
  readonly showsDownTo: Millimetres;
  /** What it hides of others; null: too slender to count. */
  readonly held: HeldBox | null;
}
