import type { PathItem } from '#model/drawing/primitives.ts';
import { describe, expect, it } from 'vitest';
import { paint, type Pen } from '../../../renderer/canvas/painter.ts';

/** A canvas that notes what is traced on it and when it is filled. */
function notes() {
  const traced: PathItem[] = [];
  const fills: number[] = [];
  let since = 0;
  const note = (item: PathItem): void => {
    traced.push(item);
    since += 1;
  };
  const pen = {
    beginPath: () => (since = 0),
    moveTo: (x: number, y: number) => note(['M', x, y]),
    lineTo: (x: number, y: number) => note(['L', x, y]),
    bezierCurveTo: (...c: [number, number, number, number, number, number]) => note(['C', ...c]),
    closePath: () => note(['Z']),
    fill: () => fills.push(since),
  };
  return { pen: pen as unknown as Pen, traced, fills };
}

describe('a very long path', () => {
  it('is painted whole, in pieces that never cut an outline', () => {
    const path = Array.from({ length: 1500 }, (_, i): PathItem[] => [
      ['M', i, 0],
      ['L', i + 0.5, 0],
      ['C', i, 1, i, 2, i, 3],
      ['Z'],
    ]).flat();
    const { pen, traced, fills } = notes();
    paint(pen, [{ kind: 'path', path, fill: '#123456' }]);
    expect(traced).toEqual(path);
    expect(fills.length).toBeGreaterThan(5);
    expect(fills.every((items) => items % 4 === 0)).toBe(true);
  });
});
