/** Where the figures of each block go: under the floor, or over the heads of an upper level. */

import { EYE_TO_CROWN } from '../../checks/sightlines/rake-cuts.ts';
import { platformOf } from '../../document/document.ts';
import { fitted } from '../text.ts';
import { planeToPage, type NamedRake, type SectionContext } from './context.ts';
import { EARTH } from './ground.ts';
import { AIR, NAME_TYPE, tableHeight, type Columns } from './row-columns.ts';
import { isUpper } from './steps.ts';

export interface PlacedTable {
  readonly rake: NamedRake;
  readonly name: string;
  /** Ends of the line over the columns, and the upper edge, mm on the page. */
  readonly from: number;
  readonly to: number;
  readonly top: number;
  /** Has the words on the left: once a lane. */
  readonly titled: boolean;
}

const LANE_GAP = 3;
/** From the ground, and from the heads of an upper level, to the figures, mm on paper. */
const CLEAR_OF_GROUND = 2.2;
const CLEAR_OF_HEADS = 2.6;

/** Lanes of the ground follow each other downwards, those of upper levels upwards. */
export function placeTables(context: SectionContext, columns: Columns): PlacedTable[] {
  const upper = context.rakes.filter((rake) => isUpper(context, rake));
  const ground = context.rakes.filter((rake) => !upper.includes(rake));
  const height = tableHeight(columns);
  const pitch = height + LANE_GAP;
  const top = upper.reduce((y, rake) => Math.min(y, overHeads(context, rake)), Infinity) - height;
  const lay = (rakes: readonly NamedRake[], topOf: (lane: number) => number): PlacedTable[] =>
    lanesOf(rakes.map((rake) => spanOf(context, rake, columns))).flatMap((lane, index) =>
      lane.map((span, place) => ({ ...span, top: topOf(index), titled: place === 0 })),
    );
  return [
    ...lay(ground, (lane) => belowFloor(context) + lane * pitch),
    ...lay(upper, (lane) => top - lane * pitch),
  ];
}

type Span = Pick<PlacedTable, 'rake' | 'name' | 'from' | 'to'>;

/** A name may be somewhat longer than its columns. */
const LEAST_NAME = 24;

function spanOf(context: SectionContext, rake: NamedRake, { width }: Columns): Span {
  const [first, last] = [startOf(rake), endOf(rake)].map((out) => planeToPage(context, out, 0).x);
  const [from, to] = [(first ?? 0) - width / 2, (last ?? 0) + width / 2];
  const name = fitted(rake.name, Math.max(to - from, LEAST_NAME), NAME_TYPE, context.measure);
  return { rake, name, from, to };
}

/** Blocks side by side on the page share a lane; what would overlap goes into the next. */
function lanesOf(spans: readonly Span[]): Span[][] {
  const lanes: Span[][] = [];
  for (const span of [...spans].sort((a, b) => a.from - b.from)) {
    const free = lanes.find((lane) => lane.every((other) => roomOf(other).to + AIR < roomOf(span).from));
    if (free) free.push(span);
    else lanes.push([span]);
  }
  return lanes;
}

/** With a name that sticks out on both sides. */
function roomOf({ from, to }: Span): { readonly from: number; readonly to: number } {
  const out = Math.max(0, (LEAST_NAME - (to - from)) / 2);
  return { from: from - out, to: to + out };
}

function startOf({ rows }: NamedRake): number {
  return rows.reduce((least, { out }) => Math.min(least, out), Infinity);
}

function endOf({ rows }: NamedRake): number {
  return rows.reduce((most, { out }) => Math.max(most, out), -Infinity);
}

function belowFloor(context: SectionContext): number {
  return planeToPage(context, 0, -platformOf(context.document).height).y + EARTH + CLEAR_OF_GROUND;
}

/** Over the heads of a block, and over the lines of sight of single places behind it. */
function overHeads(context: SectionContext, rake: NamedRake): number {
  const end = endOf(rake);
  const crowns = rake.rows.map(({ eyeZ }) => eyeZ + EYE_TO_CROWN);
  const passing = context.lines
    .filter(({ eye }) => eye.out > end)
    .map(({ eye, focus }) => eye.z + ((focus.z - eye.z) * (eye.out - end)) / (eye.out - focus.out));
  const highest = [...crowns, ...passing].reduce((most, z) => Math.max(most, z), -Infinity);
  const overPeople = planeToPage(context, 0, highest).y - CLEAR_OF_HEADS;
  return context.places
    .filter(({ out }) => out > end && (out - end) / context.scale < NAME_NEAR)
    .reduce((y, { eyeZ }) => Math.min(y, planeToPage(context, 0, eyeZ).y - NAME_ROOM), overPeople);
}

/** The name of a place stands over it, and is so long that it may reach over the rows before it, mm on paper. */
const NAME_ROOM = 5.6;
const NAME_NEAR = 25;
