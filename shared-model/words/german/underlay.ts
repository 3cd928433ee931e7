import type { Entries } from '../catalogue.ts';

export const underlay: Entries = {};
