/**
 * Where the PDFs of parts are, for as long as the window is open: a concert knows them by name and content alone, so they
 * are looked for beside its file, or remembered from when the user showed where they are.
 */

import type { Handle, Host } from '#contract/contract.ts';
import type { PartPdf } from '#model/document/records.ts';

/** What is asked of a part's PDF; the shell opens and prints it by its handle. */
export type PartFileFound =
  | { readonly outcome: 'found'; readonly handle: Handle }
  /** A file of that name is there, but it is not the one that the concert was told of. */
  | { readonly outcome: 'changed'; readonly handle: Handle }
  | { readonly outcome: 'missing' };

type Wanted = Pick<PartPdf, 'file' | 'sha256'>;

export class PartFiles {
  readonly #host: Host;
  /** The concert's own file; null: it was never saved. */
  readonly #document: () => Handle | null;
  /** By content, and the newest by name. */
  readonly #shown = new Map<string, Handle>();

  constructor(host: Host, document: () => Handle | null) {
    this.#host = host;
    this.#document = document;
  }

  /** The user has shown where it is. */
  remember({ file, sha256 }: Wanted, handle: Handle): void {
    this.#shown.set(sha256, handle);
    this.#shown.set(file, handle);
  }

  /** Asks nobody. A file that cannot be read counts as missing. */
  async find(wanted: Wanted): Promise<PartFileFound> {
    let changed: Handle | null = null;
    for (const handle of await this.#candidates(wanted)) {
      const hash = await this.#host.call('part.hash', handle);
      if (!hash.ok || hash.value === null) continue;
      if (hash.value === wanted.sha256) return { outcome: 'found', handle };
      changed ??= handle;
    }
    return changed === null ? { outcome: 'missing' } : { outcome: 'changed', handle: changed };
  }

  async #candidates({ file, sha256 }: Wanted): Promise<readonly Handle[]> {
    const shown = [this.#shown.get(sha256), this.#shown.get(file)];
    const document = this.#document();
    const beside = document === null ? null : await this.#host.call('part.beside', document, file);
    const all = [...shown, beside?.ok ? beside.value : null];
    return [...new Set(all)].filter((handle): handle is Handle => typeof handle === 'string');
  }
}
