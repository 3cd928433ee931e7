import type { Entries } from '../catalogue.ts';

export const document: Entries = {};
