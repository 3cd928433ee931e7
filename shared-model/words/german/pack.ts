import type { Entries } from '../catalogue.ts';

export const pack: Entries = {};
