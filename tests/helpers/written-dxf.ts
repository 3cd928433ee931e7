/** DXF as text for tests, pair by pair, so that hostile ones can be written too. */

export type Pair = readonly [code: number, value: string | number];

export interface DxfSketch {
  readonly insUnits?: number;
  readonly layers?: readonly (readonly Pair[])[];
  readonly blocks?: Readonly<Record<string, readonly (readonly Pair[])[]>>;
  readonly entities?: readonly (readonly Pair[])[];
}

export function writtenDxf({ insUnits, layers = [], blocks = {}, entities = [] }: DxfSketch): string {
  const pairs: Pair[] = [];
  const section = (name: string, inside: readonly Pair[]): void => {
    pairs.push([0, 'SECTION'], [2, name]);
    for (const pair of inside) pairs.push(pair);
    pairs.push([0, 'ENDSEC']);
  };
  if (insUnits !== undefined)
    section('HEADER', [
      [9, '$INSUNITS'],
      [70, insUnits],
    ]);
  if (layers.length > 0)
    section('TABLES', [[0, 'TABLE'], [2, 'LAYER'], [70, layers.length], ...layers.flat(), [0, 'ENDTAB']]);
  if (Object.keys(blocks).length > 0)
    section(
      'BLOCKS',
      Object.entries(blocks).flatMap(([name, inside]): Pair[] => [
        ...([
          [0, 'BLOCK'],
          [8, '0'],
          [2, name],
          [70, 0],
          [10, 0],
          [20, 0],
          [3, name],
        ] as Pair[]),
        ...inside.flat(),
        ...([
          [0, 'ENDBLK'],
          [8, '0'],
        ] as Pair[]),
      ]),
    );
  section('ENTITIES', entities.flat());
  pairs.push([0, 'EOF']);
  return pairs.map(([code, value]) => `${String(code).padStart(3)}\n${value}\n`).join('');
}

export const dxfLine = (x1: number | string, y1: number, x2: number, y2: number, layer = '0'): Pair[] => [
  ...([
    [0, 'LINE'],
    [8, layer],
  ] as Pair[]),
  ...([
    [10, x1],
    [20, y1],
    [11, x2],
    [21, y2],
  ] as Pair[]),
];

export const dxfPolyline = (
  points: readonly (readonly [x: number, y: number, bulge?: number])[],
  closed = false,
): Pair[] => [
  ...([
    [0, 'LWPOLYLINE'],
    [8, '0'],
    [90, points.length],
    [70, closed ? 1 : 0],
  ] as Pair[]),
  ...points.flatMap(([x, y, bulge]): Pair[] => [
    [10, x],
    [20, y],
    ...(bulge === undefined ? [] : [[42, bulge] as Pair]),
  ]),
];

export const dxfCircle = (x: number, y: number, radius: number): Pair[] => [
  [0, 'CIRCLE'],
  [8, '0'],
  [10, x],
  [20, y],
  [40, radius],
];

export const dxfArc = (x: number, y: number, radius: number, from: number, to: number): Pair[] => [
  ...([
    [0, 'ARC'],
    [8, '0'],
    [10, x],
    [20, y],
    [40, radius],
    [50, from],
    [51, to],
  ] as Pair[]),
];

export const dxfInsert = (block: string, x: number, y: number, more: readonly Pair[] = []): Pair[] => [
  ...([
    [0, 'INSERT'],
    [8, '0'],
    [2, block],
    [10, x],
    [20, y],
  ] as Pair[]),
  ...more,
];
