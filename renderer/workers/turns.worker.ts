/** Plans page turns beside the window, and tells now and then how far it is. Stopped by being ended. */

import { spoken } from './own-language.ts';
import { turnPlanning } from './turn-planning.ts';
import type { TurnsAsked, TurnsTold } from './turns-client.ts';

const TELL_EVERY_MS = 120;

addEventListener('message', ({ data }: MessageEvent<TurnsAsked>) => {
  void spoken.then(() => planned(data));
});

function planned(asked: TurnsAsked): void {
  try {
    plan(asked);
  } catch (error) {
    tell({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  }
}

function plan({ records, setup }: TurnsAsked): void {
  const steps = turnPlanning({ records: new Map(records.map((record) => [record.id, record])) }, setup);
  let told = performance.now();
  for (;;) {
    const step = steps.next();
    if (step.done) return tell({ kind: 'done', answer: step.value });
    if (performance.now() - told < TELL_EVERY_MS) continue;
    told = performance.now();
    tell({ kind: 'progress', progress: step.value });
  }
}

function tell(message: TurnsTold): void {
  postMessage(message);
}
