/** Helpers for looking into drawings. */

import { bounds, textPieces } from '#model/drawing/bounds.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { PlanLayers, PlanRequest } from '#model/drawing/plan.ts';
import type {
  Box,
  GroupPrimitive,
  MeasureText,
  PathPrimitive,
  Primitive,
  TextPrimitive,
} from '#model/drawing/primitives.ts';
import type { Document } from '#model/document/document.ts';
import { SETUP } from '../../helpers/build.ts';

/** Near enough to a real typeface for layout: letters 0.55 of their height wide. */
export const roughMeasure: MeasureText = (text, size) => Array.from(text).length * size * 0.55;

export const ALL_LAYERS: PlanLayers = {
  seats: true,
  sightBands: null,
  marks: true,
  names: true,
  words: true,
  dimensions: 'none',
  grid: true,
  reach: false,
  routes: false,
};

/** A plan at 1:50 with the origin at (200, 150) on the page. */
export function planRequest(document: Document, fields: Partial<PlanRequest> = {}): PlanRequest {
  return {
    document,
    setup: SETUP,
    report: null,
    scale: 50,
    origin: { x: 200, y: 150 },
    palette: PALETTES.print,
    measure: roughMeasure,
    units: 'metric',
    layers: ALL_LAYERS,
    area: null,
    ...fields,
  };
}

export function textsIn(primitives: readonly Primitive[]): TextPrimitive[] {
  return primitives.flatMap((each) =>
    each.kind === 'text' ? [each] : each.kind === 'group' ? textsIn(each.children) : [],
  );
}

export function pathsIn(primitives: readonly Primitive[]): PathPrimitive[] {
  return primitives.flatMap((each) =>
    each.kind === 'path' ? [each] : each.kind === 'group' ? pathsIn(each.children) : [],
  );
}

export function groupsIn(primitives: readonly Primitive[]): GroupPrimitive[] {
  return primitives.flatMap((each) => (each.kind === 'group' ? [each, ...groupsIn(each.children)] : []));
}

/** The groups that draw a record. */
export function groupsOf(primitives: readonly Primitive[], subject: string): GroupPrimitive[] {
  return groupsIn(primitives).filter((group) => group.subject === subject);
}

export function boxOf(primitives: readonly Primitive[], measure = roughMeasure): Box {
  const box = bounds(primitives, measure);
  if (!box) throw new Error('nothing was drawn');
  return box;
}

export function middleOf(primitives: readonly Primitive[]): { x: number; y: number } {
  const { x, y, width, height } = boxOf(primitives);
  return { x: x + width / 2, y: y + height / 2 };
}

/** Pairs of texts whose boxes have more than a hair in common, in words. */
export function overlappingTexts(primitives: readonly Primitive[], measure: MeasureText): string[] {
  const texts = textsIn(primitives).map(({ text, ...rest }) => ({
    text,
    // Slanting texts in pieces: their upright boxes hold mostly what is not theirs.
    pieces: textPieces({ text, ...rest }, measure),
  }));
  const found: string[] = [];
  texts.forEach((a, index) => {
    for (const b of texts.slice(index + 1)) {
      if (a.pieces.some((piece) => b.pieces.some((other) => overlaps(piece, other))))
        found.push(`${a.text} | ${b.text}`);
    }
  });
  return found;
}

/** More than a hair in common. */
export function overlaps(a: Box, b: Box): boolean {
  const width = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const height = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return width > 0.05 && height > 0.05;
}
