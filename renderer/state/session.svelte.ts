/** The open concert as the components see it: `open-concert.ts` made reactive, and nothing more. */

import type { Outcome, Refusal } from '#model/commands/command.ts';
import { concertOf, type Document } from '#model/document/document.ts';
import type { Entry, Selection } from '#model/document/history.ts';
import type { Id } from '#model/document/ids.ts';
import { setupsWithVariants } from '#model/programme/programme.ts';
import * as concerts from './open-concert.ts';

export class Session {
  /** Raw: the document is immutable and must stay a plain value that a worker can be handed. */
  #now: concerts.OpenConcert;
  /** Counts documents opened in this window, to tell a new one from a changed one. */
  #openings = $state.raw(0);

  constructor(document: Document, inFile: boolean) {
    this.#now = $state.raw(concerts.opened(document, inFile));
  }

  readonly document = $derived.by(() => concerts.shownDocument(this.#now));
  readonly selection = $derived.by(() => concerts.shownSelection(this.#now));
  readonly concert = $derived.by(() => concertOf(this.document));
  readonly setups = $derived.by(() => setupsWithVariants(this.document));
  readonly dirty = $derived.by(() => concerts.isDirty(this.#now));
  readonly undoName = $derived.by(() => this.#now.history.past.at(-1)?.label ?? null);
  readonly redoName = $derived.by(() => this.#now.history.future[0]?.label ?? null);

  /** The document without the draft: what is saved, and what "before" means during a gesture. */
  readonly settled = $derived.by(() => this.#now.history.document);
  readonly setup = $derived.by(() => this.#now.setup);
  readonly drafting = $derived.by(() => this.#now.draft !== null);

  get openings(): number {
    return this.#openings;
  }

  get lastEntry(): Entry | null {
    return concerts.lastEntry(this.#now);
  }

  open(document: Document, inFile: boolean): void {
    this.#now = concerts.opened(document, inFile);
    this.#openings += 1;
  }

  /** Carries a command out; a refusal comes back for whoever asked to show it. */
  carryOut(outcome: Outcome): Refusal | null {
    if (!outcome.ok) return outcome;
    this.#now = concerts.carriedOut(this.#now, outcome);
    return null;
  }

  preview(outcome: Outcome): Refusal | null {
    if (!outcome.ok) return outcome;
    this.#now = concerts.drafted(this.#now, outcome);
    return null;
  }

  keepDraft(): void {
    this.#now = concerts.draftKept(this.#now);
  }

  dropDraft(): void {
    this.#now = concerts.draftDropped(this.#now);
  }

  undo(): void {
    this.#now = concerts.undone(this.#now);
  }

  redo(): void {
    this.#now = concerts.redone(this.#now);
  }

  select(ids: Selection): void {
    this.#now = concerts.selected(this.#now, ids);
  }

  showSetup(setup: Id<'setup'>): void {
    this.#now = concerts.setupShown(this.#now, setup);
  }

  markSaved(at: Entry | null): void {
    this.#now = concerts.saved(this.#now, at);
  }
}
