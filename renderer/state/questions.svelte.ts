/** Dialogs as questions: whoever asks waits for the answer, and null always means that it was dismissed. */

import type { Fault, FileType, Recoverable, ScoreFile } from '#contract/contract.ts';
import type { VenueModel } from '#model/catalogue/venues.ts';
import type { Id } from '#model/document/ids.ts';
import type { HelpPageId } from '../app/help/pages.ts';
import type { Onlooker } from '../workers/protocol.ts';
import type { ChosenPlace, ConflictChoice, TroubleChoice, UnsavedChoice } from '../files/file-desk.ts';

/** Every dialog: what it is asked with, and what it answers. */
export interface Dialogs {
  unsaved: { readonly about: { readonly name: string }; readonly answer: UnsavedChoice };
  conflict: { readonly about: Fault; readonly answer: ConflictChoice };
  notSaved: {
    readonly about: { readonly fault: Fault; readonly mayReplace: boolean };
    readonly answer: TroubleChoice;
  };
  place: {
    readonly about: { readonly mode: 'open' | 'save'; readonly type: FileType; readonly name: string };
    readonly answer: ChosenPlace;
  };
  recovery: { readonly about: { readonly kept: readonly Recoverable[] }; readonly answer: string };
  newConcert: { readonly about: null; readonly answer: VenueModel };
  otherHouse: { readonly about: null; readonly answer: VenueModel };
  setupName: {
    readonly about: { readonly title: string; readonly name: string };
    readonly answer: string;
  };
  print: { readonly about: null; readonly answer: null };
  /** All sheets of the concert as one file. */
  pack: { readonly about: null; readonly answer: null };
  /** Booklets and cue cards of the plan that is shown. */
  paper: { readonly about: null; readonly answer: null };
  commands: { readonly about: null; readonly answer: null };
  /** Pages about the checks, opened at one of them. */
  help: { readonly about: { readonly page: HelpPageId }; readonly answer: null };
  concert: { readonly about: null; readonly answer: null };
  /** Of the setup in view. */
  music: { readonly about: null; readonly answer: null };
  /** Parts without a score, of the setup in view. */
  tables: { readonly about: null; readonly answer: null };
  /** Of one part beside others, by its index; null: of a further one. */
  partTable: {
    readonly about: { readonly score: Id<'score'>; readonly part: number | null };
    readonly answer: null;
  };
  /** What a part is printed in; the music's part by its index. */
  partPdf: {
    readonly about: { readonly score: Id<'score'>; readonly part: number };
    readonly answer: null;
  };
  /** Which of several scores in one file; the answer is one of `roots`. */
  scoreChoice: {
    readonly about: Pick<ScoreFile, 'name' | 'roots' | 'rootParts'>;
    readonly answer: string;
  };
  /** Typed as text, for the setup in view. */
  ensemble: { readonly about: null; readonly answer: null };
  /** A picture, page or drawing that is to lie under the plan. */
  underlay: { readonly about: null; readonly answer: null };
  /** How far two points are apart in truth, which are `measured` mm apart as the underlay lies. */
  underlayScale: {
    /** `refused`: why an answer cannot be taken; null: it can. */
    readonly about: { readonly measured: number; readonly refused: (given: GivenScale) => string | null };
    readonly answer: GivenScale;
  };
  seen: { readonly about: { readonly from: Onlooker }; readonly answer: null };
}

export interface GivenScale {
  readonly distance: number;
  readonly level: boolean;
}

export type DialogKind = keyof Dialogs;

export type OpenQuestion = {
  [K in DialogKind]: {
    readonly kind: K;
    readonly about: Dialogs[K]['about'];
    readonly answer: (value: Dialogs[K]['answer'] | null) => void;
  };
}[DialogKind];

export class Questions {
  /** The lowest first; a dialog may ask another question. */
  open: readonly OpenQuestion[] = $state.raw([]);

  ask<K extends DialogKind>(kind: K, about: Dialogs[K]['about']): Promise<Dialogs[K]['answer'] | null> {
    return new Promise((resolve) => {
      const question = {
        kind,
        about,
        answer: (value: Dialogs[K]['answer'] | null) => {
          this.open = this.open.filter((other) => other !== question);
          resolve(value);
        },
      } as OpenQuestion;
      this.open = [...this.open, question];
    });
  }
}
