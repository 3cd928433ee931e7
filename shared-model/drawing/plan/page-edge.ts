/** Edges of the platform on the page, and words that run along them outside. */

import type { Segment } from '../../document/openings.ts';
import type { Platform, Point } from '../../document/records.ts';
import { signedArea } from '../../geometry/polygon.ts';
import { boxContains, textBox } from '../bounds.ts';
import { firstFree, type Occupancy } from '../occupancy.ts';
import type { TextPrimitive } from '../primitives.ts';
import { CAP_HEIGHT, TEXT } from '../style.ts';
import { textLine } from '../text.ts';
import { onPage, type PlanContext } from './context.ts';

/** An edge on the page, with the direction along it and the one that leads off the platform. */
export interface PageEdge {
  readonly a: Point;
  readonly b: Point;
  readonly length: number;
  readonly along: Point;
  readonly out: Point;
}

export function pageEdge(context: PlanContext, platform: Platform, { a, b }: Segment): PageEdge {
  const [p, q] = [onPage(context, a), onPage(context, b)];
  const length = Math.hypot(q.x - p.x, q.y - p.y);
  const along = length > 0 ? { x: (q.x - p.x) / length, y: (q.y - p.y) / length } : { x: 1, y: 0 };
  // The page is the stage mirrored, so an anticlockwise platform runs clockwise on it: outside is to the right.
  const side = signedArea(platform.outline) >= 0 ? 1 : -1;
  return { a: p, b: q, length, along, out: { x: -along.y * side, y: along.x * side } };
}

/** The spot at a distance along the edge and off it, mm on the page. */
export function besideEdge(edge: PageEdge, along: number, out: number): Point {
  return {
    x: edge.a.x + edge.along.x * along + edge.out.x * out,
    y: edge.a.y + edge.along.y * along + edge.out.y * out,
  };
}

export interface EdgeWords {
  readonly words: string;
  /** Between the edge and the words, mm. */
  readonly clear: number;
  readonly colour: string;
  readonly bold?: boolean;
  /** Where the words' middle is tried along the edge, as shares of its length. */
  readonly at: readonly number[];
  /** Room that the words keep round themselves, mm. */
  readonly air?: number;
}

/** Words outside an edge, never upside down, where no other text is; none when there is no room for them. */
export function wordsBeside(
  context: PlanContext,
  edge: PageEdge,
  { words, clear, colour, bold = false, at, air = 0, taken }: EdgeWords & { readonly taken: Occupancy },
): TextPrimitive[] {
  if (!context.layers.words) return [];
  const turn = readableAngle(edge.along);
  // The baseline lies further out when the letters stand towards the edge.
  const up = { x: Math.sin((turn * Math.PI) / 180), y: -Math.cos((turn * Math.PI) / 180) };
  const lettersFaceEdge = up.x * edge.out.x + up.y * edge.out.y < 0;
  const baseline = clear + (lettersFaceEdge ? TEXT.small * CAP_HEIGHT : 0);
  const look = {
    size: TEXT.small,
    weight: bold ? 'bold' : 'regular',
    colour,
    anchor: 'middle',
    turn,
  } as const;
  const candidates = STEPS_OUT.flatMap((step) =>
    at.map((share) => textLine(words, besideEdge(edge, share * edge.length, baseline + step), look)),
  );
  return firstFree(
    candidates.filter((text) => isOnPlan(context, text)),
    taken,
    { measure: context.measure, air },
  );
}

/** How much further out words are tried when their place is taken. */
const STEPS_OUT = [0, 3.6, 7.2];

function isOnPlan({ area, measure }: PlanContext, text: TextPrimitive): boolean {
  return area === null || boxContains(area, textBox(text, measure));
}

/** Along a wall that runs up the page letters read upwards, whichever side of the platform it is. */
function readableAngle(along: Point): number {
  const angle = (Math.atan2(along.y, along.x) * 180) / Math.PI;
  const turned = angle >= 90 - 1e-6 ? angle - 180 : angle < -90 - 1e-6 ? angle + 180 : angle;
  return Math.abs(turned) < 1e-6 ? 0 : turned;
}
