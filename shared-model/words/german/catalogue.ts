import type { Entries } from '../catalogue.ts';

export const catalogue: Entries = {};
