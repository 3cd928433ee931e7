import type { Entries } from '../catalogue.ts';

export const arrange: Entries = {};
