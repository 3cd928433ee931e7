import type { Entries } from '../catalogue.ts';

export const findings: Entries = {};
