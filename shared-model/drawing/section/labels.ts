/** Marks and names of the players and things that the section shows, with leaders where they stand apart. */

import { crossings } from '../../checks/sightlines/rake-focus.ts';
import { platformOf } from '../../document/document.ts';
import { bounds, textBoxes } from '../bounds.ts';
import { createOccupancy } from '../occupancy.ts';
import { drawLabels, labelSize, shortened } from '../plan/labels.ts';
import { placeLabels } from '../plan/label-places.ts';
import { middleOf, nameOf, type LabelRequest } from '../plan/label-requests.ts';
import type { Box, GroupPrimitive, Primitive } from '../primitives.ts';
import { planeToPage, type SectionContext, type ShownItem } from './context.ts';
import { pointAlong } from './lines.ts';
import { sectionReach } from './reach.ts';
import { playerStretch } from './players.ts';
import { thingBox } from './things.ts';

/** Kept clear of the texts of what is `drawn`, and off figures and lines of sight where that can be. */
export function drawSectionLabels(context: SectionContext, drawn: readonly Primitive[]): GroupPrimitive[] {
  // Players come first: they find the best places, and the leaders of things keep off their names.
  const players = context.items.filter(({ record }) => record.kind === 'player');
  const requests = [...players, ...context.items.filter((item) => isNamed(context, item))]
    .map((item) => shortened(context, requestOf(context, item)))
    .filter(({ mark, name }) => mark !== '' || name !== '');
  const places = placeLabels([...requests, ...placeRequests(context)], {
    sizeOf: (request) => labelSize(context, request),
    texts: createOccupancy(textBoxes(drawn, context.measure)),
    // A label over a player would hide what the drawing is about.
    barred: playerBoxes(context, drawn),
    things: [...lineBoxes(context), ...figureBoxes(context, drawn), platformBox(context)],
    area: labelArea(context),
  });
  return drawLabels(context, places);
}

/** Of things only what is large or cuts a line of sight: the plan has the others. */
function isNamed({ lines }: SectionContext, { record, full }: ShownItem): boolean {
  if (record.kind === 'player' || record.kind === 'riser') return false;
  return (full && LARGE.has(record.kind)) || lines.some(({ cut }) => cut?.record === record.id);
}

const LARGE: ReadonlySet<string> = new Set(['piano', 'largeInstrument']);

function requestOf(context: SectionContext, { record }: ShownItem): LabelRequest {
  const item = record.kind === 'player' ? headBox(context, record) : thingBox(context, record);
  return {
    subject: record.id,
    mark: context.marks.get(record.id) ?? '',
    name: nameOf(context, record),
    figures: [],
    item,
    target: middleOf(item),
    inside: LARGE.has(record.kind) ? 'middle' : null,
  };
}

/** The upper third of a player: what his label stands beside. */
function headBox(context: SectionContext, player: Parameters<typeof playerStretch>[1]): Box {
  const { out, low, high } = playerStretch(context, player);
  const top = planeToPage(context, out - HALF_BODY, high);
  const foot = planeToPage(context, out + HALF_BODY, high - (high - low) / 3);
  return { x: top.x, y: top.y, width: foot.x - top.x, height: foot.y - top.y };
}

const HALF_BODY = 220;

function placeRequests(context: SectionContext): LabelRequest[] {
  return context.places.map(({ place, out, eyeZ }) => {
    const top = planeToPage(context, out - PLACE.before, eyeZ + PLACE.over);
    const foot = planeToPage(context, out + PLACE.behind, eyeZ - PLACE.under);
    const item = { x: top.x, y: top.y, width: foot.x - top.x, height: foot.y - top.y };
    const name = place.name || place.use;
    return { subject: place.id, mark: '', name, figures: [], item, target: middleOf(item), inside: null };
  });
}

/** A head or a camera about its eye, mm. */
const PLACE = { before: 70, behind: 340, over: 120, under: 120 };

/** Over the house floor, and where the page may be drawn on. */
function labelArea(context: SectionContext): Box {
  const { area, document } = context;
  const { from, to } = sectionReach(context);
  const floor = -platformOf(document).height;
  const [left, right] = [planeToPage(context, from, floor), planeToPage(context, to, floor)];
  const own = { x: left.x - LABEL_ROOM, width: right.x - left.x + 2 * LABEL_ROOM };
  const page = area ?? { ...own, y: left.y - TALLEST };
  return { x: page.x, y: page.y, width: page.width, height: left.y - page.y };
}

/** Beside and over a section that has no bounds, mm on paper. */
const LABEL_ROOM = 40;
const TALLEST = 200;

/** Labels had better stand over the platform than on it. */
function platformBox(context: SectionContext): Box {
  const { outline, height } = platformOf(context.document);
  const cuts = crossings(context.plane, outline);
  const [from, to] = [cuts[0] ?? 0, cuts.at(-1) ?? 0];
  const top = planeToPage(context, from, 0);
  const foot = planeToPage(context, to, -height);
  return { x: top.x, y: top.y, width: foot.x - top.x, height: foot.y - top.y };
}

/** Lines of sight in short pieces. */
function lineBoxes(context: SectionContext): Box[] {
  return context.lines.flatMap(({ eye, focus }) => {
    const [a, b] = [planeToPage(context, eye.out, eye.z), planeToPage(context, focus.out, focus.z)];
    const pieces = Math.min(150, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / 3));
    return Array.from({ length: pieces }, (_, piece) => {
      const { x, y } = pointAlong(a, b, (piece + 0.5) / pieces);
      return { x: x - 1.5, y: y - 1, width: 3, height: 2 };
    });
  });
}

/** Where players are drawn. */
function playerBoxes({ measure, items }: SectionContext, drawn: readonly Primitive[]): Box[] {
  const players = new Set<string>(
    items.flatMap(({ record }) => (record.kind === 'player' ? [record.id] : [])),
  );
  return drawn.flatMap((each) =>
    each.kind === 'group' && each.subject && players.has(each.subject)
      ? (bounds(each.children, measure) ?? [])
      : [],
  );
}

/** Where anything with a subject is drawn. */
function figureBoxes({ measure }: SectionContext, drawn: readonly Primitive[]): Box[] {
  return drawn.flatMap((each) =>
    each.kind === 'group' && each.subject ? (bounds(each.children, measure) ?? []) : [],
  );
}
