/** What a window asks its shell first, all at once. */

import type { Host } from '#contract/contract.ts';

export function askAtFirst(host: Host) {
  return Promise.all([
    host.call('app.hello'),
    host.call('settings.read'),
    host.call('files.demo'),
    host.call('recent.list'),
    host.call('recovery.list'),
  ]);
}

export type FirstAnswers = Awaited<ReturnType<typeof askAtFirst>>;
