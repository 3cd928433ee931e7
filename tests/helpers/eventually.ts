/** What comes by itself, however slow or busy the machine: the limit is only for what never comes. */

import { vi } from 'vitest';

export function eventually<T>(check: () => T | Promise<T>): Promise<T> {
  return vi.waitFor(check, { timeout: 100_000 });
}
