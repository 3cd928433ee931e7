/** Everything of one window, put together. Components get it from the context. */

import type { Handle, Hello, Host, Settings } from '#contract/contract.ts';
import type { Refusal, Outcome } from '#model/commands/command.ts';
import type { Document } from '#model/document/document.ts';
import { labelOf } from '#model/document/labels.ts';
import { formatPosition, type Units } from '#model/document/measures.ts';
import { isPlaced } from '#model/document/records.ts';
import { getContext, setContext } from 'svelte';
import { MediaQuery } from 'svelte/reactivity';
import { text } from '../app/text.ts';
import { FileDesk, type Asking, type DeskNews, type FileIdentity } from '../files/file-desk.ts';
import { rememberFile } from '../files/window-memory.ts';
import { timeOfDay } from '../files/kept-times.ts';
import { WorkKeeper } from '../files/work-keeper.ts';
import { UNREACHABLE } from '../host.ts';
import { Checks } from './checks.svelte.ts';
import { Drawings } from './drawings.ts';
import { PartFiles } from './part-files.ts';
import { Questions } from './questions.svelte.ts';
import {
  kindOf,
  OF_THE_DOCUMENT,
  OF_THE_FILE,
  remarked,
  settled,
  stillTrue,
  type Remark,
  type Topic,
} from './remarks.ts';
import { refusalWords } from '#model/commands/refusal-words.ts';
import { Session } from './session.svelte.ts';
import { shownPlan } from './shown-plan.ts';
import { TimeStrip } from './time-strip.svelte.ts';
import { TurnPlans } from './turn-plans.svelte.ts';
import { View } from './view.svelte.ts';

export interface Beginning {
  readonly host: Host;
  readonly hello: Hello;
  readonly settings: Settings;
  readonly document: Document;
  readonly name: string;
}

export class Editor {
  readonly host: Host;
  readonly hello: Hello;
  readonly session: Session;
  readonly view = new View();
  readonly checks = new Checks();
  readonly drawings = new Drawings();
  readonly turnPlans = new TurnPlans();
  readonly strip = new TimeStrip(() => shownPlan(this));
  readonly questions = new Questions();
  readonly desk: FileDesk;
  readonly keeper: WorkKeeper;
  readonly partFiles: PartFiles;

  file: FileIdentity = $state.raw({} as FileIdentity);
  settings: Settings = $state.raw({} as Settings);
  connected = $state(true);
  /** How many documents are on their way: until they are there, nothing can be done to the one they take the place of. */
  coming = $state(0);
  /** The page goes because the user said so: nothing is asked again. */
  leaving = false;
  /** What the user should read and can put away; the newest last. */
  remarks: readonly Remark[] = $state.raw([]);
  /** Said politely to a screen reader. */
  announcement = $state('');
  /** The same, for whoever announces from an effect: that must not run again for what it says itself. */
  #said = '';
  /** The last thing that went well, beside the document's name. */
  done = $state('');

  constructor({ host, hello, settings, document, name }: Beginning) {
    this.host = host;
    this.hello = hello;
    this.settings = settings;
    this.session = new Session(document, true);
    this.keeper = new WorkKeeper(host, (trouble) => this.#keeping(trouble));
    this.desk = new FileDesk({
      host,
      concert: this.session,
      ask: this.#asking(),
      news: this.#deskNews(),
      newKey: () => crypto.randomUUID(),
    });
    this.partFiles = new PartFiles(host, () => this.file.handle);
    this.desk.begin(document, name, { pristine: true });
    if (hello.notice) this.#say({ kind: 'notice', topic: 'shell', message: hello.notice });
  }

  readonly #systemIsDark = new MediaQuery('(prefers-color-scheme: dark)');

  readonly theme: 'light' | 'dark' = $derived.by(() => {
    const { theme } = this.settings;
    if (theme !== 'system') return theme;
    return this.#systemIsDark.current ? 'dark' : 'light';
  });

  readonly units: Units = $derived.by(() => {
    const { units } = this.settings;
    return units === 'document' ? this.session.concert.units : units;
  });

  /** Holds the window until what takes the place of the document has come, or could not. */
  async whileComing<T>(arrival: Promise<T>): Promise<T> {
    this.coming++;
    try {
      return await arrival;
    } finally {
      this.coming--;
    }
  }

  /** Carries a command out and shows a refusal, for callers that have no better place for it. */
  carryOut(outcome: Outcome): boolean {
    const refusal = this.session.carryOut(outcome);
    if (refusal) this.refuse(refusal);
    else if (outcome.ok) this.announce(text.did(outcome.label));
    return refusal === null;
  }

  refuse(refusal: Refusal): void {
    const message = refusalWords(refusal, this.units);
    this.#say({ kind: 'warning', topic: 'refusal', message, at: this.session.lastEntry });
  }

  /** Stays until it is put away or its topic is settled; it is read out by its role. */
  warn(message: string, topic: Topic): void {
    this.#say({ kind: 'warning', topic, message });
  }

  /** What the last change did beyond what was asked; it goes with the next change. */
  tell(message: string): void {
    this.#say({ kind: 'notice', topic: 'done', message, at: this.session.lastEntry });
  }

  putAway(remark: Remark): void {
    this.remarks = this.remarks.filter((other) => other !== remark);
  }

  /** Drops what was said of an earlier state of the document. */
  dropOldRemarks(): void {
    const staying = stillTrue(this.remarks, this.session.lastEntry);
    if (staying.length < this.remarks.length) this.remarks = staying;
  }

  #say(remark: Remark): void {
    this.remarks = remarked(this.remarks, remark);
  }

  #settle(topics: readonly Topic[]): void {
    this.remarks = settled(this.remarks, topics);
  }

  /** The same words once more would be no change, which nobody hears: they get a space that is neither seen nor said. */
  announce(message: string): void {
    this.#said = message === this.#said ? `${message}\u00a0` : message;
    this.announcement = this.#said;
  }

  /** "Clarinet (player 1): 820 SL, 1450 US". */
  whereIs(id: string): string {
    const { document, setup } = this.session;
    const record = document.records.get(id);
    const name = labelOf(document, setup, id);
    return record && isPlaced(record) ? `${name}: ${formatPosition(record, this.units)}` : name;
  }

  async changeSettings(change: Partial<Settings>): Promise<void> {
    this.settings = { ...this.settings, ...change };
    const answer = await this.host.call('settings.write', this.settings);
    if (answer.ok) this.#settle(['settings']);
    else if (answer.error.code !== UNREACHABLE) this.warn(answer.error.message, 'settings');
  }

  /** The page of another language is another page: it is loaded in place of this one, once unsaved work is seen to. */
  async changeLanguage(language: Settings['language']): Promise<void> {
    if (language === this.settings.language || !(await this.desk.mayLeave())) return;
    await this.changeSettings({ language });
    this.leaving = true;
    location.reload();
  }

  #keeping(trouble: string | null): void {
    if (trouble === null) this.#settle(['keeping']);
    else this.warn(text.files.notKept(this.file.name, trouble), 'keeping');
  }

  #deskNews(): DeskNews {
    return {
      coming: (arrival) => this.whileComing(arrival),
      identity: (now, cause) => {
        this.file = now;
        this.done = '';
        if (cause === 'opened') this.turnPlans.stop();
        this.#settle(cause === 'opened' ? OF_THE_DOCUMENT : OF_THE_FILE);
        rememberFile(now.handle);
      },
      saved: (name) => {
        this.done = text.files.savedAt(timeOfDay(new Date(), navigator.language), name);
        this.announce(text.files.savedAs(name));
      },
      remark: (message, topic) => this.#say({ kind: kindOf(topic), topic, message }),
      changed: (name, load) =>
        this.#say({
          kind: 'warning',
          topic: 'changed',
          message: text.files.changed(name),
          offer: { words: text.files.loadChanged, run: load },
        }),
    };
  }

  #asking(): Asking {
    const { questions, host } = this;
    const browse = async (mode: 'open' | 'save', name: string) =>
      questions.ask('place', { mode, type: 'standlines', name });
    return {
      unsaved: (name) => questions.ask('unsaved', { name }),
      conflict: (fault) => questions.ask('conflict', fault),
      notSaved: (fault, mayReplace) => questions.ask('notSaved', { fault, mayReplace }),
      openPlace: async () => {
        if (!this.hello.nativeDialogs) return (await browse('open', ''))?.handle ?? null;
        const answer = await host.call('files.askOpen', 'standlines');
        return answer.ok ? answer.value : this.#noDialog(answer.error.message, 'opening');
      },
      savePlace: async (name) => {
        if (!this.hello.nativeDialogs) return browse('save', name);
        const answer = await host.call('files.askSave', name, 'standlines');
        if (!answer.ok) return this.#noDialog(answer.error.message, 'saving');
        // The system's dialog has asked about replacing by itself.
        return answer.value === null ? null : { handle: answer.value, replace: true };
      },
    };
  }

  #noDialog(message: string, topic: Topic): null {
    this.warn(message, topic);
    return null;
  }

  /** Opens a file that is known by its handle, after asking about what is unsaved. */
  async open(handle: Handle): Promise<void> {
    if (await this.desk.mayLeave()) await this.desk.open(handle);
  }
}

const KEY = Symbol('editor');

export function provideEditor(editor: Editor): void {
  setContext(KEY, editor);
}

export function useEditor(): Editor {
  return getContext<Editor>(KEY);
}
