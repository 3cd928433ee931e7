/** Lines of sight from every row to the focus, and what cuts them. */

import type { LineCut } from '../../checks/sightlines/rake-cuts.ts';
import { labelOf } from '../../document/labels.ts';
import type { Point } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { centredRectangle, circle, line } from '../outline.ts';
import { pen } from '../plan/context.ts';
import type { GroupPrimitive, Primitive } from '../primitives.ts';
import type { Palette } from '../palette.ts';
import { DASH, WEIGHT } from '../style.ts';
import { planeToPage, type SectionContext, type SightLine } from './context.ts';

/** Clear lines are drawn through; a cut one ends at what cuts it and goes on dashed. */
export function drawLines(context: SectionContext): GroupPrimitive[] {
  return context.lines.map((each) => {
    const [eye, focus] = endsOf(context, each);
    const { palette } = context;
    const heavy = each.chosen;
    if (!each.cut) {
      return group(context, each, [
        { kind: 'path', path: line(eye, focus), ...pen(palette.reach, heavy ? WEIGHT.bold : WEIGHT.thin) },
      ]);
    }
    const at = pointAlong(eye, focus, each.cut.share);
    return group(context, each, [
      { kind: 'path', path: line(eye, at), ...pen(palette.warning, heavy ? WEIGHT.bold : WEIGHT.thin) },
      {
        kind: 'path',
        path: line(at, focus),
        ...pen(palette.warning, heavy ? WEIGHT.medium : WEIGHT.hair, DASH.dashed),
      },
    ]);
  });
}

function endsOf(context: SectionContext, { eye, focus }: SightLine): [Point, Point] {
  return [planeToPage(context, eye.out, eye.z), planeToPage(context, focus.out, focus.z)];
}

export function pointAlong(a: Point, b: Point, share: number): Point {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

function group(context: SectionContext, { name, cut }: SightLine, children: Primitive[]): GroupPrimitive {
  return { kind: 'group', description: lineWords(context, name, cut), children };
}

function lineWords({ document, setup }: SectionContext, name: string, cut: LineCut | null): string {
  if (!cut) return t`Line of sight from ${name}: clear`;
  return cut.by === 'head'
    ? t`Line of sight from ${name}: cut by a head in front`
    : t`Line of sight from ${name}: cut by ${labelOf(document, setup, cut.record)}`;
}

/** Marks where lines are cut, over everything, and the focus. */
export function drawCuts(context: SectionContext): Primitive[] {
  const marks = context.lines.flatMap((each) => {
    if (!each.cut) return [];
    const [eye, focus] = endsOf(context, each);
    return cutMark(each.cut.by, pointAlong(eye, focus, each.cut.share), context.palette);
  });
  return [...marks, ...focusMarks(context)];
}

/** A cross on a head, a square on a thing: they differ in shape, not in colour. */
export function cutMark(by: LineCut['by'], at: Point, palette: Palette): Primitive[] {
  const r = MARK;
  if (by === 'thing') {
    const path = centredRectangle(1.7 * r, 1.7 * r, at);
    return [{ kind: 'path', path, fill: palette.warning, ...pen(palette.paper, WEIGHT.thin) }];
  }
  const path = [
    ...line({ x: at.x - r, y: at.y - r }, { x: at.x + r, y: at.y + r }),
    ...line({ x: at.x - r, y: at.y + r }, { x: at.x + r, y: at.y - r }),
  ];
  return [
    { kind: 'path', path, ...pen(palette.paper, WEIGHT.heavy + 0.3) },
    { kind: 'path', path, ...pen(palette.warning, WEIGHT.medium) },
  ];
}

/** Half the size of a mark, mm on paper. */
const MARK = 0.6;

function focusMarks(context: SectionContext): Primitive[] {
  const known = new Map(context.lines.map(({ focus }) => [`${focus.out} ${focus.z}`, focus]));
  return [...known.values()].flatMap(({ out, z }) =>
    focusMark(planeToPage(context, out, z), context.palette),
  );
}

/** A ring with a dot. */
export function focusMark(at: Point, palette: Palette): Primitive[] {
  return [
    { kind: 'path', path: circle(at, FOCUS), fill: palette.paper, ...pen(palette.ink, WEIGHT.medium) },
    { kind: 'path', path: circle(at, FOCUS * 0.35), fill: palette.ink },
  ];
}

const FOCUS = 1.15;
