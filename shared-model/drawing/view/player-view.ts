/** The view of a player: the pages before him, the partners, the house behind them. */

import { bodies } from '../../catalogue/people.ts';
import { eyesOf } from '../../checks/reading/eyes.ts';
import { desksOf } from '../../document/desks.ts';
import { inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import { floorHeightAt } from '../../document/levels.ts';
import type { Player } from '../../document/records.ts';
import { degrees, facingTowards, facingVector, radians, type Vec3 } from '../../geometry/frame.ts';
import { meanOf } from './vectors.ts';
import type { Field, View } from './view.ts';

/** To either side the picture goes so far at least, and so far at most when another player is there; degrees. */
const CALM = 42;
const WIDEST = 60;
/** Beyond a player's middle, as a tangent. */
const SIDE_MARGIN = 0.12;
/** Above the level of his eyes the picture goes up so far, as a tangent from the level. */
const OVER_EYES = 0.24;
/** The view is bent a third of the way down to the pages, within these bounds: more would tilt the uprights too much. */
const LEAST_PITCH = 5;
const GREATEST_PITCH = 15;
/** Down from the middle at least and at most, as tangents. */
const DOWN = 0.75;
const DEEPEST = 1.4;
/** Room under the lowest page, and over the crowns of others for their names. */
const FOOTROOM = 0.08;
const HEADROOM = 0.16;
const HIGHEST = 1;

/** Null when there is no such player. His pages decide where he looks, else the way he faces. */
export function viewFromPlayer(document: Document, setup: Id<'setup'>, playerId: string): View | null {
  const player = document.records.get(playerId);
  if (player?.kind !== 'player') return null;
  // The figures are drawn as the tallest who may play, so the eye is his too.
  const eye = eyesOf(document, setup, player).at(-1);
  if (!eye) return null;
  const pages = pagesOf(document, setup, player);
  const { x, y, z } = eye;
  const gaze = gazeAt(eye, player, pages);
  return {
    subject: player.id,
    label: player.name || labelOf(document, setup, player.id),
    from: 'player',
    eye: { x, y, z },
    ...gaze,
    field: fieldOf(eye, gaze, { pages, crowns: crownsOfOthers(document, setup, player) }),
  };
}

interface Seen {
  readonly pages: readonly Vec3[];
  readonly crowns: readonly Vec3[];
}

/** The pages whole, and the other players as far as he has them before him. */
function fieldOf(eye: Vec3, gaze: Gaze, { pages, crowns }: Seen): Field {
  const wide = Math.tan(radians(WIDEST));
  let [left, right] = [-Math.tan(radians(CALM)), Math.tan(radians(CALM))];
  let top = Math.tan(radians(gaze.pitch)) + OVER_EYES;
  for (const crown of crowns) {
    const { across, up } = tangentsTo(crown, eye, gaze);
    if (!(Math.abs(across) <= wide)) continue;
    left = Math.min(left, across - SIDE_MARGIN);
    right = Math.max(right, across + SIDE_MARGIN);
    top = Math.max(top, Math.min(HIGHEST, up + HEADROOM));
  }
  const lowest = pages.reduce((least, page) => Math.min(least, tangentsTo(page, eye, gaze).up), 0);
  return { left, right, bottom: Math.min(-DOWN, Math.max(-DEEPEST, lowest - FOOTROOM)), top };
}

function crownsOfOthers(document: Document, setup: Id<'setup'>, { id }: Player): Vec3[] {
  return inSetup(document, setup, 'player').flatMap((other) => {
    if (other.id === id) return [];
    const { crown } = bodies(other.person, other.chair?.height ?? null).tall;
    return { x: other.x, y: other.y, z: floorHeightAt(document, setup, other) + crown };
  });
}

/** Corners of the paper that he reads. */
function pagesOf(document: Document, setup: Id<'setup'>, player: Player): Vec3[] {
  return inSetup(document, setup, 'stand').flatMap((stand) =>
    desksOf(stand, floorHeightAt(document, setup, stand))
      .filter(({ side }) => side.reader === player.id)
      .flatMap(({ paper }) => paper ?? []),
  );
}

type Gaze = Pick<View, 'facing' | 'pitch'>;

function gazeAt(eye: Vec3, player: Player, pages: readonly Vec3[]): Gaze {
  if (pages.length === 0) return { facing: player.facing, pitch: LEAST_PITCH };
  const page = meanOf(pages);
  const down = degrees(Math.atan2(eye.z - page.z, Math.hypot(page.x - eye.x, page.y - eye.y)));
  const pitch = Math.round(Math.max(LEAST_PITCH, Math.min(GREATEST_PITCH, down / 3)));
  return { facing: facingTowards(eye, page), pitch };
}

/** From the middle of the view, to the right and up; without an end for what is beside or behind the eye. */
function tangentsTo(point: Vec3, eye: Vec3, { facing, pitch }: Gaze): { across: number; up: number } {
  const level = facingVector(facing);
  const [c, s] = [Math.cos(radians(pitch)), Math.sin(radians(pitch))];
  const [dx, dy, drop] = [point.x - eye.x, point.y - eye.y, eye.z - point.z];
  const away = dx * level.x + dy * level.y;
  const depth = away * c + drop * s;
  if (!(depth > 0)) return { across: Infinity, up: -Infinity };
  return { across: (dx * level.y - dy * level.x) / depth, up: (away * s - drop * c) / depth };
}
