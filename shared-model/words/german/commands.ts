import type { Entries } from '../catalogue.ts';

export const commands: Entries = {};
