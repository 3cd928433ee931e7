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
        const least = waiting.shift();
        const isEmpty = queue.pop() === -1;
        expect(isEmpty ? undefined : queue.lastKey).toBe(least);
      });
    }),
  );
});

test('an item comes out with the key it went in with', () => {
  const queue = new LeastFirst();
  queue.push(3, 30);
  queue.push(1, 10);
  queue.push(2, 20);
  const taken = [1, 2, 3].map(() => [queue.pop(), queue.lastKey]);
  expect(taken).toEqual([
    [10, 1],
    [20, 2],
    [30, 3],
  ]);
  expect(queue.pop()).toBe(-1);
});
