/** What a pack can be written as. By itself, for the command line reads it before anything else is loaded. */

export const PACK_FORMATS = ['pdf', 'svg', 'png', 'dxf', 'csv'] as const;
export type PackFormat = (typeof PACK_FORMATS)[number];
