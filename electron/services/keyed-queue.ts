/** Work on one key runs in order, one piece at a time; different keys do not wait for each other. */

export interface KeyedQueue {
  run<T>(key: string, work: () => Promise<T>): Promise<T>;
  isIdle(): boolean;
  /** Resolves when nothing is waiting or running. */
  idle(): Promise<void>;
}

export function createKeyedQueue(): KeyedQueue {
  const tails = new Map<string, Promise<unknown>>();
  return {
    run(key, work) {
      const earlier = tails.get(key) ?? Promise.resolve();
      const result = earlier.then(work);
      const tail = result
        .catch(() => undefined)
        .then(() => {
          if (tails.get(key) === tail) tails.delete(key);
        });
      tails.set(key, tail);
      return result;
    },
    isIdle: () => tails.size === 0,
    async idle() {
      while (tails.size > 0) await Promise.all(tails.values());
    },
  };
}
