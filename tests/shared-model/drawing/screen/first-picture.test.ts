import { describe, expect, it } from 'vitest';
import type { Primitive } from '#model/drawing/primitives.ts';
import { firstDrawing } from '#model/drawing/screen/first-picture.ts';
import type { ViewSize } from '#model/drawing/screen/framing.ts';
import { LAYERS_AT_FIRST } from '#model/drawing/screen/plan-on-screen.ts';
import { Picture } from '../../../../renderer/canvas/picture.ts';
import { aDocument, aPlayer, aSeatBlock, aStand, SETUP } from '../../../helpers/build.ts';
import { roughMeasure } from '../drawings.ts';

const VIEW: ViewSize = { width: 850, height: 660 };
const document = aDocument(
  aPlayer({ x: -900, y: 1500, name: 'Clarinet' }),
  aStand({ x: -300, y: 1200 }),
  aSeatBlock({ rows: 1, seatsPerRow: [4] }),
);
const request = { document, view: VIEW, theme: 'light', units: 'metric', measure: roughMeasure } as const;

/** What a painter does, step by step: groups only bundle. */
function strokes(primitives: readonly Primitive[]): unknown[] {
  return primitives.flatMap((each): unknown[] =>
    each.kind === 'group' && !each.clip ? strokes(each.children) : [rounded(each)],
  );
}

function rounded(value: unknown): unknown {
  if (typeof value === 'number') return Math.round(value * 1000) / 1000 + 0;
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, rounded(each)]));
}

describe('the first drawing', () => {
  it('is stroke for stroke what the window draws when the concert is opened', () => {
    const { paperScale, primitives } = firstDrawing(request);
    const { ground, items } = new Picture(roughMeasure).draw({
      ...{ document, setup: SETUP, report: null, paperScale, theme: 'light', units: 'metric' },
      ...{ layers: LAYERS_AT_FIRST, hurried: false },
    });
    expect(strokes(primitives).length).toBeGreaterThan(20);
    expect(strokes(primitives)).toEqual(strokes([...ground, ...items]));
  });

  it('holds nothing that a painter has no use for', () => {
    const { primitives } = firstDrawing(request);
    expect(JSON.stringify(primitives)).not.toMatch(/subject|description/);
    const paths = primitives.flatMap((each) => (each.kind === 'path' ? [each.path] : []));
    expect(JSON.stringify(paths)).not.toMatch(/\.\d{4}/);
  });

  it('leaves out seats that nobody will see', () => {
    const far = aSeatBlock({ rows: 40, seatsPerRow: Array.from({ length: 40 }, () => 30) });
    const large = firstDrawing({ ...request, document: aDocument(far) });
    const views = { ...request, document: aDocument(far), view: { width: 850, height: 30_000 } };
    expect(JSON.stringify(large).length).toBeLessThan(JSON.stringify(firstDrawing(views)).length / 2);
  });
});
