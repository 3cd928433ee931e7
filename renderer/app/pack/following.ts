/** A pack that the shell makes, step by step. */

import type { Host, PackState } from '#contract/contract.ts';

type Made = NonNullable<PackState['pack']>;

/** Until it is made or fails; null once `told` answers that nobody waits for it any more. */
export async function followPack(
  host: Host,
  job: string,
  told: (state: PackState) => boolean,
): Promise<Made | { readonly problem: string } | null> {
  for (let step = -1; ;) {
    const answer = await host.call('pack.watch', job, step);
    if (!told(answer.ok ? answer.value : FAILED)) return null;
    if (!answer.ok) return { problem: answer.error.message };
    const state = answer.value;
    step = state.step;
    if (state.doing === 'failed') return { problem: state.fault?.message ?? '' };
    if (state.doing === 'ready' && state.pack) return state.pack;
  }
}

const FAILED: PackState = { step: -1, doing: 'failed', done: 0, of: 1, pack: null, fault: null };
