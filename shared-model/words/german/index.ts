/** All sentences of the model and the shell in German, a file for each room. */

import type { Entries } from '../catalogue.ts';
import { arrange } from './arrange.ts';
import { booklet } from './booklet.ts';
import { cards } from './cards.ts';
import { catalogue } from './catalogue.ts';
import { commands } from './commands.ts';
import { document } from './document.ts';
import { drawing } from './drawing.ts';
import { fields } from './fields.ts';
import { fileFormat } from './file-format.ts';
import { findings } from './findings.ts';
import { findingsReading } from './findings-reading.ts';
import { findingsRoom } from './findings-room.ts';
import { help } from './help.ts';
import { pack } from './pack.ts';
import { pages } from './pages.ts';
import { programme } from './programme.ts';
import { score } from './score.ts';
import { shell } from './shell.ts';

export const german: Entries = {
  ...arrange,
  ...booklet,
  ...cards,
  ...catalogue,
  ...commands,
  ...document,
  ...drawing,
  ...fields,
  ...fileFormat,
  ...findings,
  ...findingsReading,
  ...findingsRoom,
  ...help,
  ...pack,
  ...pages,
  ...programme,
  ...score,
  ...shell,
};
