import type { Entries } from '../catalogue.ts';

export const fileFormat: Entries = {};
