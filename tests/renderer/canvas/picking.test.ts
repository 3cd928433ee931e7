import { describe, expect, it } from 'vitest';
import { itemAt, itemsWithin, type Pickable } from '../../../renderer/canvas/picking.ts';

const square = (id: string, x: number, y: number, half: number, layer = 1): Pickable => ({
  id,
  layer,
  outline: [
    { x: x - half, y: y - half },
    { x: x + half, y: y - half },
    { x: x + half, y: y + half },
    { x: x - half, y: y + half },
  ],
});

describe('itemAt', () => {
  it('finds what is on a riser before the riser', () => {
    const items = [square('riser', 0, 0, 1000, 0), square('stand', 0, 0, 200)];
    expect(itemAt(items, { x: 50, y: 0 }, 20)).toBe('stand');
    expect(itemAt(items, { x: 600, y: 0 }, 20)).toBe('riser');
  });

  it('finds the smaller of two on the same layer', () => {
    const items = [square('peg', 0, 0, 50), square('table', 0, 0, 300)];
    expect(itemAt(items, { x: 10, y: 10 }, 0)).toBe('peg');
  });

  it('catches a small thing from a little way off, even on a riser', () => {
    const items = [square('riser', 0, 0, 1000, 0), square('peg', 0, 0, 20)];
    expect(itemAt(items, { x: 60, y: 0 }, 50)).toBe('peg');
    expect(itemAt(items, { x: 80, y: 0 }, 50)).toBe('riser');
  });

  it('finds nothing where nothing is', () => {
    expect(itemAt([square('stand', 0, 0, 100)], { x: 500, y: 0 }, 100)).toBeNull();
    expect(itemAt([], { x: 0, y: 0 }, 100)).toBeNull();
  });
});

describe('itemsWithin', () => {
  it('takes what lies wholly inside', () => {
    const items = [square('in', 0, 0, 100), square('half', 500, 0, 100)];
    expect(itemsWithin(items, { x: -200, y: -200, width: 700, height: 400 })).toEqual(['in']);
  });
});
