/** Knows how many pages are open: each holds one endless answer. */

import type { ServerResponse } from 'node:http';

const SIGN_OF_LIFE_MS = 20_000;

export interface Presence {
  /** Makes `response` the endless answer to one page. */
  add(response: ServerResponse): void;
  count(): number;
  close(): void;
}

/** `gone` is told whenever the last page has left. */
export function createPresence(gone: () => void): Presence {
  const pages = new Set<ServerResponse>();
  const timer = setInterval(() => pages.forEach((page) => page.write('\n')), SIGN_OF_LIFE_MS);
  timer.unref();
  return {
    add(response) {
      pages.add(response);
      response.on('close', () => {
        pages.delete(response);
        if (pages.size === 0) gone();
      });
      response.write('\n');
    },
    count: () => pages.size,
    close() {
      clearInterval(timer);
      for (const page of pages) page.end();
    },
  };
}
