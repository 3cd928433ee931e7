/** Sets an underlay right: to a known length, level, and with one of its points at the origin of the stage. */

import type { Document } from '../document/document.ts';
import { find } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Millimetres, Point, Underlay } from '../document/records.ts';
import { degrees, normaliseFacing, placed } from '../geometry/frame.ts';
import { t } from '../words/say.ts';
import { refuse, type Command, type Outcome } from './command.ts';
import { editsOf, propose } from './propose.ts';
import { tidy, tidyFacing } from './spots.ts';
import { nameOf } from './words.ts';

export interface ScaleUnderlay {
  readonly id: Id<'underlay'>;
  /** Two of its points, where they lie on the stage now. */
  readonly a: Point;
  readonly b: Point;
  /** How far they are apart in truth. */
  readonly distance: Millimetres;
  /** Turn it so that they lie level. */
  readonly level: boolean;
}

/** What a file may hold. */
const [LEAST_SCALE, MOST_SCALE] = [1e-6, 1e6];

/** The first point stays where it is. */
export const scaleUnderlay: Command<ScaleUnderlay> = (document, { id, a, b, distance, level }) => {
  const underlay = find(document, id);
  if (!underlay) return noSuch(id);
  const apart = Math.hypot(b.x - a.x, b.y - a.y);
  if (!(apart > 0)) return refuse(t`Both points are the same; click two that are apart.`);
  if (!(distance > 0)) return refuse(t`Give a distance that is more than nothing.`);
  const by = distance / apart;
  const scale = underlay.scale * by;
  if (!(scale >= LEAST_SCALE && scale <= MOST_SCALE))
    return refuse(t`With that distance it would be far too small or too large for a house; check the unit.`);
  const turned = level ? levelling(a, b) : 0;
  const corner = placed({ ...a, facing: turned }, { x: (underlay.x - a.x) * by, y: (underlay.y - a.y) * by });
  const changed: Underlay = {
    ...underlay,
    x: tidy(corner.x),
    y: tidy(corner.y),
    scale,
    turn: tidyFacing(underlay.turn + turned),
  };
  const name = nameOf(document, underlay);
  return changedTo(document, changed, t`scale ${name}`);
};

/** The least turn, in degrees, after which the points lie level, whichever of them is on the left. */
function levelling(a: Point, b: Point): number {
  const angle = normaliseFacing(-degrees(Math.atan2(b.y - a.y, b.x - a.x)));
  if (angle > 90) return angle - 180;
  return angle <= -90 ? angle + 180 : angle;
}

export interface UnderlayToOrigin {
  readonly id: Id<'underlay'>;
  /** The point of it that is to lie where the centre line meets the front edge. */
  readonly point: Point;
}

export const underlayToOrigin: Command<UnderlayToOrigin> = (document, { id, point }) =>
  moveUnderlay(document, { id, dx: -point.x, dy: -point.y });

export interface MoveUnderlay {
  readonly id: Id<'underlay'>;
  readonly dx: Millimetres;
  readonly dy: Millimetres;
}

export const moveUnderlay: Command<MoveUnderlay> = (document, { id, dx, dy }) => {
  const underlay = find(document, id);
  if (!underlay) return noSuch(id);
  const name = nameOf(document, underlay);
  const moved = { ...underlay, x: tidy(underlay.x + dx), y: tidy(underlay.y + dy) };
  return changedTo(document, moved, t`move ${name}`);
};

function changedTo(document: Document, underlay: Underlay, label: string): Outcome {
  return propose(document, editsOf([underlay]), { label });
}

function noSuch(id: string): Outcome {
  return refuse(t`There is no underlay "${id}".`);
}
