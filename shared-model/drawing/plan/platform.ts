/** The platform itself: floor, walls, open edges with their warning, and doors. */

import { allOf, platformOf } from '../../document/document.ts';
import { formatLength } from '../../document/measures.ts';
import { doorway, edgeOf, openingKind } from '../../document/openings.ts';
import type { Door, Platform } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { boxOfPoints } from '../bounds.ts';
import type { Occupancy } from '../occupancy.ts';
import { line, polygon } from '../outline.ts';
import type { Box, GroupPrimitive, PathItem, Primitive, TextPrimitive } from '../primitives.ts';
import { TEXT, WEIGHT } from '../style.ts';
import { paint, pen, type PlanContext } from './context.ts';
import { besideEdge, pageEdge, wordsBeside, type PageEdge } from './page-edge.ts';

/** Floor, outline, open edges and doors; their words keep clear of what is `taken`. Static while items are dragged. */
export function drawPlatform(context: PlanContext, taken: Occupancy): GroupPrimitive {
  const platform = platformOf(context.document);
  const { palette, toPage, units } = context;
  const doors = allOf(context.document, 'door');
  const openEdges = captioned(context, {
    platform,
    edges: platform.openEdges.map((index) => ({
      edge: pageEdge(context, platform, edgeOf(platform, index)),
      doors: doors.filter((door) => door.edge === index),
    })),
  });
  for (const box of openEdges.flatMap(({ edge }) => toothBoxes(edge))) taken.take(box);
  // The words of the doors find their places first: which way out is matters more than what teeth say for themselves.
  const doorways = doors.map((door) => drawDoor(context, { platform, taken }, door));
  const edges = openEdges.flatMap((openEdge) => drawOpenEdge(context, { platform, taken }, openEdge));
  return {
    kind: 'group',
    subject: platform.id,
    description: t`Platform, ${formatLength(platform.height, units)} high, ${platform.openEdges.length} open edges`,
    children: [
      paint(toPage, polygon(platform.outline), { fill: palette.platform }),
      paint(toPage, polygon(platform.outline), pen(palette.ink, WEIGHT.bold)),
      ...edges,
      ...doorways,
    ],
  };
}

interface Surroundings {
  readonly platform: Platform;
  readonly taken: Occupancy;
}

interface BareEdge {
  readonly edge: PageEdge;
  readonly doors: readonly Door[];
}

interface OpenEdge extends BareEdge {
  /** What it says of itself; empty where its neighbour says it. */
  readonly words: string;
}

interface BareEdges {
  readonly platform: Platform;
  readonly edges: readonly BareEdge[];
}

/** Every open edge says what it is, but of the many short ones of a rounded platform only one now and then. */
function captioned({ units, measure }: PlanContext, { platform, edges }: BareEdges): OpenEdge[] {
  const words = t`OPEN EDGE, drop ${formatLength(platform.height, units)}`;
  const width = measure(words, TEXT.small, 'bold');
  let silent = Infinity;
  return edges.map((one) => {
    const speaks = one.edge.length >= width || silent >= 2 * width;
    silent = speaks ? 0 : silent + one.edge.length;
    return { ...one, words: speaks ? words : '' };
  });
}

/** Teeth that point down the drop, as on a map of a cliff, and the word: the warning must not hang on a colour. */
function drawOpenEdge(
  context: PlanContext,
  { taken }: Surroundings,
  { edge, doors, words }: OpenEdge,
): Primitive[] {
  const { palette } = context;
  const look = { clear: TOOTH + 1.3, colour: palette.warning, bold: true, air: 0.25, taken };
  const say = (said: string): Primitive[] =>
    said === ''
      ? []
      : wordsBeside(context, edge, { ...look, words: said, at: sharesAlong(context, edge, said) });
  const whole = say(words);
  return [
    { kind: 'path', path: line(edge.a, edge.b), ...pen(palette.warning, WEIGHT.heavy) },
    { kind: 'path', path: teeth(edge, doors, context.scale), fill: palette.warning },
    ...(whole.length > 0 || words === '' ? whole : say(t`OPEN EDGE`)),
  ];
}

/** The strip that the teeth of an edge stand in, in short pieces. */
export function toothBoxes(edge: PageEdge): Box[] {
  const count = Math.max(1, Math.min(400, Math.ceil(edge.length / 2)));
  return Array.from({ length: count }, (_, piece) => {
    const [from, to] = [piece / count, (piece + 1) / count].map((share) => share * edge.length);
    return boxOfPoints([besideEdge(edge, from ?? 0, 0), besideEdge(edge, to ?? 0, TOOTH)]);
  }).filter((box) => box !== null);
}

const TOOTH = 1.7;
const TOOTH_PITCH = 4;
/** Clear of the centre line first. */
const ALONG = [0.27, 0.73, 0.2, 0.8, 0.33, 0.67, 0.13, 0.87, 0.4, 0.6, 0.5];

/** So that the words do not run on past a corner, as long as the edge is longer than they are. */
function sharesAlong({ measure }: PlanContext, { length }: PageEdge, words: string): number[] {
  const half = measure(words, TEXT.small, 'bold') / 2 / Math.max(length, 1e-6);
  return half >= 0.5 ? [0.5] : ALONG.map((share) => Math.max(half, Math.min(1 - half, share)));
}

/** None where steps or a ramp lead through the edge. */
function teeth(edge: PageEdge, doors: readonly Door[], scale: number): PathItem[] {
  const count = Math.max(1, Math.round(edge.length / TOOTH_PITCH));
  const spots = Array.from({ length: count }, (_, tooth) => (edge.length * (tooth + 0.5)) / count);
  const inDoorway = (at: number): boolean =>
    doors.some(({ offset, width }) => at > offset / scale && at < (offset + width) / scale);
  return spots
    .filter((at) => !inDoorway(at))
    .flatMap((at) =>
      polygon([besideEdge(edge, at - 0.6, 0), besideEdge(edge, at, TOOTH), besideEdge(edge, at + 0.6, 0)]),
    );
}

/** How far a doorway's threshold is drawn outside the wall. */
const THRESHOLD = 1.4;

/** A gap in the wall with jambs, an arrow through it when people may leave here, and what it is. */
function drawDoor(context: PlanContext, { platform, taken }: Surroundings, door: Door): GroupPrimitive {
  const { palette, units } = context;
  const edge = pageEdge(context, platform, doorway(platform, door));
  const { length } = edge;
  const passage = openingWords(platform, door);
  const how = door.stepFree ? t`step-free` : t`steps`;
  const words = [door.exit ? t`EXIT` : passage.name, formatLength(door.width, units)]
    .concat(door.exit || passage.isDoor ? [how] : [])
    .join(', ');
  const jambs = [0, length].flatMap((at) => line(besideEdge(edge, at, -1), besideEdge(edge, at, THRESHOLD)));
  const threshold = line(besideEdge(edge, 0, THRESHOLD), besideEdge(edge, length, THRESHOLD));
  for (const box of doorBoxes(edge, door.exit)) taken.take(box);
  return {
    kind: 'group',
    subject: door.id,
    description: `${door.name || passage.what}: ${words}`,
    children: [
      { kind: 'path', path: line(edge.a, edge.b), ...pen(palette.platform, WEIGHT.heavy * 1.5) },
      { kind: 'path', path: jambs, ...pen(palette.ink, WEIGHT.bold) },
      { kind: 'path', path: threshold, ...pen(palette.ink, WEIGHT.thin) },
      ...(door.exit ? exitArrow(context, edge) : []),
      ...doorWords(
        context,
        { edge, wall: pageEdge(context, platform, edgeOf(platform, door.edge)), taken },
        words,
      ),
    ],
  };
}

interface OpeningWords {
  /** On the plan where nobody may leave by it. */
  readonly name: string;
  readonly what: string;
  /** Steps and ramps say by their names how one passes. */
  readonly isDoor: boolean;
}

function openingWords(platform: Platform, door: Door): OpeningWords {
  const kind = openingKind(platform, door);
  if (kind === 'door') return { name: t`DOOR`, what: t`Door`, isDoor: true };
  return kind === 'ramp'
    ? { name: t`RAMP`, what: t`Ramp`, isDoor: false }
    : { name: t`STEPS`, what: t`Steps`, isDoor: false };
}

interface Doorway {
  readonly edge: PageEdge;
  /** The whole edge of the platform that the doorway is in. */
  readonly wall: PageEdge;
  readonly taken: Occupancy;
}

/** The door's words by the door, or only the first of them, or none: further off nobody would know which door they mean. */
function doorWords(context: PlanContext, { edge, wall, taken }: Doorway, words: string): TextPrimitive[] {
  const [short = words] = words.split(',');
  for (const said of [words, short]) {
    const at = doorShares(context, { edge, wall }, said);
    const found = wordsBeside(context, edge, {
      words: said,
      clear: 5.2,
      colour: context.palette.ink,
      at,
      taken,
    });
    if (found.length > 0) return found;
  }
  return [];
}

function exitArrow({ palette }: PlanContext, edge: PageEdge): Primitive[] {
  const middle = edge.length / 2;
  const spot = (along: number, out: number) => besideEdge(edge, middle + along, out);
  return [
    { kind: 'path', path: line(spot(0, -1.6), spot(0, 3)), ...pen(palette.ink, WEIGHT.fine) },
    { kind: 'path', path: polygon([spot(-0.8, 3), spot(0, 4.6), spot(0.8, 3)]), fill: palette.ink },
  ];
}

/** Threshold and arrow, so that no figure of the grid falls on them. */
function doorBoxes(edge: PageEdge, exit: boolean): Box[] {
  const middle = edge.length / 2;
  const spots = [
    [besideEdge(edge, 0, 0), besideEdge(edge, edge.length, THRESHOLD)],
    ...(exit ? [[besideEdge(edge, middle - 0.8, 0), besideEdge(edge, middle + 0.8, 4.4)]] : []),
  ];
  return spots.flatMap((ends) => boxOfPoints(ends) ?? []);
}

/** Over the doorway, or to one side of it where something stands before it; there they end with the wall. */
function doorShares(
  { measure }: PlanContext,
  { edge, wall }: Omit<Doorway, 'taken'>,
  words: string,
): number[] {
  const half = measure(words, TEXT.small, 'regular') / 2;
  const aside = (half + 5) / Math.max(edge.length, 1e-6);
  const start = Math.hypot(edge.a.x - wall.a.x, edge.a.y - wall.a.y);
  const isByWall = (share: number): boolean => {
    const middle = start + share * edge.length;
    return middle - half >= 0 && middle + half <= wall.length;
  };
  return [0.5, ...[0.5 + aside, 0.5 - aside].filter(isByWall)];
}
