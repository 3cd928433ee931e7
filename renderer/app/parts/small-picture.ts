/** What small pictures in the window have in common: things and walls alone, without marks, names or figures. */

import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { Primitive } from '#model/drawing/primitives.ts';
import { planContext } from '#model/drawing/plan.ts';
import type { PlanContext } from '#model/drawing/plan/context.ts';

export interface SmallPicture {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  /** At which lines and dashes suit its size. */
  readonly scale: number;
  readonly theme: 'light' | 'dark';
  readonly seats: boolean;
}

export function smallPicture({ document, setup, scale, theme, seats }: SmallPicture): PlanContext {
  return planContext({
    document,
    setup,
    report: null,
    scale,
    origin: { x: 0, y: 0 },
    palette: PALETTES[theme],
    // What little is written in it need not fit to a hair.
    measure: (text, size) => text.length * size * 0.5,
    units: 'metric',
    layers: {
      ...{ seats, sightBands: null, marks: false, names: false, words: false },
      ...{ dimensions: 'none', grid: false, reach: false, routes: false },
    },
    area: null,
  });
}

/** The drawing without anything that is written in it. */
export function wordless(drawn: readonly Primitive[]): Primitive[] {
  return drawn.flatMap((primitive): Primitive[] => {
    if (primitive.kind === 'text') return [];
    if (primitive.kind === 'path') return [primitive];
    return [{ ...primitive, children: wordless(primitive.children) }];
  });
}
