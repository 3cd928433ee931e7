import type { Entries } from '../catalogue.ts';

export const findingsRoom: Entries = {};
