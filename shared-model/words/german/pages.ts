import type { Entries } from '../catalogue.ts';

export const pages: Entries = {};
