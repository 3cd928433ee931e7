/** Where the PDFs of the parts of a plan are, as far as they are at hand. */

import type { Handle } from '#contract/contract.ts';
import type { PartPdf } from '#model/document/records.ts';
import type { PlannedPaper } from '#model/drawing/cards/order.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { chosenHandle } from '../music/chosen-file.ts';
import { text } from '../text.ts';
import { pdfOf } from './prints.ts';

export interface PartSource {
  readonly player: string;
  /** Null: the concert names none. */
  readonly pdf: PartPdf | null;
  readonly outcome: 'none' | 'looking' | 'found' | 'changed' | 'missing';
  readonly handle: Handle | null;
}

export class PartSources {
  all: readonly PartSource[] = $state.raw([]);
  problem: string | null = $state(null);
  readonly #editor: Editor;
  readonly #looked: Promise<unknown>;

  constructor(editor: Editor, planned: PlannedPaper) {
    this.#editor = editor;
    this.all = planned.instance.players.map(({ id }) => {
      const pdf = pdfOf(planned, id);
      return { player: id, pdf, outcome: pdf ? 'looking' : 'none', handle: null };
    });
    this.#looked = Promise.all(this.all.map((source) => this.#look(source)));
  }

  get found(): readonly { readonly player: string; readonly handle: Handle }[] {
    return this.all.flatMap(({ player, outcome, handle }) =>
      outcome === 'found' && handle !== null ? [{ player, handle }] : [],
    );
  }

  /** What is at hand once it has been looked for everywhere: whoever is quicker must not get blank pages for it. */
  async foundAtLast(): Promise<PartSources['found']> {
    await this.#looked;
    return this.found;
  }

  async #look({ player, pdf }: PartSource): Promise<void> {
    if (!pdf) return;
    const answer = await this.#editor.partFiles.find(pdf);
    this.#tell(player, answer.outcome, answer.outcome === 'found' ? answer.handle : null);
  }

  /** The user shows where it is; a file with other contents is not taken for it. */
  async show({ player, pdf }: PartSource): Promise<void> {
    if (!pdf) return;
    const { host, partFiles } = this.#editor;
    const chosen = await chosenHandle(this.#editor, 'pdf');
    if (chosen === null) return;
    if (typeof chosen !== 'string') return void (this.problem = chosen.problem);
    const hash = await host.call('part.hash', chosen);
    if (!hash.ok) return void (this.problem = hash.error.message);
    if (hash.value !== pdf.sha256) return void (this.problem = text.paper.other(pdf.file));
    this.problem = null;
    partFiles.remember(pdf, chosen);
    this.#tell(player, 'found', chosen);
  }

  #tell(player: string, outcome: PartSource['outcome'], handle: Handle | null): void {
    this.all = this.all.map((source) => (source.player === player ? { ...source, outcome, handle } : source));
  }
}
