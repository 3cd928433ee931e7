import { describe, expect, test } from 'vitest';
import { boardsMeet, heightsOf, planBetween } from '#model/checks/room/boards.ts';
import type { Rectangle3 } from '#model/document/desks.ts';

/** Upright, along x, from z 0 to 100. */
const upright = (x: number, y: number, half = 50): Rectangle3 => [
  { x: x - half, y, z: 0 },
  { x: x + half, y, z: 0 },
  { x: x + half, y, z: 100 },
  { x: x - half, y, z: 100 },
];

const across = (x: number, y: number): Rectangle3 => [
  { x, y: y - 50, z: 0 },
  { x, y: y + 50, z: 0 },
  { x, y: y + 50, z: 100 },
  { x, y: y - 50, z: 100 },
];

/** Rises by 100 over 100 towards +y. */
const sloping: Rectangle3 = [
  { x: -50, y: 0, z: 0 },
  { x: 50, y: 0, z: 0 },
  { x: 50, y: 100, z: 100 },
  { x: -50, y: 100, z: 100 },
];

describe('boards in space', () => {
  test('side by side in one plane they meet when they share more than an edge', () => {
    expect(boardsMeet(upright(0, 0), upright(99, 0))).toBe(true);
    expect(boardsMeet(upright(0, 0), upright(101, 0))).toBe(false);
  });

  test('one behind the other they meet only within their thickness of 2 mm', () => {
    expect(boardsMeet(upright(0, 0), upright(0, 1.9))).toBe(true);
    expect(boardsMeet(upright(0, 0), upright(0, 2.1))).toBe(false);
  });

  test('crossing ones meet, and not when the one ends before the other', () => {
    expect(boardsMeet(upright(0, 0), across(0, 0))).toBe(true);
    expect(boardsMeet(upright(0, 0), across(48, 0))).toBe(true);
    expect(boardsMeet(upright(0, 0), across(52, 0))).toBe(false);
  });

  test('nested slopes share ground on plan and yet do not meet', () => {
    const behind = sloping.map((corner) => ({ ...corner, y: corner.y + 30 })) as unknown as Rectangle3;
    expect(boardsMeet(sloping, behind)).toBe(false);
  });

  test('on plan a slope between two heights is the strip that lies between them', () => {
    const ys = planBetween(sloping, 20, 70).map(({ y }) => y);
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([20, 70]);
    expect(planBetween(sloping, 101, 200)).toEqual([]);
    expect(heightsOf(sloping)).toEqual({ low: 0, high: 100 });
  });
});
