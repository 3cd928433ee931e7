/** A pack in other forms, made and saved when its place is known: there is nothing of it to be looked at before. */

import type { Handle, Host, PackOrder, PackState, Saved } from '#contract/contract.ts';
import { followPack } from './following.ts';

interface Place {
  readonly handle: Handle;
  readonly replace: boolean;
}

type Outcome =
  { readonly saved: Saved; readonly notes: readonly string[] } | { readonly problem: string } | null;

export class PackZipping {
  /** How far it is; null: none is being made. */
  progress: PackState | null = $state.raw(null);
  readonly #host: Host;
  #job: string | null = null;

  constructor(host: Host) {
    this.#host = host;
  }

  /** Null: it was stopped, and nothing was saved. */
  async run(order: PackOrder, place: Place): Promise<Outcome> {
    const begun = await this.#host.call('pack.begin', order);
    if (!begun.ok) return { problem: begun.error.message };
    const { job } = begun.value;
    this.#job = job;
    try {
      return await this.#finish(job, place);
    } finally {
      if (this.#job === job) this.stop();
    }
  }

  /** It is forgotten by the shell, too. */
  stop(): void {
    if (this.#job !== null) void this.#host.call('pack.stop', this.#job);
    this.#job = null;
    this.progress = null;
  }

  async #finish(job: string, place: Place): Promise<Outcome> {
    const made = await followPack(this.#host, job, (state) => {
      if (this.#job === job) this.progress = state;
      return this.#job === job;
    });
    if (made === null || 'problem' in made) return made;
    const saved = await this.#host.call('pack.save', job, place.handle, place.replace);
    return saved.ok ? { saved: saved.value, notes: made.notes } : { problem: saved.error.message };
  }
}
