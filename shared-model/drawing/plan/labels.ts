/** Bubbles with marks, names beside them, figures under them, and the lines that lead to what they name. */

import { outlineOf } from '../../catalogue/outlines.ts';
import { platformOf } from '../../document/document.ts';
import { edgeOf } from '../../document/openings.ts';
import type { Point } from '../../document/records.ts';
import { forEachEdge } from '../../geometry/polygon.ts';
import { bounds, boxOfPoints, grownBox, textBoxes } from '../bounds.ts';
import { circle, line, roundedRectangle } from '../outline.ts';
import { createOccupancy, type Occupancy } from '../occupancy.ts';
import type { Box, GroupPrimitive, PathItem, Primitive, TextPrimitive } from '../primitives.ts';
import { ASCENT, CAP_HEIGHT, DESCENT, TEXT, WEIGHT } from '../style.ts';
import { fitted, textLine, type Type } from '../text.ts';
import { onPage, pen, type PlanContext } from './context.ts';
import { centreLineBox } from './datum.ts';
import {
  leaderStart,
  OWN_END,
  placeLabels,
  type LabelPlaces,
  type PlacedLabel,
  type Size,
} from './label-places.ts';
import { houseBoxes } from './house-shown.ts';
import { boxesAlong } from './line-boxes.ts';
import { wayLines } from './overlays.ts';
import { pageEdge } from './page-edge.ts';
import { toothBoxes } from './platform.ts';
import { drawHeld } from './players.ts';
import { hasCoordinates, labelRequests, type LabelRequest } from './label-requests.ts';

const BUBBLE = { height: 4, pad: 1.1, gap: 0.9 };
const LONGEST_NAME = 60;
/** Where the whole name has no room, mm: two words as a rule. */
const SHORTER_NAME = 16;
const MARK_TYPE = { size: TEXT.small, weight: 'bold' } as const;
const NAME_TYPE = { size: TEXT.body, weight: 'regular' } as const;
const FIGURE_TYPE = { size: TEXT.small, weight: 'regular' } as const;
/** From a label's bubble to the letters of its figures, and from one line of them to the next. */
const FIGURE_GAP = 0.4;
const FIGURE_LEADING = FIGURE_TYPE.size * (ASCENT + DESCENT);

/** Places the labels round everything that is already drawn: its texts stay clear, its lines if possible. No label covers what is `barred`: the walls if it is left out. */
export function findLabelPlaces(
  context: PlanContext,
  drawn: readonly Primitive[],
  barred = wallBoxes(context),
): LabelPlaces {
  const requests = labelRequests(context).map((request) => shortened(context, request));
  return placeLabels(requests, {
    sizeOf: (request) => (hasCoordinates(context) ? roomySize : labelSize)(context, request),
    leastSizeOf: (request) => labelSize(context, request),
    // On paper a table has the whole names.
    shorterName: (name) =>
      context.area === null ? fitted(name, SHORTER_NAME, NAME_TYPE, context.measure) : name,
    texts: createOccupancy([...textBoxes(drawn, context.measure), ...crossBoxes(context)]),
    things: [
      // Labels rather do not cover it.
      centreLineBox(context),
      ...riserEdgeBoxes(context),
      ...(context.layers.seats ? houseBoxes(context) : []),
      ...heldBoxes(context),
      ...cableBoxes(context),
      ...wayBoxes(context),
    ],
    barred,
    area: context.area,
    centre: context.origin.x,
  });
}

/** What labels are drawn with, whatever they stand on. */
type LabelTools = Pick<PlanContext, 'palette' | 'measure'>;

/** The ground that leaders are seen on lies under all labels, so that it takes nothing from another label. */
export function drawLabels(context: LabelTools, { placed, barred }: LabelPlaces): GroupPrimitive[] {
  const halos = placed.filter(({ leader }) => leader).flatMap((label) => leaderHalo(context, label, barred));
  const ground: GroupPrimitive[] = halos.length > 0 ? [{ kind: 'group', children: halos }] : [];
  return [...ground, ...placed.map((label) => drawLabel(context, label))];
}

/** With no longer a name than a label has room for. */
export function shortened({ measure }: LabelTools, request: LabelRequest): LabelRequest {
  return { ...request, name: fitted(request.name, LONGEST_NAME, NAME_TYPE, measure) };
}

function bubbleWidth({ measure }: LabelTools, mark: string): number {
  return mark === ''
    ? 0
    : Math.max(BUBBLE.height, measure(mark, MARK_TYPE.size, MARK_TYPE.weight) + 2 * BUBBLE.pad);
}

export function labelSize(context: LabelTools, request: LabelRequest): Size {
  const { figures } = request;
  return {
    width: figures.reduce(
      (widest, words) => Math.max(widest, widthOf(context, words, FIGURE_TYPE)),
      firstLineWidth(context, request),
    ),
    height: BUBBLE.height + (figures.length > 0 ? FIGURE_GAP + figures.length * FIGURE_LEADING : 0),
  };
}

/** Room for the letters of any language: the same label stands at the same place on a German print and an English one. */
function roomySize(context: LabelTools, request: LabelRequest): Size {
  const { width, height } = labelSize(context, request);
  const mark = request.mark.replace(/^[^0-9]+/u, WIDEST_LETTERS);
  const figures = request.figures.map((words) => words.replaceAll(/[^0-9'"/ ·.,-]+/gu, WIDEST_LETTERS));
  const roomy = labelSize(context, { ...request, mark, figures });
  return { width: Math.max(width, roomy.width), height };
}

/** As broad as the one or two letters of any mark ("S", "PU", "OB") and of any figure ("SL", "hi"). */
const WIDEST_LETTERS = 'OO';

function firstLineWidth(context: LabelTools, { mark, name }: LabelRequest): number {
  const bubble = bubbleWidth(context, mark);
  const text = name === '' ? 0 : widthOf(context, name, NAME_TYPE);
  return bubble + (bubble > 0 && text > 0 ? BUBBLE.gap : 0) + text;
}

function widthOf({ measure }: LabelTools, text: string, { size, weight }: Type): number {
  return measure(text, size, weight);
}

function drawLabel(context: LabelTools, label: PlacedLabel): GroupPrimitive {
  const leader = label.leader ? drawLeader(context, label) : [];
  const children = [...leader, ...drawFirstLine(context, label), ...drawFigures(context, label)];
  return { kind: 'group', subject: label.request.subject, children };
}

/** On the left of its thing a label's lines end alike, on the right they begin alike: the mark is near the thing. */
function endsAtThing({ request, box }: PlacedLabel): boolean {
  return box.x + box.width / 2 < request.target.x - 1e-6;
}

function drawFirstLine(context: LabelTools, label: PlacedLabel): Primitive[] {
  const { request, box } = label;
  const bubble = bubbleWidth(context, request.mark);
  const x = endsAtThing(label) ? box.x + box.width - firstLineWidth(context, request) : box.x;
  const at = {
    x: x + (bubble > 0 ? bubble + BUBBLE.gap : 0),
    y: box.y + BUBBLE.height / 2 + (CAP_HEIGHT * NAME_TYPE.size) / 2,
  };
  const ink = { ...NAME_TYPE, colour: context.palette.ink };
  return [
    ...(bubble > 0
      ? drawBubble(context, request.mark, { x, y: box.y, width: bubble, height: BUBBLE.height })
      : []),
    ...(request.name === '' ? [] : [textLine(request.name, at, ink)]),
  ];
}

function drawFigures({ palette }: LabelTools, label: PlacedLabel): Primitive[] {
  const { request, box } = label;
  const isLeft = endsAtThing(label);
  const look = { ...FIGURE_TYPE, colour: palette.ink, anchor: isLeft ? 'end' : 'start' } as const;
  const top = box.y + BUBBLE.height + FIGURE_GAP + FIGURE_TYPE.size * ASCENT;
  return request.figures.map((words, row) =>
    textLine(words, { x: isLeft ? box.x + box.width : box.x, y: top + row * FIGURE_LEADING }, look),
  );
}

function drawBubble({ palette }: LabelTools, mark: string, box: Box): Primitive[] {
  const text: TextPrimitive = textLine(
    mark,
    { x: box.x + box.width / 2, y: box.y + box.height / 2 + (CAP_HEIGHT * MARK_TYPE.size) / 2 },
    { ...MARK_TYPE, colour: palette.ink, anchor: 'middle' },
  );
  return [
    {
      kind: 'path',
      path: roundedRectangle(box, box.height / 2),
      fill: palette.paper,
      ...pen(palette.ink, WEIGHT.fine),
    },
    text,
  ];
}

/** From the label's nearest side to the thing's point, ended with a dot. */
function drawLeader({ palette }: LabelTools, { request: { target }, box }: PlacedLabel): Primitive[] {
  return [
    { kind: 'path', path: line(leaderStart(box, target), target), ...pen(palette.faint, WEIGHT.hair) },
    { kind: 'path', path: circle(target, 0.4), fill: palette.ink },
  ];
}

/**
 * Paper on both sides of a leader, for a hair line is lost among others: not at the thing's own sign, and not over what is
 * barred, or a wall would have a gap there.
 */
function leaderHalo(
  { palette }: LabelTools,
  { request: { target }, box }: PlacedLabel,
  barred: Occupancy,
): Primitive[] {
  const start = leaderStart(box, target);
  const length = Math.hypot(target.x - start.x, target.y - start.y);
  const count = Math.ceil((length - OWN_END) / HALO_PIECE);
  if (length <= OWN_END) return [];
  const at = (piece: number): Point => {
    const share = ((piece / count) * (length - OWN_END)) / length;
    return { x: start.x + (target.x - start.x) * share, y: start.y + (target.y - start.y) * share };
  };
  const path = Array.from({ length: count }, (_, piece) => [at(piece), at(piece + 1)] as const)
    .filter((ends) => !barred.isTaken(grownBox(boxOfPoints(ends) ?? box, HALO / 2)))
    .flatMap(([from, to]) => line(from, to));
  return path.length === 0 ? [] : [{ kind: 'path', path, ...pen(palette.paper, HALO) }];
}

/** Width of the paper about a leader, and the length in which it is left out, mm. */
const [HALO, HALO_PIECE] = [0.9, 0.5];

/** Crosses at the very points that the figures are measured to, legible on whatever they lie on. */
export function drawCrosses(context: PlanContext): GroupPrimitive[] {
  if (!hasCoordinates(context)) return [];
  const { paper, ink } = context.palette;
  return context.items.map((record) => {
    const { x, y } = onPage(context, record);
    const cross = (arm: number): PathItem[] => [
      ...line({ x: x - arm, y }, { x: x + arm, y }),
      ...line({ x, y: y - arm }, { x, y: y + arm }),
    ];
    return {
      kind: 'group',
      subject: record.id,
      children: [
        { kind: 'path', path: cross(CROSS_ARM + 0.2), ...pen(paper, 0.85) },
        { kind: 'path', path: cross(CROSS_ARM), ...pen(ink, WEIGHT.fine) },
      ],
    };
  });
}

const CROSS_ARM = 1.1;

function crossBoxes(context: PlanContext): Box[] {
  if (!hasCoordinates(context)) return [];
  const arm = CROSS_ARM + 0.2;
  return context.items.map((record) => {
    const { x, y } = onPage(context, record);
    return { x: x - arm, y: y - arm, width: 2 * arm, height: 2 * arm };
  });
}

/** Walls of the platform, and its open edges with their teeth, which reach further out: the building is never covered. */
export function wallBoxes(context: PlanContext): Box[] {
  const platform = platformOf(context.document);
  const teeth = platform.openEdges.flatMap((index) =>
    toothBoxes(pageEdge(context, platform, edgeOf(platform, index))),
  );
  return [...teeth, ...outlineBoxes(context, platform.outline)];
}

function riserEdgeBoxes(context: PlanContext): Box[] {
  return context.risers.flatMap((riser) => outlineBoxes(context, outlineOf(riser)));
}

function outlineBoxes(context: PlanContext, outline: readonly Point[]): Box[] {
  const boxes: Box[] = [];
  const corners = outline.map((corner) => onPage(context, corner));
  forEachEdge(corners, (a, b) => boxes.push(...boxesAlong(a, b)));
  return boxes;
}

function cableBoxes(context: PlanContext): Box[] {
  const lamps = context.items.filter((record) => record.kind === 'lamp');
  return lamps.flatMap((lamp) => {
    const course = [lamp, ...lamp.cable].map((point) => onPage(context, point));
    return course.flatMap((to, index) => {
      const from = course[index - 1];
      return from ? boxesAlong(from, to) : [];
    });
  });
}

/** On paper the ways of wheelchairs and the circles they turn in; on a screen labels would jump about as these change. */
function wayBoxes(context: PlanContext): Box[] {
  if (!hasCoordinates(context)) return [];
  return wayLines(context).flatMap((course) =>
    course.flatMap((to, index) => {
      const from = course[index - 1];
      return from ? boxesAlong(from, to) : [];
    }),
  );
}

function heldBoxes(context: PlanContext): Box[] {
  const players = context.items.filter((record) => record.kind === 'player');
  return players.flatMap((player) => bounds(drawHeld(context, player), context.measure) ?? []);
}
