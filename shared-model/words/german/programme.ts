import type { Entries } from '../catalogue.ts';

export const programme: Entries = {};
