/** A table that a spreadsheet has written, as text. */

import { basename } from 'node:path';
import { MOST_TABLE } from '#model/score/limits.ts';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import type { Fs } from './fs.ts';
import { openBytes } from './open-file.ts';

/** Throws `FaultError` for what is no text, or no table that anybody typed. */
export async function readTable(fs: Fs, path: string): Promise<string> {
  const name = basename(path);
  const bytes = await openBytes(fs, path, 'table');
  if (bytes.length > MOST_TABLE)
    throw new FaultError(
      'table.tooLarge',
      t`"${name}" is larger than any table of a part: choose another file.`,
    );
  const text = decoded(bytes);
  if (/\p{Cc}/u.test(text.replace(/[\t\r\n]/g, '')))
    throw new FaultError('table.notText', t`"${name}" is no table: save it as CSV from the spreadsheet.`);
  return text;
}

/** Spreadsheets write UTF-8, UTF-16 with its mark, or the code page of western systems. */
function decoded(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
