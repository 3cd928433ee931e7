/** The strip as it lies on a table, printed face up: each panel below the one before it, all of one size. */

import { distance, type Vector } from './space.ts';

export type EdgeName = 'head' | 'foot' | 'left' | 'right';

export interface FlatPanel {
  /** Otherwise its text stands on its head. */
  readonly upright: boolean;
  /** Left to right as the text reads; null: nothing printed. */
  readonly pages: readonly (string | null)[];
}

export interface Tape {
  readonly first: { readonly panel: number; readonly edge: EdgeName };
  readonly second: { readonly panel: number; readonly edge: EdgeName };
}

export interface FlatStrip {
  readonly panels: readonly FlatPanel[];
  readonly tapes: readonly Tape[];
}

/** Of an A4 page; any other would do. */
export const HEIGHT = 297;
export const PAGE_WIDTH = 210;

export function widthOf({ pages }: FlatPanel): number {
  return pages.length * PAGE_WIDTH;
}

/** Direction on the table: x to the right, y away from the one who sits at it. */
export function textUp({ upright }: FlatPanel): Vector {
  return [0, upright ? 1 : -1, 0];
}

export function textRight({ upright }: FlatPanel): Vector {
  return [upright ? 1 : -1, 0, 0];
}

export function centre(index: number): Vector {
  return [0, -HEIGHT * index, 0];
}

export function cornersOf(strip: FlatStrip, index: number): Vector[] {
  const half = widthOf(panelAt(strip, index)) / 2;
  const [, y] = centre(index);
  return [
    [-half, y + HEIGHT / 2, 0],
    [half, y + HEIGHT / 2, 0],
    [half, y - HEIGHT / 2, 0],
    [-half, y - HEIGHT / 2, 0],
  ];
}

export type Edge = readonly [Vector, Vector];

/** The two ends of an edge named as the text stands, the left one on the table first. */
export function edgeOf(strip: FlatStrip, index: number, name: EdgeName): Edge {
  const [farLeft, farRight, nearRight, nearLeft] = cornersOf(strip, index) as [
    Vector,
    Vector,
    Vector,
    Vector,
  ];
  const { upright } = panelAt(strip, index);
  if (name === 'head' || name === 'foot')
    return (name === 'head') === upright ? [farLeft, farRight] : [nearLeft, nearRight];
  return (name === 'left') === upright ? [nearLeft, farLeft] : [nearRight, farRight];
}

/** Tapes that are asked for where the two edges do not lie against each other, from corner to corner. */
export function tapesAside(strip: FlatStrip): number[] {
  return strip.tapes.flatMap(({ first, second }, index) => {
    const [a, b] = edgeOf(strip, first.panel, first.edge);
    const [c, d] = edgeOf(strip, second.panel, second.edge);
    const meet = first.panel !== second.panel && distance(a, c) < 1e-9 && distance(b, d) < 1e-9;
    return meet ? [] : [index];
  });
}

export function panelAt(strip: FlatStrip, index: number): FlatPanel {
  const panel = strip.panels[index];
  if (!panel) throw new Error(`the strip has no panel ${index}`);
  return panel;
}
