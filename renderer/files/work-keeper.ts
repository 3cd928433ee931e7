/** Autosave: hands unsaved work to the shell soon after every change, and takes it back when nothing is unsaved. */

import type { Host } from '#contract/contract.ts';
import type { Document } from '#model/document/document.ts';
import { writeDocument } from '#model/file-format/write.ts';
import type { FileIdentity } from './file-desk.ts';

/** With the call itself this stays under the two seconds of work that a crash may cost. */
export const KEEP_AFTER_MS = 1000;

export interface Unsaved {
  readonly document: Document;
  readonly identity: FileIdentity;
}

export class WorkKeeper {
  readonly #host: Host;
  readonly #trouble: (message: string | null) => void;
  #timer: ReturnType<typeof setTimeout> | null = null;
  #waiting: Unsaved | null = null;
  #kept: string | null = null;
  /** Calls go one after the other, so that a late "keep" cannot overtake a "drop". */
  #calls: Promise<void> = Promise.resolve();
  #complained = false;

  /** `trouble` is told once when keeping fails, and null when it works again. */
  constructor(host: Host, trouble: (message: string | null) => void) {
    this.#host = host;
    this.#trouble = trouble;
  }

  /** Called on every change; null: everything is in its file. */
  changed(unsaved: Unsaved | null): void {
    this.#waiting = unsaved;
    if (unsaved) this.#timer ??= setTimeout(() => void this.flush(), KEEP_AFTER_MS);
    else {
      this.#stopTimer();
      void this.#afterOthers(() => this.#drop());
    }
  }

  /** Keeps what waits now, for instance when the window is hidden. */
  flush(): Promise<void> {
    this.#stopTimer();
    const unsaved = this.#waiting;
    this.#waiting = null;
    return unsaved ? this.#afterOthers(() => this.#keep(unsaved)) : this.#calls;
  }

  async #keep({ document, identity }: Unsaved): Promise<void> {
    const { key, name, handle, hash, recoveredFrom } = identity;
    const work = { name, handle, hash, recoveredFrom, text: writeDocument(document) };
    const answer = await this.#host.call('recovery.keep', key, work);
    if (answer.ok) this.#kept = key;
    if (answer.ok === this.#complained) this.#trouble(answer.ok ? null : answer.error.message);
    this.#complained = !answer.ok;
  }

  async #drop(): Promise<void> {
    const kept = this.#kept;
    this.#kept = null;
    if (kept !== null) await this.#host.call('recovery.drop', kept);
  }

  #afterOthers(call: () => Promise<void>): Promise<void> {
    this.#calls = this.#calls.then(call);
    return this.#calls;
  }

  #stopTimer(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
  }
}
