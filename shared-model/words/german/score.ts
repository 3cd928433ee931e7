import type { Entries } from '../catalogue.ts';

export const score: Entries = {};
