/**
 * Unsaved work, kept on the side. An entry stays until the window drops it (after a successful save) or the user
 * discards it; nothing here is deleted for any other reason. What a running program keeps is its own and is not
 * offered to another one.
 */

import { createHash, randomBytes } from 'node:crypto';
import { join } from 'node:path';
import * as v from 'valibot';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import type { Fs } from './fs.ts';
import { readOwnFile, writeOwnFile } from './own-file.ts';
import { isRunning, ownerOf, OWNER_SCHEMA, type Owner } from './running.ts';
import { backupName } from './temporary-names.ts';

const ENTRY_SCHEMA = v.object({
  name: v.string(),
  /** The file it belongs to; null: never saved. */
  path: v.nullable(v.string()),
  /** SHA-256 of the file that the work began from; null: not known, as in entries of older versions. */
  hash: v.optional(v.nullable(v.string()), null),
  savedAt: v.string(),
  /** Counts up with every autosave, because clocks can go backwards. */
  count: v.number(),
  owner: OWNER_SCHEMA,
  text: v.string(),
});

export type RecoveryEntry = v.InferOutput<typeof ENTRY_SCHEMA>;

export interface KeptWork {
  readonly name: string;
  readonly path: string | null;
  readonly hash: string | null;
  readonly text: string;
}

export interface Recovery {
  /** `instead`: the id of an entry that this work was opened from; it goes once the work is safe under its own. */
  keep(key: string, work: KeptWork, instead?: string | null): Promise<void>;
  drop(key: string): Promise<void>;
  /** What may be offered, newest first. */
  list(): Promise<{ readonly id: string; readonly entry: RecoveryEntry }[]>;
  read(id: string): Promise<RecoveryEntry>;
  discard(id: string): Promise<void>;
  /** The windows of this program have died: what they kept may be offered from now on. */
  disown(): void;
}

interface Surroundings {
  readonly fs: Fs;
  readonly state: string;
  readonly now: () => Date;
  readonly owner?: Owner;
}

export function createRecovery({ fs, state, now, owner = ownerOf(process.pid) }: Surroundings): Recovery {
  const folder = join(state, 'recovery');
  const session = randomBytes(16).toString('hex');
  /** Ids kept by windows that are open now. */
  const live = new Set<string>();
  let count = 0;

  const fileOf = (id: string) => join(folder, `${id}.json`);
  const idOf = (key: string) => createHash('sha256').update(`${session}:${key}`).digest('hex').slice(0, 32);

  /** The entry, or the one before it when the last autosave was cut short or spoilt. */
  const readEntry = async (id: string) =>
    (await readOwnFile(fs, fileOf(id), ENTRY_SCHEMA)) ??
    (await readOwnFile(fs, join(folder, backupName(`${id}.json`)), ENTRY_SCHEMA));

  const remove = async (id: string) => {
    live.delete(id);
    for (const path of [fileOf(id), join(folder, backupName(`${id}.json`))]) {
      await fs.unlink(path).catch(() => undefined);
    }
  };

  const isOffered = (id: string, entry: RecoveryEntry) => {
    const mine = entry.owner.pid === owner.pid && entry.owner.started === owner.started;
    return mine ? !live.has(id) : !isRunning(entry.owner);
  };

  return {
    async keep(key, work, instead = null) {
      const id = idOf(key);
      live.add(id);
      count += 1;
      await writeOwnFile(
        fs,
        fileOf(id),
        { ...work, savedAt: now().toISOString(), count, owner },
        { backup: true },
      );
      if (instead !== null && instead !== id) await remove(instead);
    },
    drop: (key) => remove(idOf(key)),
    async list() {
      const names = await fs.readdir(folder).catch((): string[] => []);
      const offered: { id: string; entry: RecoveryEntry }[] = [];
      for (const id of idsIn(names)) {
        const entry = await readEntry(id);
        if (entry && isOffered(id, entry)) offered.push({ id, entry });
      }
      return offered.sort((a, b) => (a.entry.savedAt < b.entry.savedAt ? 1 : -1));
    },
    async read(id) {
      const entry = await readEntry(id);
      if (!entry)
        throw new FaultError('recovery.gone', t`That unsaved work is no longer there, or it is damaged.`);
      return entry;
    },
    discard: remove,
    disown: () => live.clear(),
  };
}

function idsIn(names: readonly string[]): Set<string> {
  const ids = names.map((name) => /^([0-9a-f]{32})\.json(?:\.bak)?$/.exec(name)?.[1]);
  return new Set(ids.filter((id) => id !== undefined));
}
