/**
 * Opening and saving: what is asked of the shell, what its refusals mean, and what is asked of the user. Knows no
 * components; questions go through `Asking`, and every change of the file's identity is told.
 */

import type { Fault, FileText, Handle, Host, Saved } from '#contract/contract.ts';
import type { Document } from '#model/document/document.ts';
import type { Entry } from '#model/document/history.ts';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { AS_THEY_ARE, inOwnWords, type OwnWords } from '#model/file-format/given-names.ts';

/** Which file the open concert lies in. */
export interface FileIdentity {
  readonly name: string;
  /** Where it is, for people; null: in no file yet. */
  readonly location: string | null;
  readonly handle: Handle | null;
  /** Of the bytes last read or written; null: not known, so that the next save asks before it replaces. */
  readonly hash: string | null;
  readonly readOnly: boolean;
  /** Names the unsaved work in the shell's recovery store. */
  readonly key: string;
  /** The kept work this concert was recovered from; it goes once the concert is kept anew or safely in a file. */
  readonly recoveredFrom: string | null;
}

/** What the desk needs of the open concert. */
export interface DeskConcert {
  readonly settled: Document;
  readonly dirty: boolean;
  readonly lastEntry: Entry | null;
  open(document: Document, inFile: boolean): void;
  markSaved(at: Entry | null): void;
}

export interface ChosenPlace {
  readonly handle: Handle;
  /** The user has agreed to replace what is there. */
  readonly replace: boolean;
}

export type ConflictChoice = 'copy' | 'theirs' | 'overwrite' | null;
export type UnsavedChoice = 'save' | 'discard' | null;
export type TroubleChoice = 'replace' | 'elsewhere' | null;

/** Questions to the user; null always means "leave it". */
export interface Asking {
  unsaved(name: string): Promise<UnsavedChoice>;
  conflict(fault: Fault): Promise<ConflictChoice>;
  /** A save was refused; `mayReplace`: it would work if the user agreed to replace what is there. */
  notSaved(fault: Fault, mayReplace: boolean): Promise<TroubleChoice>;
  openPlace(): Promise<Handle | null>;
  savePlace(suggestedName: string): Promise<ChosenPlace | null>;
}

export interface DeskNews {
  /** Another document is on its way: what is done to this one until then would be lost with it. */
  coming<T>(arrival: Promise<T>): Promise<T>;
  /** Another document is on the desk, or this one has been written to a file. */
  identity(now: FileIdentity, cause: 'opened' | 'saved'): void;
  saved(name: string): void;
  /** Something the user should read, but need not answer: what could not be opened, notes on a file, a save's warning. */
  remark(message: string, topic: 'opening' | 'file' | 'version' | 'saving'): void;
  /** Another program has written the open file, which has no unsaved changes here; `load` reads it anew. */
  changed(name: string, load: () => void): void;
}

export interface DeskParts {
  readonly host: Host;
  readonly concert: DeskConcert;
  readonly ask: Asking;
  readonly news: DeskNews;
  readonly newKey: () => string;
}

interface Target {
  readonly handle: Handle;
  readonly expectedHash: string | null;
  readonly replace: boolean;
}

/** Refusals that agreeing to replace overcomes. */
const REPLACEABLE: readonly string[] = ['file.exists', 'file.gone', 'file.readOnly'];

export class FileDesk {
  readonly #parts: DeskParts;
  #identity: FileIdentity;
  #saving: Promise<boolean> | null = null;
  /** What the file of the open document calls things that the window shows in its own language. */
  #inFile: OwnWords['inFile'] = (document) => document;
  /** What was last found on disk in place of the open file. */
  #foreignHash: string | null = null;

  constructor(parts: DeskParts) {
    this.#parts = parts;
    this.#identity = { ...nowhere(''), key: parts.newKey() };
  }

  get identity(): FileIdentity {
    return this.#identity;
  }

  /** Puts a document that lies in no file on the desk. */
  begin(document: Document, name: string, options: { readonly pristine: boolean }): void {
    this.#open(AS_THEY_ARE(document), options.pristine);
    this.#become(nowhere(name));
  }

  /** As it is written to a file: with the file's own names where the window only shows others. */
  inFile(document: Document): Document {
    return this.#inFile(document);
  }

  #open({ document, inFile }: OwnWords, isInFile: boolean): void {
    this.#inFile = inFile;
    this.#parts.concert.open(document, isInFile);
  }

  /**
   * Opens a file in place of what is open; the caller has asked about unsaved changes. False: it could not be, which
   * is told unless it is only `tried`.
   */
  open(handle: Handle, { tried = false } = {}): Promise<boolean> {
    return this.#parts.news.coming(this.#read(handle, tried));
  }

  async #read(handle: Handle, tried: boolean): Promise<boolean> {
    const answer = await this.#parts.host.call('files.read', handle);
    if (answer.ok) return this.#opened(answer.value);
    return tried ? false : this.#failed(answer.error.message);
  }

  /** Looks whether another program has written the open file: to be called when the user comes back to the window. */
  async lookAgain(): Promise<void> {
    const { handle, hash, key } = this.#identity;
    if (handle === null || hash === null || this.#saving || this.#parts.concert.dirty) return;
    const answer = await this.#parts.host.call('files.read', handle);
    const isStillOpen = this.#identity.key === key && this.#identity.hash === hash && !this.#saving;
    if (!answer.ok || !isStillOpen || this.#parts.concert.dirty) return;
    const there = answer.value;
    if (there.hash === hash || there.hash === this.#foreignHash) return;
    this.#foreignHash = there.hash;
    this.#parts.news.changed(there.name, () => void this.#loadAgain(handle));
  }

  async #loadAgain(handle: Handle): Promise<void> {
    if (await this.mayLeave()) await this.open(handle);
  }

  recover(id: string): Promise<boolean> {
    return this.#parts.news.coming(this.#readKept(id));
  }

  async #readKept(id: string): Promise<boolean> {
    const answer = await this.#parts.host.call('recovery.read', id);
    if (!answer.ok) return this.#failed(answer.error.message);
    const { text, ...file } = answer.value;
    const reading = readDocument(text);
    if (!reading.ok) return this.#failed(`${file.name}: ${reading.problem.message}`);
    this.#open(inOwnWords(reading.document), false);
    // With the hash that the work began from, a save tells the untouched file from one that changed since.
    this.#become({ ...nowhere(file.name), ...file, recoveredFrom: id });
    return true;
  }

  /** Saves to the concert's own file, or asks for a place. True: everything is on disk. */
  async save(): Promise<boolean> {
    const { handle, readOnly } = this.#identity;
    if (handle === null || readOnly) return this.saveAs();
    // The hash is looked up when its turn has come, for a save before it changes what is on disk.
    return this.#oneAtATime(() => this.#write({ handle, expectedHash: this.#identity.hash, replace: false }));
  }

  async saveAs(): Promise<boolean> {
    const place = await this.#parts.ask.savePlace(withEnding(this.#identity.name));
    if (!place) return false;
    return this.#oneAtATime(() => this.#write({ ...place, expectedHash: null }));
  }

  /** Whether the open concert may be left: it is safe, or the user lets it go. */
  async mayLeave(): Promise<boolean> {
    if (!this.#parts.concert.dirty) return true;
    const choice = await this.#parts.ask.unsaved(this.#identity.name);
    if (choice === 'save') return this.save();
    if (choice === 'discard') await this.#parts.news.coming(this.#forgetKeptWork());
    return choice === 'discard';
  }

  async chooseAndOpen(): Promise<boolean> {
    const handle = await this.#parts.ask.openPlace();
    return handle !== null && (await this.mayLeave()) && (await this.open(handle));
  }

  async #write(target: Target): Promise<boolean> {
    const { host, concert } = this.#parts;
    const at = concert.lastEntry;
    const text = writeDocument(this.#inFile(concert.settled));
    const answer = await host.call('files.save', { ...target, text });
    if (!answer.ok) return this.#refused(answer.error, target);
    concert.markSaved(at);
    await this.#written(answer.value);
    return true;
  }

  async #written(saved: Saved): Promise<void> {
    const { name, location, handle, hash, warning } = saved;
    const { key, recoveredFrom } = this.#identity;
    if (recoveredFrom !== null) await this.#parts.host.call('recovery.discard', recoveredFrom);
    this.#tell({ name, location, handle, hash, readOnly: false, key, recoveredFrom: null }, 'saved');
    if (!this.#parts.concert.dirty) await this.#parts.host.call('recovery.drop', key);
    if (warning === null) this.#parts.news.saved(name);
    else this.#parts.news.remark(warning, 'saving');
  }

  async #refused(fault: Fault, target: Target): Promise<boolean> {
    if (fault.code === 'file.changedOnDisk') return this.#inConflict(fault, target);
    const mayReplace = REPLACEABLE.includes(fault.code) && !target.replace;
    const choice = await this.#parts.ask.notSaved(fault, mayReplace);
    if (choice === 'replace') return this.#write({ ...target, replace: true });
    return choice === 'elsewhere' ? this.#writeElsewhere() : false;
  }

  async #inConflict(fault: Fault, target: Target): Promise<boolean> {
    const choice = await this.#parts.ask.conflict(fault);
    if (choice === 'overwrite') return this.#write({ ...target, replace: true });
    if (choice === 'copy') return this.#writeElsewhere();
    if (choice === 'theirs') await this.open(target.handle);
    return false;
  }

  async #writeElsewhere(): Promise<boolean> {
    const place = await this.#parts.ask.savePlace(withEnding(this.#identity.name));
    return place ? this.#write({ ...place, expectedHash: null }) : false;
  }

  /** A save asked for while another runs waits for it and then writes what there is by then. */
  async #oneAtATime(save: () => Promise<boolean>): Promise<boolean> {
    while (this.#saving) await this.#saving;
    this.#saving = save();
    try {
      return await this.#saving;
    } finally {
      this.#saving = null;
    }
  }

  #opened(file: FileText): boolean {
    const reading = readDocument(file.text);
    if (!reading.ok) return this.#failed(`${file.name}: ${reading.problem.message}`);
    this.#open(inOwnWords(reading.document), true);
    const { name, location, handle, hash, readOnly } = file;
    this.#become({ ...nowhere(name), location, handle, hash, readOnly });
    for (const note of reading.notes)
      this.#parts.news.remark(`${name}: ${note}`, reading.quiet.includes(note) ? 'version' : 'file');
    return true;
  }

  async #forgetKeptWork(): Promise<void> {
    const { key, recoveredFrom } = this.#identity;
    await this.#parts.host.call('recovery.drop', key);
    if (recoveredFrom !== null) await this.#parts.host.call('recovery.discard', recoveredFrom);
  }

  #become(identity: Omit<FileIdentity, 'key'>): void {
    this.#tell({ ...identity, key: this.#parts.newKey() }, 'opened');
  }

  #tell(identity: FileIdentity, cause: 'opened' | 'saved'): void {
    this.#identity = identity;
    this.#foreignHash = null;
    this.#parts.news.identity(identity, cause);
  }

  #failed(message: string): false {
    this.#parts.news.remark(message, 'opening');
    return false;
  }
}

function nowhere(name: string): Omit<FileIdentity, 'key'> {
  return { name, location: null, handle: null, hash: null, readOnly: false, recoveredFrom: null };
}

export function withEnding(name: string): string {
  return /\.standlines$/i.test(name) ? name : `${name}.standlines`;
}
