/**
 * DXF read by a library that shares nothing with the one that writes it: `dxf` 5.3.1, MIT. `denormalise` carries out
 * the inserts, so that every outline is where a drawing program would show it.
 */

import { denormalise, parseString, type Entity } from 'dxf';

export interface ReadDxf {
  readonly header: Readonly<Record<string, unknown>>;
  readonly layers: readonly string[];
  readonly entities: readonly Entity[];
  /** All lines of all blocks, where their inserts put them. */
  readonly shown: readonly { readonly layer: string; readonly points: readonly { x: number; y: number }[] }[];
}

export function readDxf(text: string): ReadDxf {
  const parsed = parseString(text);
  return {
    header: parsed.header,
    layers: Object.keys(parsed.tables.layers),
    entities: parsed.entities,
    shown: denormalise(parsed).flatMap(({ layer, vertices, transforms }) =>
      vertices ? [{ layer, points: vertices.map((vertex) => carriedOut(vertex, transforms ?? [])) }] : [],
    ),
  };
}

/** The library lists the inserts that an entity lies in, and leaves it to the painter to carry them out. */
function carriedOut(
  vertex: { readonly x: number; readonly y: number },
  transforms: NonNullable<Entity['transforms']>,
): { x: number; y: number } {
  let { x, y } = vertex;
  for (const { x: dx, y: dy, rotation = 0 } of transforms) {
    const angle = (rotation * Math.PI) / 180;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    [x, y] = [c * x - s * y + dx, s * x + c * y + dy];
  }
  return { x, y };
}
