/** The user's settings. */

import { join } from 'node:path';
import { SETTINGS_SCHEMA } from '#contract/argument-schemas.ts';
import type { Settings } from '#contract/contract.ts';
import type { Fs } from './fs.ts';
import { readOwnFile, writeOwnFile } from './own-file.ts';

export const DEFAULT_SETTINGS: Settings = {
  theme: 'system',
  units: 'document',
  paper: null,
  singleKeys: true,
};

export async function readSettings(fs: Fs, state: string): Promise<Settings> {
  return (await readOwnFile(fs, settingsPath(state), SETTINGS_SCHEMA)) ?? DEFAULT_SETTINGS;
}

export async function writeSettings(fs: Fs, state: string, settings: Settings): Promise<void> {
  await writeOwnFile(fs, settingsPath(state), settings);
}

function settingsPath(state: string): string {
  return join(state, 'settings.json');
}
