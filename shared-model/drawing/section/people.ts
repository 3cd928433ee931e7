/** Silhouettes on the page, and the people who sit, stand or film in the house. */

import { headRadius } from '../../checks/scene/people.ts';
import { LISTENER_BODY as BODY } from '../../checks/sightlines/rake-cuts.ts';
import type { Millimetres } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { mapPath } from '../affine.ts';
import { circle, line, polyline, rectangle, type Path } from '../outline.ts';
import { paint, pen } from '../plan/context.ts';
import { placeDescription } from '../plan/place-words.ts';
import type { GroupPrimitive, Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { planeToPage, type NamedRake, type SectionContext, type ShownPlace } from './context.ts';
import { chairLines, figureOf, type Figure, type Posture } from './figure.ts';

export interface SilhouetteLook {
  readonly fill: string;
  readonly line: string;
  readonly width: number;
}

/** Overlapping shapes as one outline: all their edges first, then all their insides. */
export function silhouette(
  context: SectionContext,
  paths: readonly Path[],
  look: SilhouetteLook,
): Primitive[] {
  const path = paths.flatMap((each) => mapPath(context.toPage, each));
  return [
    { kind: 'path', path, ...pen(look.line, 2 * look.width) },
    { kind: 'path', path, fill: look.fill },
  ];
}

/** The people of a block, row by row, on their seats. */
export function drawListeners(context: SectionContext, { block, name, rows }: NamedRake): GroupPrimitive {
  const { palette } = context;
  const figures = rows.map((row) => seated({ ...row, z: row.eyeZ }));
  const seats = rows.map(({ out, floorZ, looks }) =>
    chairLines({ x: axisOf(out, looks), y: floorZ, seat: SEAT_HEIGHT, looks: -looks, back: true }),
  );
  const eyes = rows.flatMap(({ out, eyeZ }) => circle(planeToPage(context, out, eyeZ), EYE));
  return {
    kind: 'group',
    subject: block,
    description: t`${name || t`Seats`}: ${rows.length} rows from the side`,
    children: [
      ...seats.map((seat) => paint(context.toPage, seat, pen(palette.houseSeatLine, WEIGHT.fine))),
      ...listenerShapes(context, figures),
      { kind: 'path', path: eyes, fill: palette.ink },
    ],
  };
}

/** A dot for the eye, mm on paper. */
const EYE = 0.32;

function listenerShapes(context: SectionContext, figures: readonly Figure[]): Primitive[] {
  const { palette } = context;
  const look = { fill: palette.hairline, line: palette.faint, width: WEIGHT.hair };
  return silhouette(
    context,
    figures.flatMap(({ body, head }) => [...body, ...head]),
    look,
  );
}

/** Of the seat under him, mm. */
const SEAT_HEIGHT = 410;
/** Chest and back, drawn. */
const TRUNK = 235;

interface Eye {
  readonly out: Millimetres;
  readonly z: Millimetres;
  readonly floorZ: Millimetres;
  readonly looks: 1 | -1;
}

/** The middle survey body, lifted or lowered until its eyes are where the row has them. */
function seated(eye: Eye): Figure {
  return figureOf({ ...postureOf(eye), seat: SEAT_HEIGHT });
}

function postureOf({ out, z, floorZ, looks }: Eye): Posture {
  const over = z - floorZ - BODY.eyeHeight;
  return {
    axis: axisOf(out, looks),
    floorZ,
    crown: BODY.crown + over,
    shoulder: BODY.shoulderHeight + over,
    waist: BODY.waistHeight + over,
    seat: null,
    looks: -looks,
    breadth: TRUNK,
    headWidth: 2 * headRadius(BODY),
  };
}

/** Head and shoulders are behind the eyes. */
function axisOf(out: Millimetres, looks: 1 | -1): Millimetres {
  return out + looks * headRadius(BODY);
}

/** A single place: somebody who sits or stands, or a camera on its legs. */
export function drawPlace(context: SectionContext, shown: ShownPlace): GroupPrimitive {
  const { place, out, floorZ, eyeZ } = shown;
  const eye: Eye = { out, z: eyeZ, floorZ, looks: 1 };
  const { palette } = context;
  const floor = line(planeToPage(context, out - 450, floorZ), planeToPage(context, out + 450, floorZ));
  return {
    kind: 'group',
    subject: place.id,
    description: placeDescription(place),
    children: [
      { kind: 'path', path: floor, ...pen(palette.ink, WEIGHT.medium) },
      ...placeShapes(context, shown, eye),
      { kind: 'path', path: circle(planeToPage(context, out, eyeZ), EYE), fill: palette.ink },
    ],
  };
}

function placeShapes(context: SectionContext, { place }: ShownPlace, eye: Eye): Primitive[] {
  const { palette, toPage } = context;
  if (place.use === 'camera') return camera(context, eye);
  if (place.use === 'standing') {
    return listenerShapes(context, [figureOf({ ...postureOf(eye), waist: (eye.z - eye.floorZ) * 0.66 })]);
  }
  const x = axisOf(eye.out, 1);
  const wheel = circle({ x: x + 60, y: eye.floorZ + WHEEL }, WHEEL);
  const caster = circle({ x: x - 420, y: eye.floorZ + 90 }, 90);
  return [
    ...listenerShapes(context, [seated(eye)]),
    paint(toPage, [...wheel, ...caster], pen(palette.ink, WEIGHT.fine)),
  ];
}

/** Of a wheelchair's large wheel (common practice, no source). */
const WHEEL = 300;

function camera(context: SectionContext, { out, z, floorZ }: Eye): Primitive[] {
  const { palette, toPage } = context;
  const head = { x: out + 150, y: z - 110 };
  const legs: Path = [
    ...polyline([{ x: head.x - 260, y: floorZ }, head, { x: head.x + 260, y: floorZ }]),
    ...line({ x: head.x, y: floorZ }, head),
  ];
  const body = rectangle({ x: out + 20, y: z - 100, width: 300, height: 190 });
  const lens = rectangle({ x: out - 60, y: z - 50, width: 80, height: 100 });
  return [
    paint(toPage, legs, pen(palette.metal, WEIGHT.fine)),
    ...silhouette(context, [body, lens], { fill: palette.hairline, line: palette.ink, width: WEIGHT.hair }),
  ];
}
