import type { Entries } from '../catalogue.ts';

export const findingsReading: Entries = {};
