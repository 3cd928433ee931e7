import { describe, expect, it } from 'vitest';
import { latestWins } from '../../../renderer/workers/latest-wins.ts';

/** A worker that answers when it is told to. */
function slowWorker(): {
  ask: (q: number) => Promise<number>;
  asked: number[];
  finish: (fail?: boolean) => void;
} {
  const asked: number[] = [];
  let finish: (fail?: boolean) => void = () => undefined;
  return {
    asked,
    ask: (q) => {
      asked.push(q);
      return new Promise((done, failed) => {
        finish = (fail) => (fail ? failed(new Error('worker')) : done(q * 10));
      });
    },
    finish: (fail) => finish(fail),
  };
}

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

describe('latestWins', () => {
  it('asks one question at a time and only the newest of those that waited', async () => {
    const worker = slowWorker();
    const ask = latestWins(worker.ask);
    const answers = [ask(1), ask(2), ask(3), ask(4)];
    expect(worker.asked).toEqual([1]);
    worker.finish();
    await settled();
    expect(worker.asked).toEqual([1, 4]);
    worker.finish();
    expect(await Promise.all(answers)).toEqual([10, null, null, 40]);
  });

  it('goes on after a failure', async () => {
    const worker = slowWorker();
    const ask = latestWins(worker.ask);
    const first = ask(1);
    const second = ask(2);
    worker.finish(true);
    await expect(first).rejects.toThrow('worker');
    await settled();
    worker.finish();
    expect(await second).toBe(20);
  });
});
