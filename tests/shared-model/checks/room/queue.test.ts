import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LeastFirst } from '#model/checks/room/queue.ts';

test('things come out in the order of their keys, whatever comes in between', () => {
  fc.assert(
    fc.property(fc.array(fc.oneof(fc.integer({ min: -50, max: 50 }), fc.constant(null))), (steps) => {
      const queue = new LeastFirst();
      const waiting: number[] = [];
      steps.forEach((key, item) => {
        if (key !== null) {
          queue.push(key, item);
          waiting.push(key);
          return;
        }
        waiting.sort((a, b) => a - b);
        expect(queue.pop()?.key ?? null).toBe(waiting.shift() ?? null);
      });
    }),
  );
});

test('an item comes out with the key it went in with', () => {
  const queue = new LeastFirst();
  queue.push(3, 30);
  queue.push(1, 10);
  queue.push(2, 20);
  expect([queue.pop(), queue.pop(), queue.pop(), queue.pop()]).toEqual([
    { key: 1, item: 10 },
    { key: 2, item: 20 },
    { key: 3, item: 30 },
    null,
  ]);
});
