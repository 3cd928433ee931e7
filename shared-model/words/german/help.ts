import type { Entries } from '../catalogue.ts';

export const help: Entries = {};
