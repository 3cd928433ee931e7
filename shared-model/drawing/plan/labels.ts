/** Bubbles with marks, names beside them, and the lines that lead to what they name. */

import { outlineOf } from '../../catalogue/outlines.ts';
import { platformOf } from '../../document/document.ts';
import { forEachEdge } from '../../geometry/polygon.ts';
import { bounds, textBoxes } from '../bounds.ts';
import { circle, line, roundedRectangle } from '../outline.ts';
import { createOccupancy } from '../occupancy.ts';
import type { Box, GroupPrimitive, Primitive, TextPrimitive } from '../primitives.ts';
import { CAP_HEIGHT, TEXT, WEIGHT } from '../style.ts';
import { fitted, textLine } from '../text.ts';
import { onPage, pen, type PlanContext } from './context.ts';
import { placeLabels, type LabelPlaces, type PlacedLabel, type Size } from './label-places.ts';
import { placeBoxes } from './house.ts';
import { drawHeld } from './players.ts';
import { labelRequests, type LabelRequest } from './label-requests.ts';

const BUBBLE = { height: 4, pad: 1.1, gap: 0.9 };
const LONGEST_NAME = 60;
const MARK_TYPE = { size: TEXT.small, weight: 'bold' } as const;
const NAME_TYPE = { size: TEXT.body, weight: 'regular' } as const;

/** Places the labels round everything that is already drawn: its texts stay clear, its lines if possible. */
export function findLabelPlaces(context: PlanContext, drawn: readonly Primitive[]): LabelPlaces {
  const requests = labelRequests(context).map((request) => shortened(context, request));
  return placeLabels(requests, {
    sizeOf: (request) => labelSize(context, request),
    texts: createOccupancy(textBoxes(drawn, context.measure)),
    things: [
      ...centreLineBoxes(context),
      ...edgeBoxes(context),
      ...placeBoxes(context),
      ...heldBoxes(context),
    ],
    area: context.area,
  });
}

/** What labels are drawn with, whatever they stand on. */
type LabelTools = Pick<PlanContext, 'palette' | 'measure'>;

export function drawLabels(context: LabelTools, { placed }: LabelPlaces): GroupPrimitive[] {
  return placed.map((label) => drawLabel(context, label));
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

export function labelSize(context: LabelTools, { mark, name }: LabelRequest): Size {
  const bubble = bubbleWidth(context, mark);
  const text = name === '' ? 0 : context.measure(name, NAME_TYPE.size, NAME_TYPE.weight);
  return { width: bubble + (bubble > 0 && text > 0 ? BUBBLE.gap : 0) + text, height: BUBBLE.height };
}

function drawLabel(context: LabelTools, label: PlacedLabel): GroupPrimitive {
  const { request, box } = label;
  const { palette } = context;
  const bubble = bubbleWidth(context, request.mark);
  const children: Primitive[] = label.leader ? drawLeader(context, label) : [];
  if (bubble > 0) children.push(...drawBubble(context, request.mark, { ...box, width: bubble }));
  if (request.name !== '') {
    const x = box.x + (bubble > 0 ? bubble + BUBBLE.gap : 0);
    const y = box.y + box.height / 2 + (CAP_HEIGHT * NAME_TYPE.size) / 2;
    children.push(textLine(request.name, { x, y }, { ...NAME_TYPE, colour: palette.ink }));
  }
  return { kind: 'group', subject: request.subject, children };
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

/** From the label's nearest side to the thing's middle, ended with a dot. */
function drawLeader({ palette }: LabelTools, { request: { item }, box }: PlacedLabel): Primitive[] {
  const to = { x: item.x + item.width / 2, y: item.y + item.height / 2 };
  const from = {
    x: Math.max(box.x, Math.min(box.x + box.width, to.x)),
    y: Math.max(box.y, Math.min(box.y + box.height, to.y)),
  };
  return [
    { kind: 'path', path: line(from, to), ...pen(palette.faint, WEIGHT.hair) },
    { kind: 'path', path: circle(to, 0.4), fill: palette.ink },
  ];
}

/** The centre line as a thing that labels rather do not cover. */
function centreLineBoxes({ origin, area }: PlanContext): Box[] {
  const [top, height] = area ? [area.y, area.height] : [origin.y - 400, 800];
  return [{ x: origin.x - 0.5, y: top, width: 1, height }];
}

/** The lines of the platform and of the risers, in short pieces, for the same reason. */
function edgeBoxes(context: PlanContext): Box[] {
  const outlines = [platformOf(context.document).outline, ...context.risers.map((riser) => outlineOf(riser))];
  const boxes: Box[] = [];
  for (const outline of outlines) {
    forEachEdge(
      outline.map((corner) => onPage(context, corner)),
      (a, b) => {
        const pieces = Math.min(200, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / 3));
        for (let piece = 0; piece < pieces; piece++) {
          const x = a.x + ((b.x - a.x) * (piece + 0.5)) / pieces;
          const y = a.y + ((b.y - a.y) * (piece + 0.5)) / pieces;
          boxes.push({ x: x - 1.5, y: y - 0.75, width: 3, height: 1.5 });
        }
      },
    );
  }
  return boxes;
}

function heldBoxes(context: PlanContext): Box[] {
  const players = context.items.filter((record) => record.kind === 'player');
  return players.flatMap((player) => bounds(drawHeld(context, player), context.measure) ?? []);
}
