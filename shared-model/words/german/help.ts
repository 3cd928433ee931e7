/** The pages of help about the checks. */

import type { Entries } from '../catalogue.ts';
import { cited } from './help/cited.ts';
import { playing } from './help/playing.ts';
import { seeing } from './help/seeing.ts';
import { standing } from './help/standing.ts';

export const help: Entries = { ...cited, ...playing, ...seeing, ...standing };
