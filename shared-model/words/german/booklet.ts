import type { Entries } from '../catalogue.ts';

export const booklet: Entries = {};
