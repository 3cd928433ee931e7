/**
 * What happens between the pieces, worked out beside the window: with many things it takes seconds. Until a new answer is
 * there the one before stays, with the document that it is about.
 */

import type { Document } from '#model/document/document.ts';
import type { Changeover } from '#model/programme/changeover.ts';
import type { Part } from '#model/programme/programme.ts';
import type { Checks } from '../../state/checks.svelte.ts';

export interface WorkedOut {
  readonly document: Document;
  readonly change: Changeover;
}

export class Changeovers {
  #known: ReadonlyMap<string, WorkedOut> = $state.raw(new Map());
  readonly #checks: Checks;

  constructor(checks: Checks) {
    this.#checks = checks;
  }

  /** Undefined: not worked out yet. */
  of(part: Part): WorkedOut | undefined {
    return this.#known.get(keyOf(part));
  }

  /** One after the other; returns how to stop, after which nothing more is told. */
  work(document: Document, parts: readonly Part[]): () => void {
    let wanted = true;
    const told = (part: Part, change: Changeover): void => {
      if (wanted) this.#known = new Map(this.#known).set(keyOf(part), { document, change });
    };
    void this.#workAll(document, parts, { isWanted: () => wanted, told });
    return () => (wanted = false);
  }

  async #workAll(
    document: Document,
    parts: readonly Part[],
    { isWanted, told }: { isWanted: () => boolean; told: (part: Part, change: Changeover) => void },
  ): Promise<void> {
    try {
      for (const part of parts) {
        if (!isWanted()) return;
        told(part, await this.#checks.changeover(document, part.from?.id ?? null, part.to?.id ?? null));
      }
    } catch (error) {
      if (isWanted()) this.#checks.failed(error);
    }
  }
}

function keyOf({ from, to }: Part): string {
  return `${from?.id ?? ''}>${to?.id ?? ''}`;
}
