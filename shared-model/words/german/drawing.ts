import type { Entries } from '../catalogue.ts';

export const drawing: Entries = {};
