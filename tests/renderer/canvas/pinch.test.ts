import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toScreen, toStage } from '../../../renderer/canvas/camera.ts';
import { Fingers, pinched, type TwoFingers } from '../../../renderer/canvas/gestures/pinch.ts';

const camera = { centre: { x: 400, y: 900 }, scale: 0.1 };
const view = { width: 1000, height: 700 };

const finger = fc.record({
  x: fc.double({ min: 0, max: 1000, noNaN: true }),
  y: fc.double({ min: 0, max: 700, noNaN: true }),
});
const far = ([a, b]: TwoFingers): boolean => Math.hypot(a.x - b.x, a.y - b.y) > 50;
const fingers = fc.tuple(finger, finger).filter(far);

describe('two fingers', () => {
  test('keep what lies between them, and show it by so much larger as they went apart', () => {
    fc.assert(
      fc.property(fingers, fingers, (before, now) => {
        const after = pinched(camera, view, before, now);
        const middle = ([a, b]: TwoFingers) => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
        const there = toScreen(after, view, toStage(camera, view, middle(before)));
        expect(there.x).toBeCloseTo(middle(now).x, 6);
        expect(there.y).toBeCloseTo(middle(now).y, 6);
        const apart = ([a, b]: TwoFingers): number => Math.hypot(a.x - b.x, a.y - b.y);
        expect(after.scale / camera.scale).toBeCloseTo(apart(now) / apart(before), 6);
      }),
    );
  });

  test('count only while both are down, and a third one is none of them', () => {
    const down = new Fingers();
    expect(down.down(1, { x: 0, y: 0 })).toBe(false);
    expect(down.move(1, { x: 5, y: 0 })).toBeNull();
    expect(down.down(2, { x: 100, y: 0 })).toBe(true);
    expect(down.down(3, { x: 50, y: 50 })).toBe(true);
    expect(down.move(3, { x: 60, y: 60 })).toBeNull();
    expect(down.move(2, { x: 105, y: 0 })).toEqual({
      before: [
        { x: 5, y: 0 },
        { x: 100, y: 0 },
      ],
      now: [
        { x: 5, y: 0 },
        { x: 105, y: 0 },
      ],
    });
    down.up(1);
    expect(down.move(2, { x: 110, y: 0 })).toBeNull();
  });
});
