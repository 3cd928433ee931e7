/** The user's settings. */

import { join } from 'node:path';
import * as v from 'valibot';
import { SETTINGS_SCHEMA } from '#contract/argument-schemas.ts';
import type { Settings } from '#contract/contract.ts';
import type { Fs } from './fs.ts';
import { readOwnFile, writeOwnFile } from './own-file.ts';

export const DEFAULT_SETTINGS: Settings = {
  language: 'system',
  theme: 'system',
  units: 'document',
  paper: null,
  singleKeys: true,
};

/** Settings of older versions do not say all that there is to set. */
const KEPT_SCHEMA = v.object({
  ...SETTINGS_SCHEMA.entries,
  language: v.optional(SETTINGS_SCHEMA.entries.language, DEFAULT_SETTINGS.language),
  singleKeys: v.optional(v.boolean(), DEFAULT_SETTINGS.singleKeys),
});

export async function readSettings(fs: Fs, state: string): Promise<Settings> {
  return (await readOwnFile(fs, settingsPath(state), KEPT_SCHEMA)) ?? DEFAULT_SETTINGS;
}

export async function writeSettings(fs: Fs, state: string, settings: Settings): Promise<void> {
  await writeOwnFile(fs, settingsPath(state), settings);
}

function settingsPath(state: string): string {
  return join(state, 'settings.json');
}
