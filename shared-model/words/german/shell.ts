import type { Entries } from '../catalogue.ts';

export const shell: Entries = {};
