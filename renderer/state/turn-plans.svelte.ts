/** The page turns that were planned last, as the components see them. Derived from the document; never stored in it. */

import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { PlanProgress } from '#model/pages/planner/planner.ts';
import type { TurnsAnswer } from '../workers/turn-planning.ts';
import { startTurnsWorker, TurnsClient } from '../workers/turns-client.ts';

/** What was planned, to tell whether it still holds. */
interface Planned {
  readonly document: Document;
  readonly setup: Id<'setup'>;
}

export type TurnsState =
  | { readonly kind: 'idle' }
  | (Planned & { readonly kind: 'planning'; readonly progress: PlanProgress | null })
  | (Planned & { readonly kind: 'told'; readonly answer: TurnsAnswer })
  | (Planned & { readonly kind: 'failed'; readonly message: string });

export class TurnPlans {
  state: TurnsState = $state.raw({ kind: 'idle' });
  /** Which plan of the front is looked at; null: the kept one, or the best when none is kept. */
  chosen: number | null = $state(null);
  readonly #client = new TurnsClient(startTurnsWorker);

  plan(document: Document, setup: Id<'setup'>): void {
    const planned: Planned = { document, setup };
    this.chosen = null;
    this.state = { ...planned, kind: 'planning', progress: null };
    this.#client.plan(document, setup, (told) => {
      if (told.kind === 'progress') this.state = { ...planned, kind: 'planning', progress: told.progress };
      else if (told.kind === 'done') this.#told({ ...planned, kind: 'told', answer: told.answer });
      else this.state = { ...planned, kind: 'failed', message: told.message };
    });
  }

  /** What was planned last is looked at first. */
  #told(state: Extract<TurnsState, { kind: 'told' }>): void {
    this.state = state;
    this.chosen = state.answer.kind === 'planned' ? 0 : null;
  }

  stop(): void {
    this.#client.stop();
    this.chosen = null;
    this.state = { kind: 'idle' };
  }
}
