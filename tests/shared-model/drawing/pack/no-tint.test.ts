/** A copier that knows only black and white makes dots of a light tint: on paper no words stand on one. */

import { describe, expect, it } from 'vitest';
import { bounds } from '#model/drawing/bounds.ts';
import { countPack, packSheets } from '#model/drawing/pack/pack.ts';
import type { Box, Primitive } from '#model/drawing/primitives.ts';
import { aRiser } from '../../../helpers/build.ts';
import { documentOf } from '#model/document/document.ts';
import { roughMeasure } from '../drawings.ts';
import { EVENING, packOf } from './pack-request.ts';

const STAGED = documentOf([...EVENING.records.values(), aRiser({ x: 0, y: 4000, width: 6000, depth: 1500 })]);

/** Everything that is painted, in order. */
function* painted(children: readonly Primitive[]): Generator<Exclude<Primitive, { kind: 'group' }>> {
  for (const child of children) {
    if (child.kind === 'group') yield* painted(child.children);
    else yield child;
  }
}

/** 0 black to 1 white, by eye (ITU-R BT.601). */
function lightness(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => parseInt(colour.slice(at, at + 2), 16) / 255);
  return 0.299 * red + 0.587 * green + 0.114 * blue;
}

const holds = (outer: Box, { x, y, width, height }: Box): boolean =>
  x >= outer.x && y >= outer.y && x + width <= outer.x + outer.width && y + height <= outer.y + outer.height;

/** The fill that is seen behind a text, as far as boxes tell. */
function tintsUnderWords(children: readonly Primitive[]): string[] {
  const fills: { readonly box: Box; readonly fill: string }[] = [];
  const found: string[] = [];
  for (const primitive of painted(children)) {
    const box = bounds([primitive], roughMeasure);
    if (!box) continue;
    if (primitive.kind === 'path' && primitive.fill) fills.push({ box, fill: primitive.fill });
    if (primitive.kind !== 'text') continue;
    const under = fills.findLast((each) => holds(each.box, box));
    const light = under ? lightness(under.fill) : 1;
    if (light > 0.6 && light < 0.999) found.push(`${primitive.text} on ${under?.fill ?? ''}`);
  }
  return found;
}

describe('a pack on paper', () => {
  it('has no tint behind its words', () => {
    const request = packOf(STAGED);
    const steps = countPack(request);
    let step = steps.next();
    while (!step.done) step = steps.next();
    for (const { entry, sheet } of packSheets(request, step.value)) {
      // A picture is made of tints.
      if (entry.kind !== 'view') expect(tintsUnderWords(sheet.children), entry.name).toEqual([]);
    }
  });
});
