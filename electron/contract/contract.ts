/**
 * The whole conversation between the window and its shell, as one map: channel to signature. The Electron bridge,
 * the loopback server and the renderer's host are all derived from it. Everything is plain JSON, and every expected
 * failure is a value.
 */

import type { Music } from '#model/document/music.ts';
import type { FirstDrawing } from '#model/drawing/screen/first-picture.ts';
import type { ViewSize } from '#model/drawing/screen/framing.ts';
import type { PlotPart } from '#model/drawing/sheet/request.ts';
import type { LanguageChoice } from '#model/words/languages.ts';

export type Result<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: Fault };

export interface Fault {
  /** Stable, for programs: `file.notFound`, `file.changedOnDisk`, ... */
  readonly code: string;
  /** What is wrong, where, and what to do. */
  readonly message: string;
}

/** Names a file or folder without revealing or accepting a path: only handles the shell gave out are valid. */
export type Handle = string;

export interface Hello {
  readonly shell: 'electron' | 'loopback';
  readonly version: string;
  /** Whether `files.askOpen` and `files.askSave` show the system's dialogs; otherwise browse with `files.list`. */
  readonly nativeDialogs: boolean;
  /** Something the user should know first, for instance why this is not the Electron shell. */
  readonly notice: string | null;
  /** The file named on the command line, if any. */
  readonly open: Handle | null;
}

export interface FileText {
  readonly handle: Handle;
  readonly name: string;
  /** Where it is, for people; never sent back. */
  readonly location: string;
  readonly text: string;
  /** SHA-256 of the bytes on disk, hexadecimal: handed back on save to notice a foreign change. */
  readonly hash: string;
  readonly readOnly: boolean;
}

export interface SaveRequest {
  readonly handle: Handle;
  readonly text: string;
  /** What the caller believes is on disk; null: a new file, which must not exist yet unless `replace`. */
  readonly expectedHash: string | null;
  /** The user has agreed to replace what is there. */
  readonly replace: boolean;
}

export interface Saved {
  readonly handle: Handle;
  readonly name: string;
  readonly location: string;
  readonly hash: string;
  /** Saved, but with a remark the user must see (the disk reported an error afterwards). */
  readonly warning: string | null;
}

export interface FolderEntry {
  readonly name: string;
  readonly handle: Handle;
  readonly type: 'folder' | 'file';
  readonly size: number;
}

export interface FolderListing {
  readonly handle: Handle;
  readonly location: string;
  /** Null at the top. */
  readonly parent: Handle | null;
  readonly entries: readonly FolderEntry[];
}

/** `underlay`: a picture, a PDF or a DXF. */
export type FileType = 'standlines' | 'pdf' | 'score' | 'table' | 'underlay' | 'dxf' | 'csv' | 'zip';

/** Scores, tables and underlays are only read. */
export type SavedType = Exclude<FileType, 'score' | 'table' | 'underlay'>;

/** A score as music; its file is not needed any more. */
export interface ScoreFile {
  readonly name: string;
  readonly music: Music;
  /** The file inside a compressed score that was read; null: it is not compressed. */
  readonly root: string | null;
  /** All scores that a compressed file holds, this one included; empty for any other. */
  readonly roots: readonly string[];
  /** Of several scores the names of the parts in each, as printed; empty where none is known. */
  readonly rootParts: readonly (readonly string[])[];
}

/** The PDF of a part, looked over. */
export interface PartFile {
  readonly name: string;
  /** Of its bytes, hexadecimal. */
  readonly sha256: string;
  /** As they are looked at, millimetres. */
  readonly sizes: readonly { readonly width: number; readonly height: number }[];
  /** What is unusual about it, a sentence each. */
  readonly notes: readonly string[];
}

/** What is to go under a plan, as it is on disk, looked over. */
export interface UnderlayFile {
  readonly name: string;
  readonly type: 'png' | 'jpeg' | 'pdf' | 'dxf';
  /** Its bytes. */
  readonly base64: string;
}

export interface RecentFile {
  readonly handle: Handle;
  readonly name: string;
  readonly location: string;
}

export interface WorkToKeep {
  readonly name: string;
  /** The file it belongs to; null: never saved. */
  readonly handle: Handle | null;
  /** Of the file's bytes that this work began from; null: not known. */
  readonly hash: string | null;
  readonly text: string;
  /** The kept work it was recovered from, which goes as soon as this is kept in its place; null: none. */
  readonly recoveredFrom: string | null;
}

export interface RecoveredWork {
  readonly name: string;
  readonly handle: Handle | null;
  /** Where the file is, for people. */
  readonly location: string | null;
  readonly hash: string | null;
  readonly text: string;
}

/** Unsaved work found at start-up. */
export interface Recoverable {
  readonly id: string;
  readonly name: string;
  readonly location: string | null;
  /** ISO 8601 time of the last autosave. */
  readonly savedAt: string;
}

export interface Settings {
  /** Of the window, the checks and the prints; the window takes it when it is loaded. */
  readonly language: LanguageChoice;
  readonly theme: 'system' | 'light' | 'dark';
  readonly units: 'document' | 'metric' | 'imperial';
  readonly paper: string | null;
  /** Whether letters and signs alone are keys of commands; switched off by those who set them off by mistake. */
  readonly singleKeys: boolean;
}

/** What is asked before the window itself is there. */
export interface PictureAsked {
  /** Pixels that the plan has where nothing stands over it. */
  readonly view: ViewSize;
  /** Pixels of its height that the first steps take, and each line that is to be read. */
  readonly taken: { readonly steps: number; readonly line: number };
  /** The system's choice, for those who leave it to the system. */
  readonly dark: boolean;
  /** Language tag with the region whose units are usual. */
  readonly locale: string;
  /** The file that the window worked on before it was loaded anew; null: on none; left out: it is a new window. */
  readonly before?: Handle | null | undefined;
}

/** The plan of the concert that a window will open, and what will stand round it. */
export interface FirstPicture extends FirstDrawing {
  readonly theme: 'light' | 'dark';
  /** Whether the first steps will be shown. */
  readonly first: boolean;
  /** What will be there to read over the plan, a line each. */
  readonly lines: readonly string[];
  /** The words of the scale of seats, as they stand under the plan. */
  readonly legend: readonly string[];
}

export interface PlotRequest {
  /** The document as its file text; the shell reads it as strictly as a file. */
  readonly text: string;
  readonly setup: string;
  readonly options: PlotOptions;
}

export interface PlotOptions {
  readonly paper: 'A4' | 'A3' | 'Letter' | 'Tabloid';
  readonly orientation: 'portrait' | 'landscape' | 'auto';
  /** The ratio's denominator, 50 for 1:50; null picks the largest standard scale that fits. */
  readonly scale: number | null;
  /** What is printed, at least one; left out: everything. */
  readonly parts?: readonly PlotPart[];
}

export interface PackOrder {
  /** The document as its file text; read as strictly as a file. */
  readonly text: string;
  readonly paper: PlotOptions['paper'];
  /** Names of entries of the pack, in the order of the sheets; null: the usual ones. */
  readonly sheets: readonly string[] | null;
  /** Of the stage plots: the ratio's denominator, 50 for 1:50; null picks the largest standard scale that fits each. */
  readonly scale: number | null;
  /** What it is made as: `pdf` alone makes one PDF, anything else a zip of the files. */
  readonly formats: readonly ('pdf' | 'svg' | 'png' | 'dxf' | 'csv')[];
  /** Of pictures, dots per inch. */
  readonly dpi: number;
}

/** How far a pack is. */
export interface PackState {
  /** Grows with everything that happens. */
  readonly step: number;
  readonly doing: 'counting' | 'drawing' | 'ready' | 'failed';
  /** Of what it is doing. */
  readonly done: number;
  readonly of: number;
  /** What is in it, once it is ready. */
  readonly pack: {
    readonly sheets: number;
    /** What the one who prints should know. */
    readonly notes: readonly string[];
    readonly entries: readonly {
      readonly name: string;
      readonly title: string;
      /** Empty: it is of the whole concert. */
      readonly piece: string;
      /** Number of its first sheet, from 1. */
      readonly first: number;
      readonly count: number;
    }[];
  } | null;
  /** Why it failed. */
  readonly fault: Fault | null;
}

export interface PaperRequest {
  /** The document as its file text, the plan that is printed being the one that the setup keeps; read as strictly as a file. */
  readonly text: string;
  readonly setup: string;
  /** Stands of the plan, each with the catalogue's id of what its booklet is printed on. */
  readonly booklets: readonly { readonly station: string; readonly paper: string }[];
  /** What cue cards are printed on; null: none are. */
  readonly cards: string | null;
  /** Where the PDFs are that the document names; pages of other players become numbered blanks. */
  readonly pdfs: readonly { readonly player: string; readonly handle: Handle }[];
}

export interface PaperSaved extends Saved {
  readonly sheets: number;
  /** What the one who prints should know. */
  readonly notes: readonly string[];
}

export interface ExportRequest {
  /** The document as its file text; read as strictly as a file. */
  readonly text: string;
  readonly setup: string;
  /** The plan of the setup for drawing programs, its marks, or what the whole concert needs, as tables. */
  readonly what: 'dxf' | 'marks' | 'inventory';
}

export interface Contract {
  'app.hello': () => Result<Hello>;
  'files.askOpen': (type: FileType) => Result<Handle | null>;
  'files.askSave': (suggestedName: string, type: SavedType) => Result<Handle | null>;
  /** Null: the folder last used, or the user's documents. */
  'files.list': (folder: Handle | null) => Result<FolderListing>;
  /** A handle for a (perhaps not yet existing) file in a folder. */
  'files.inFolder': (folder: Handle, name: string) => Result<{ handle: Handle; exists: boolean }>;
  /** A handle for a (perhaps not yet existing) file beside another one. */
  'files.beside': (file: Handle, name: string) => Result<{ handle: Handle; exists: boolean }>;
  'files.read': (handle: Handle) => Result<FileText>;
  'files.save': (request: SaveRequest) => Result<Saved>;
  /** `root` chooses among several scores of a compressed file, the first for null. */
  'score.read': (handle: Handle, root: string | null) => Result<ScoreFile>;
  /** A table typed elsewhere, as text. */
  'table.read': (handle: Handle) => Result<{ name: string; text: string }>;
  'part.read': (handle: Handle) => Result<PartFile>;
  /** The bytes of a part in base64, to show its pages. Refused as `part.read` refuses. */
  'part.bytes': (handle: Handle) => Result<string>;
  /** The PDF of that name beside a concert's file; null: there is none. */
  'part.beside': (document: Handle, name: string) => Result<Handle | null>;
  /** SHA-256 of what the file holds now; null: it is gone. */
  'part.hash': (handle: Handle) => Result<string | null>;
  'underlay.read': (handle: Handle) => Result<UnderlayFile>;
  'files.demo': () => Result<{ name: string; text: string }>;
  'recent.list': () => Result<readonly RecentFile[]>;
  'recent.clear': () => Result<null>;
  /** Keeps unsaved work; `key` names the open document in this window. */
  'recovery.keep': (key: string, work: WorkToKeep) => Result<null>;
  'recovery.drop': (key: string) => Result<null>;
  'recovery.list': () => Result<readonly Recoverable[]>;
  'recovery.read': (id: string) => Result<RecoveredWork>;
  'recovery.discard': (id: string) => Result<null>;
  'settings.read': () => Result<Settings>;
  'settings.write': (settings: Settings) => Result<null>;
  /** The plan that this window will show first. Null: none that can be known, because what it would open cannot be. */
  'plan.first': (asked: PictureAsked) => Result<FirstPicture | null>;
  /** The plot as PDF bytes in base64, for the preview. */
  'plot.render': (request: PlotRequest) => Result<{ base64: string; pages: number }>;
  'plot.save': (request: PlotRequest, handle: Handle, replace: boolean) => Result<Saved>;
  /** Begins to make a print pack, and names it. */
  'pack.begin': (order: PackOrder) => Result<{ job: string }>;
  /** Waits a little for more than was known after the step `seen`. */
  'pack.watch': (job: string, seen: number) => Result<PackState>;
  /** Ends it if need be, and forgets it. */
  'pack.stop': (job: string) => Result<null>;
  /** The whole pack in base64, to be looked at. */
  'pack.bytes': (job: string) => Result<string>;
  /** Saves the very pack that was looked at, as a `.pdf` or a `.zip`. */
  'pack.save': (job: string, handle: Handle, replace: boolean) => Result<Saved>;
  /** Booklets and cue cards as one PDF. */
  'paper.save': (request: PaperRequest, handle: Handle, replace: boolean) => Result<PaperSaved>;
  /** For other programs: the file is a `.dxf` or a `.csv`. */
  'export.save': (request: ExportRequest, handle: Handle, replace: boolean) => Result<Saved>;
}

export type Channel = keyof Contract;
export type Arguments<C extends Channel> = Parameters<Contract[C]>;
export type Answer<C extends Channel> = ReturnType<Contract[C]>;

/** What the shell implements. */
export type Handlers = { readonly [C in Channel]: (...args: Arguments<C>) => Promise<Answer<C>> };

/** What the window calls. */
export interface Host {
  call<C extends Channel>(channel: C, ...args: Arguments<C>): Promise<Answer<C>>;
}
