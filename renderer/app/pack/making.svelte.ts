/** A pack as it is made beside the window: begun anew with each choice, watched, stopped, and shown as the very file it is. */

import type { Host, PackOrder, PackState } from '#contract/contract.ts';
import { followPack } from './following.ts';
import { openPdfPages, type PdfPages } from '../music/pdf-pages.ts';

/** After the last change so long is waited before a pack is begun, ms. */
const CALM = 350;

const NOT_BEGUN: PackState = { step: -1, doing: 'counting', done: 0, of: 1, pack: null, fault: null };

export interface ShownPack {
  readonly job: string;
  readonly pack: NonNullable<PackState['pack']>;
  /** Null: this window cannot show it. */
  readonly pages: PdfPages | null;
}

export class PackMaking {
  /** How far the pack is that is being made; null: none is. */
  progress: PackState | null = $state.raw(null);
  shown: ShownPack | null = $state.raw(null);
  problem: string | null = $state(null);
  isStopped = $state(false);
  readonly #host: Host;
  #job: string | null = null;
  #round = 0;
  #waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(host: Host) {
    this.#host = host;
  }

  /** What was being made is dropped; what is shown stays until there is another. */
  make(order: PackOrder): void {
    this.stop();
    this.isStopped = false;
    this.progress = NOT_BEGUN;
    const round = ++this.#round;
    this.#waiting = setTimeout(() => void this.#run(order, round), CALM);
  }

  stop(): void {
    clearTimeout(this.#waiting);
    this.#round++;
    this.progress = null;
    this.problem = null;
    this.isStopped = true;
    this.#forget(this.#job);
    this.#job = null;
  }

  /** Nothing of it is left in this window or with the shell. */
  end(): void {
    this.stop();
    this.#close();
  }

  async #run(order: PackOrder, round: number): Promise<void> {
    const begun = await this.#host.call('pack.begin', order);
    if (round !== this.#round) return this.#forget(begun.ok ? begun.value.job : null);
    if (!begun.ok) return this.#fail(begun.error.message);
    this.#job = begun.value.job;
    const made = await followPack(this.#host, begun.value.job, (state) => {
      if (round === this.#round) this.progress = state;
      return round === this.#round;
    });
    if (made === null) return;
    if ('problem' in made) return this.#fail(made.problem);
    return this.#show(begun.value.job, made, round);
  }

  async #show(job: string, pack: ShownPack['pack'], round: number): Promise<void> {
    const answer = await this.#host.call('pack.bytes', job);
    if (round !== this.#round) return;
    if (!answer.ok) return this.#fail(answer.error.message);
    const bytes = Uint8Array.from(atob(answer.value), (letter) => letter.charCodeAt(0));
    const pages = await openPdfPages(bytes).catch(() => null);
    if (round !== this.#round) return pages?.close();
    this.#close();
    this.shown = { job, pack, pages };
    this.#job = null;
    this.progress = null;
  }

  #close(): void {
    this.shown?.pages?.close();
    this.#forget(this.shown?.job ?? null);
    this.shown = null;
  }

  /** What was shown was made as asked before: nobody is to take it for this. */
  #fail(message: string): void {
    this.#close();
    this.progress = null;
    this.problem = message;
  }

  #forget(job: string | null): void {
    if (job !== null) void this.#host.call('pack.stop', job);
  }
}
