/** Players from the side: what they sit on, themselves, what they hold, and the window that the house looks for. */

import { instrumentModel, type InstrumentModel } from '../../catalogue/instruments.ts';
import { BODY_DEPTH } from '../../catalogue/outlines.ts';
import { bodies, type Body } from '../../catalogue/people.ts';
import { seatModel, USUAL_SEAT, WHEELCHAIR } from '../../catalogue/seats.ts';
import { onPlane } from '../../checks/sightlines/rake-plane.ts';
import { floorHeightAt } from '../../document/levels.ts';
import type { Millimetres, Player } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { line, rectangle, type Path } from '../outline.ts';
import { paint, pen } from '../plan/context.ts';
import { bar } from '../plan/held.ts';
import type { GroupPrimitive, Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { planeToPage, type SectionContext, type ShownItem } from './context.ts';
import { chairLines, figureOf, looksAlong, widthSeen, type Posture } from './figure.ts';
import { silhouette } from './people.ts';
import { FOOTREST, wheelchairParts } from './wheelchair.ts';

export function drawPlayer(context: SectionContext, { record, full }: ShownItem<Player>): GroupPrimitive {
  const { palette } = context;
  const posture = postureOf(context, record);
  const { behind, before } = chairParts(context, record, posture);
  const { body, head } = figureOf(posture);
  const look = full
    ? { fill: palette.player, head: palette.playerHead, line: palette.ink, width: WEIGHT.thin }
    : { fill: palette.paper, head: palette.paper, line: palette.faint, width: WEIGHT.hair };
  return {
    kind: 'group',
    subject: record.id,
    description: full ? t`Player` : t`Player beside the section`,
    children: [
      ...behind,
      ...silhouette(context, body, look),
      ...before,
      ...(full ? drawHeld(context, record, posture) : []),
      ...silhouette(context, head, { ...look, fill: look.head }),
    ],
  };
}

function bodyOf(player: Player): Body {
  return bodies(player.person, player.chair?.height ?? null).tall;
}

function postureOf({ document, setup, plane }: SectionContext, player: Player): Posture {
  const body = bodyOf(player);
  const looks = looksAlong(plane, player.facing);
  return {
    axis: onPlane(plane, player).out,
    floorZ: floorHeightAt(document, setup, player),
    crown: body.crown,
    shoulder: body.shoulderHeight,
    waist: body.waistHeight,
    seat: player.chair?.height ?? null,
    feet: player.chair?.model === WHEELCHAIR.id ? FOOTREST : 0,
    looks,
    breadth: 0.85 * widthSeen(looks, body.shoulderBreadth, BODY_DEPTH),
    headWidth: widthSeen(looks, body.headBreadth, body.headLength),
  };
}

/** What of his chair is behind him, and what before. */
function chairParts(context: SectionContext, { chair }: Player, { axis, floorZ, looks }: Posture) {
  if (!chair) return { behind: [], before: [] };
  const pose = { x: axis, y: floorZ, seat: chair.height, looks };
  if (chair.model === WHEELCHAIR.id) return wheelchairParts(context, pose);
  const { back } = seatModel(chair.model) ?? USUAL_SEAT;
  const lines = chairLines({ ...pose, back });
  return { behind: [paint(context.toPage, lines, pen(context.palette.ink, WEIGHT.medium))], before: [] };
}

function drawHeld(context: SectionContext, player: Player, posture: Posture): Primitive[] {
  const { palette } = context;
  const shapes = (context.held.get(player.id) ?? []).flatMap(({ model }) => {
    const known = instrumentModel(model);
    return known ? heldShape(known, posture) : [];
  });
  if (shapes.length === 0) return [];
  return silhouette(context, shapes, { fill: palette.instrument, line: palette.ink, width: WEIGHT.hair });
}

/** From the chin down to the mouth, and from the axis out to the lips, mm. */
const MOUTH = { below: 165, out: 95 };

/** A box where the catalogue has one; otherwise a bar from the mouth or the shoulder to where the instrument ends. */
function heldShape(model: InstrumentModel, posture: Posture): Path[] {
  const { axis, floorZ, crown, shoulder, waist, looks } = posture;
  const { held, family, ahead } = model;
  if (held) {
    const middle = axis + looks * held.ahead;
    const low = floorZ + (held.from === 'floor' ? 0 : waist) + held.bottom;
    const width = widthSeen(looks, held.width, held.depth);
    return [rectangle({ x: middle - width / 2, y: low, width, height: held.top - held.bottom })];
  }
  const mouth = { x: axis + looks * MOUTH.out, y: floorZ + crown - MOUTH.below };
  if (family === 'bowed') {
    const neck = { x: axis + looks * 60, y: floorZ + shoulder + 30 };
    return [bar(neck, { x: axis + looks * ahead, y: neck.y + 20 }, 70)];
  }
  if (family === 'brass') return [bar(mouth, { x: axis + looks * ahead, y: mouth.y - 40 }, 60)];
  if (family !== 'woodwind') return [];
  if (model.showsDownTo === 0) return [bar(mouth, { x: axis + looks * ahead, y: mouth.y - 60 }, 34)];
  return [bar(mouth, { x: axis + looks * ahead, y: floorZ + waist - model.showsDownTo + 60 }, 38)];
}

/** The window of a player as it stands in the plane: from the lowest point that should be seen to the crown. */
export function drawWindow(context: SectionContext, player: Player): Primitive[] {
  const target = context.scene.targets.find(({ id }) => id === player.id);
  if (!target) return [];
  const { palette, plane } = context;
  const { out } = onPlane(plane, player);
  const [low, high] = [planeToPage(context, out, target.z0), planeToPage(context, out, target.z1)];
  const ends = [low, high].flatMap(({ x, y }) => line({ x: x - END, y }, { x: x + END, y }));
  const path = [...line(low, high), ...ends];
  return [
    { kind: 'path', path, ...pen(palette.paper, CASING) },
    { kind: 'path', path, ...pen(palette.selection, WEIGHT.medium) },
  ];
}

/** Half the length of the strokes that end a window, and the light line under it, mm on paper. */
const END = 0.8;
const CASING = 0.8;

/** Where a player is on the plane, from the floor to the crown: what his label points to. */
export function playerStretch(
  { plane, document, setup }: SectionContext,
  player: Player,
): { readonly out: Millimetres; readonly low: Millimetres; readonly high: Millimetres } {
  const floor = floorHeightAt(document, setup, player);
  return { out: onPlane(plane, player).out, low: floor, high: floor + bodyOf(player).crown };
}
