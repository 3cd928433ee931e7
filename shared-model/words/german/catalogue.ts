/** Names of all that the catalogue has. */

import type { Entries } from '../catalogue.ts';
import { furniture } from './catalogue/furniture.ts';
import { houses } from './catalogue/houses.ts';
import { instruments } from './catalogue/instruments.ts';

export const catalogue: Entries = { ...instruments, ...furniture, ...houses };
