/** A shell in memory: files by handle, kept work by key, and a list of every call. */

import type { Answer, Arguments, Channel, Fault, Host } from '#contract/contract.ts';
import { createHash } from 'node:crypto';

export class FakeShell implements Host {
  readonly files = new Map<string, string>();
  readonly kept = new Map<string, string>();
  /** To which file kept work belongs, and what that held when the work began; in no file when it is not here. */
  readonly keptFiles = new Map<string, { readonly handle: string | null; readonly hash: string | null }>();
  readonly calls: Channel[] = [];
  /** Answers the next save with this fault. */
  nextFault: Fault | null = null;
  beforeSave: () => Promise<void> = () => Promise.resolve();

  async call<C extends Channel>(channel: C, ...args: Arguments<C>): Promise<Answer<C>> {
    this.calls.push(channel);
    const answer = this.#answers[channel] as ((...args: Arguments<C>) => Promise<Answer<C>>) | undefined;
    if (!answer) throw new Error(`the fake shell does not answer ${channel}`);
    return answer(...args);
  }

  readonly #answers: { readonly [C in Channel]?: (...args: Arguments<C>) => Promise<Answer<C>> } = {
    'files.read': async (handle) => {
      const text = this.files.get(handle);
      if (text === undefined) return failed('file.notFound');
      return done({
        handle,
        name: handle,
        location: `/home/${handle}`,
        text,
        hash: hashOf(text),
        readOnly: false,
      });
    },
    'files.save': async ({ handle, text, expectedHash, replace }) => {
      await this.beforeSave();
      const fault = this.nextFault ?? this.#refusal(handle, expectedHash, replace);
      this.nextFault = null;
      if (fault) return { ok: false, error: fault };
      this.files.set(handle, text);
      return done({ handle, name: handle, location: `/home/${handle}`, hash: hashOf(text), warning: null });
    },
    'recovery.keep': async (key, { handle, hash, text, recoveredFrom }) => {
      this.kept.set(key, text);
      this.keptFiles.set(key, { handle, hash });
      if (recoveredFrom !== null) this.kept.delete(recoveredFrom);
      return done(null);
    },
    'recovery.drop': async (key) => {
      this.kept.delete(key);
      return done(null);
    },
    'recovery.discard': async (id) => {
      this.kept.delete(id);
      return done(null);
    },
    'recovery.read': async (id) => {
      const text = this.kept.get(id);
      if (text === undefined) return failed('recovery.gone');
      const { handle = null, hash = null } = this.keptFiles.get(id) ?? {};
      return done({ text, handle, hash, location: handle && `/home/${handle}`, name: 'Recovered' });
    },
  };

  #refusal(handle: string, expectedHash: string | null, replace: boolean): Fault | null {
    const there = this.files.get(handle);
    if (replace) return null;
    if (there === undefined) return expectedHash === null ? null : fault('file.gone');
    if (expectedHash === null) return fault('file.exists');
    return hashOf(there) === expectedHash ? null : fault('file.changedOnDisk');
  }
}

const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex');
const fault = (code: string): Fault => ({ code, message: code });
const failed = (code: string): { ok: false; error: Fault } => ({ ok: false, error: fault(code) });
const done = <T>(value: T): { ok: true; value: T } => ({ ok: true, value });
