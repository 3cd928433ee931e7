import type { Entries } from '../catalogue.ts';

export const cards: Entries = {};
