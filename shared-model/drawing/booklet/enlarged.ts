/** A drawing made larger from the top left corner of its sheet on, with its lines and its letters. */

import { mapPath, type Affine } from '../affine.ts';
import type { Box, Primitive, Stroke } from '../primitives.ts';

export function enlarged(primitives: readonly Primitive[], factor: number): Primitive[] {
  if (factor === 1) return [...primitives];
  const map: Affine = { a: factor, b: 0, c: 0, d: factor, e: 0, f: 0 };
  return primitives.map((primitive): Primitive => {
    switch (primitive.kind) {
      case 'path': {
        const { path, stroke } = primitive;
        return {
          ...primitive,
          path: mapPath(map, path),
          ...(stroke ? { stroke: enlargedStroke(stroke, factor) } : {}),
        };
      }
      case 'text': {
        const { x, y, size } = primitive;
        return { ...primitive, x: factor * x, y: factor * y, size: factor * size };
      }
      case 'group': {
        const { children, clip } = primitive;
        return {
          ...primitive,
          children: enlarged(children, factor),
          ...(clip ? { clip: enlargedBox(clip, factor) } : {}),
        };
      }
    }
  });
}

function enlargedStroke(stroke: Stroke, factor: number): Stroke {
  const { width, dash } = stroke;
  return { ...stroke, width: factor * width, ...(dash ? { dash: dash.map((mm) => factor * mm) } : {}) };
}

function enlargedBox({ x, y, width, height }: Box, factor: number): Box {
  return { x: factor * x, y: factor * y, width: factor * width, height: factor * height };
}
