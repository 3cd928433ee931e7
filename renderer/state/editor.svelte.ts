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
import { FileDesk, type Asking, type FileIdentity } from '../files/file-desk.ts';
import { WorkKeeper } from '../files/work-keeper.ts';
import { UNREACHABLE } from '../host.ts';
import { Checks } from './checks.svelte.ts';
import { Questions } from './questions.svelte.ts';
import { Session } from './session.svelte.ts';
import { View } from './view.svelte.ts';

export interface Remark {
  readonly kind: 'done' | 'warning' | 'failed' | 'notice';
  readonly message: string;
}

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
  readonly questions = new Questions();
  readonly desk: FileDesk;
  readonly keeper: WorkKeeper;

  file: FileIdentity = $state.raw({} as FileIdentity);
  settings: Settings = $state.raw({} as Settings);
  connected = $state(true);
  /** What the user should read and can put away; the newest last. */
  banners: readonly Remark[] = $state.raw([]);
  /** Said politely to a screen reader. */
  announcement = $state('');
  /** The last thing that went well, beside the document's name. */
  done = $state('');

  constructor({ host, hello, settings, document, name }: Beginning) {
    this.host = host;
    this.hello = hello;
    this.settings = settings;
    this.session = new Session(document, true);
    this.keeper = new WorkKeeper(host, (message) => this.warn(text.files.notKept(message)));
    this.desk = new FileDesk({
      host,
      concert: this.session,
      ask: this.#asking(),
      news: { identity: (now) => (this.file = now), remark: (message, kind) => this.#remark(message, kind) },
      newKey: () => crypto.randomUUID(),
    });
    this.desk.begin(document, name, { pristine: true });
    if (hello.notice) this.banners = [{ kind: 'notice', message: hello.notice }];
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

  /** Carries a command out and shows a refusal, for callers that have no better place for it. */
  carryOut(outcome: Outcome): boolean {
    const refusal = this.session.carryOut(outcome);
    if (refusal) this.refuse(refusal);
    else if (outcome.ok) this.announce(text.did(outcome.label));
    return refusal === null;
  }

  refuse({ reason }: Refusal): void {
    this.warn(reason);
  }

  warn(message: string): void {
    this.banners = [
      ...this.banners.filter((banner) => banner.message !== message),
      { kind: 'warning', message },
    ];
    this.announce(message);
  }

  putAway(banner: Remark): void {
    this.banners = this.banners.filter((other) => other !== banner);
  }

  announce(message: string): void {
    this.announcement = message;
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
    if (!answer.ok && answer.error.code !== UNREACHABLE) this.warn(answer.error.message);
  }

  #remark(message: string, kind: 'done' | 'warning' | 'failed'): void {
    if (kind === 'done') {
      this.done = text.files.saved;
      this.announce(text.files.savedAs(message));
    } else this.warn(message);
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
        return answer.ok ? answer.value : this.#noDialog(answer.error.message);
      },
      savePlace: async (name) => {
        if (!this.hello.nativeDialogs) return browse('save', name);
        const answer = await host.call('files.askSave', name, 'standlines');
        if (!answer.ok) return this.#noDialog(answer.error.message);
        // The system's dialog has asked about replacing by itself.
        return answer.value === null ? null : { handle: answer.value, replace: true };
      },
    };
  }

  #noDialog(message: string): null {
    this.warn(message);
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
