/** What stands on a rectangle is drawn inside it: what a crew keeps free is what the drawing shows. */

import { expect, it } from 'vitest';
import { LARGE_INSTRUMENT_MODELS } from '#model/catalogue/large-instruments.ts';
import { bounds } from '#model/drawing/bounds.ts';
import { caseSymbol } from '#model/drawing/plan/case-symbols.ts';

const ON_RECTANGLES = LARGE_INSTRUMENT_MODELS.filter(({ boxes }) => boxes.length === 1 && boxes[0]?.depth);

it.each(ON_RECTANGLES.filter((model) => caseSymbol(model)).map((model) => [model.id, model] as const))(
  '%s fills the room that it takes, and no more',
  (_, model) => {
    const { body, pale = [], lines = [], edges = [] } = caseSymbol(model) ?? { body: [] };
    const drawn = bounds(
      [{ kind: 'path', path: [...body, ...pale, ...lines, ...edges], fill: '#000000' }],
      () => 0,
    );
    if (!drawn) throw new Error('nothing is drawn');
    expect(drawn.x).toBeGreaterThanOrEqual(-model.width / 2 - 1);
    expect(drawn.y).toBeGreaterThanOrEqual(-model.depth / 2 - 1);
    expect(drawn.x + drawn.width).toBeLessThanOrEqual(model.width / 2 + 1);
    expect(drawn.y + drawn.height).toBeLessThanOrEqual(model.depth / 2 + 1);
    expect(drawn.width * drawn.height).toBeGreaterThan(0.8 * model.width * model.depth);
  },
);

it('every case of the catalogue has a shape of its own', () => {
  const plain = LARGE_INSTRUMENT_MODELS.filter(
    ({ outline, boxes }) => outline.length === 4 && boxes.length === 1,
  );
  expect(plain.length).toBeGreaterThan(5);
  for (const model of plain) expect(caseSymbol(model), model.id).not.toBeNull();
});
