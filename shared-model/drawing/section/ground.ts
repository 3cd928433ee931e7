/** What people stand on, seen from the side: the house floor, the platform, the steps of the rake and balconies. */

import { RAIL_AHEAD } from '../../checks/scene/house.ts';
import { crossings } from '../../checks/sightlines/rake-focus.ts';
import { onPlane } from '../../checks/sightlines/rake-plane.ts';
import type { BlockRake } from '../../checks/sightlines/rake.ts';
import { find, platformOf } from '../../document/document.ts';
import { formatLength } from '../../document/measures.ts';
import type { Millimetres, Point } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { hatching, line, polygon, polyline } from '../outline.ts';
import { dimensionLine } from '../plan/dimensions.ts';
import { pen } from '../plan/context.ts';
import type { GroupPrimitive, PathItem, Primitive } from '../primitives.ts';
import { CAP_HEIGHT, TEXT, WEIGHT } from '../style.ts';
import { textLine } from '../text.ts';
import { planeToPage, type SectionContext } from './context.ts';
import { sectionReach } from './reach.ts';
import { isUpper, stepsOf, type Steps } from './steps.ts';

/** Height of the hatched band under the house floor, mm on paper. */
export const EARTH = 2;

/** The floor of the house from end to end, with the ground under it. */
export function drawFloor(context: SectionContext): Primitive[] {
  const { palette, document } = context;
  const z = -platformOf(document).height;
  const { from, to } = sectionReach(context);
  const [a, b] = [planeToPage(context, from, z), planeToPage(context, to, z)];
  const band = [a, b, { x: b.x, y: b.y + EARTH }, { x: a.x, y: a.y + EARTH }];
  return [
    { kind: 'path', path: hatching(band, 1.1, 45), ...pen(palette.building, WEIGHT.hair) },
    { kind: 'path', path: line(a, b), ...pen(palette.ink, WEIGHT.bold) },
  ];
}

/** The platform where the plane cuts it, before what shows of it beyond. */
export function drawPlatform(context: SectionContext): GroupPrimitive {
  const { palette, document, plane, units, cut } = context;
  const { id, outline, height } = platformOf(document);
  const cuts = crossings(plane, outline);
  const all = outline.map((corner) => onPlane(plane, corner).out);
  const whole: Stretch = [
    all.reduce((least, out) => Math.min(least, out), Infinity),
    all.reduce((most, out) => Math.max(most, out), -Infinity),
  ];
  const pieces = cuts.flatMap((to, index): Stretch[] =>
    index % 2 === 1 ? [[cuts[index - 1] ?? to, to]] : [],
  );
  const body = (stretch: Stretch): PathItem[] => blockPath(context, stretch, [-height, 0]);
  const paintedBody = (stretch: Stretch): Primitive => ({
    kind: 'path',
    path: body(stretch),
    ...pen(palette.faint, WEIGHT.thin),
  });
  return {
    kind: 'group',
    subject: id,
    description: t`Platform, ${formatLength(height, units)} high`,
    children: [
      // On a slant the farthest corners would seem to be part of what is cut.
      ...(cut.through === 'centre' ? [paintedBody(whole)] : []),
      ...pieces.map((piece): Primitive => ({
        kind: 'path',
        path: body(piece),
        fill: palette.platform,
        ...pen(palette.ink, WEIGHT.bold),
      })),
    ],
  };
}

type Stretch = readonly [number, number];

function blockPath(context: SectionContext, [from, to]: Stretch, [low, high]: Stretch): PathItem[] {
  return polygon([
    planeToPage(context, from, low),
    planeToPage(context, to, low),
    planeToPage(context, to, high),
    planeToPage(context, from, high),
  ]);
}

/** How far off the front edge the height of the platform is drawn, mm on paper. */
const DIMENSION_OFF = 4;
/** Lower than this on paper there is no room for a dimension line. */
const LEAST_DIMENSION = 1;

/** The height of the platform as a dimension line: in its body, or before it where the figure is too tall for that. */
export function drawHeight(context: SectionContext): Primitive[] {
  const { palette, document, units, scale } = context;
  const { height, outline } = platformOf(document);
  const front = crossings(context.plane, outline).at(-1);
  const tall = height / scale;
  if (front === undefined || tall < LEAST_DIMENSION) return [];
  const inside = tall > TEXT.small * 1.3;
  const [top, foot] = [planeToPage(context, front, 0), planeToPage(context, front, -height)];
  const x = top.x + (inside ? -DIMENSION_OFF : DIMENSION_OFF);
  const witness = inside ? [] : [paintedLine({ x: top.x + 0.8, y: top.y }, { x, y: top.y }, palette.faint)];
  const figure = textLine(
    formatLength(height, units),
    { x: x + (inside ? -1.2 : 1.2), y: (top.y + foot.y) / 2 + (TEXT.small * CAP_HEIGHT) / 2 },
    { size: TEXT.small, weight: 'regular', colour: palette.ink, anchor: inside ? 'end' : 'start' },
  );
  return [...witness, ...dimensionLine(context, { x, y: top.y }, { x, y: foot.y }), figure];
}

function paintedLine(a: Point, b: Point, colour: string): Primitive {
  return { kind: 'path', path: line(a, b), ...pen(colour, WEIGHT.hair) };
}

/** The steps of a block: solid down to the house floor, or a slab where people sit below it. */
export function drawSteps(context: SectionContext, rake: BlockRake): Primitive[] {
  const steps = stepsOf(context, rake);
  const upper = isUpper(context, rake);
  const floor = -platformOf(context.document).height;
  const flat = steps.treads.every(({ z }) => z - floor < 1);
  if (flat) return [];
  const top = profileOf(context, steps);
  const under = upper ? undersideOf(context, steps) : footOf(context, steps, floor);
  const outline = [...top, ...under.reverse()];
  const { palette } = context;
  const body: Primitive[] = upper
    ? [
        { kind: 'path', path: polygon(outline), fill: palette.paper },
        { kind: 'path', path: hatching(outline, 1.1, 45), ...pen(palette.building, WEIGHT.hair) },
        { kind: 'path', path: polygon(outline), ...pen(palette.ink, WEIGHT.medium) },
      ]
    : [{ kind: 'path', path: polygon(outline), fill: palette.riser }];
  return [
    ...body,
    { kind: 'path', path: polyline(top), ...pen(palette.ink, WEIGHT.bold) },
    ...railOf(context, rake),
  ];
}

/** Up the steps, from the front to the back. */
function profileOf(context: SectionContext, { treads }: Steps): Point[] {
  return treads.flatMap(({ from, to, z }) => [planeToPage(context, from, z), planeToPage(context, to, z)]);
}

function footOf(context: SectionContext, { treads }: Steps, floor: Millimetres): Point[] {
  const [first, last] = [treads[0], treads.at(-1)];
  return first && last ? [planeToPage(context, first.from, floor), planeToPage(context, last.to, floor)] : [];
}

/** What a slab is thick under the inner edge of a step. Common practice, no source. */
const SLAB = 250;

/** Level under the front tread, then along the slope of the steps. */
function undersideOf(context: SectionContext, { treads }: Steps): Point[] {
  const under = treads.map(({ to, z }) => planeToPage(context, to, z - SLAB));
  const first = treads[0];
  return first ? [planeToPage(context, first.from, first.z - SLAB), ...under] : [];
}

/** Thickness of a rail on the drawing. */
const RAIL = 60;

function railOf(context: SectionContext, { block, rows }: BlockRake): Primitive[] {
  const height = find(context.document, block)?.frontRail ?? 0;
  const front = rows[0];
  if (!front || height <= 0) return [];
  const at = front.out - front.looks * RAIL_AHEAD;
  const path = blockPath(context, [at - RAIL / 2, at + RAIL / 2], [front.floorZ, front.floorZ + height]);
  return [{ kind: 'path', path, fill: context.palette.metal, ...pen(context.palette.ink, WEIGHT.thin) }];
}
