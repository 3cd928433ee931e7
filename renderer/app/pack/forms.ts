/** The forms that a pack can be saved in. */

import type { PackOrder } from '#contract/contract.ts';

type Format = PackOrder['formats'][number];

export const FORMATS: readonly Format[] = ['pdf', 'svg', 'png', 'dxf', 'csv'];

/** Dots per inch: for a screen, for a message, for print, for fine print. */
export const RESOLUTIONS: readonly number[] = [96, 150, 300, 400];
export const USUAL_RESOLUTION = 150;

/** Always in the order of `FORMATS`. */
export function withFormat(formats: readonly Format[], format: Format, wanted: boolean): readonly Format[] {
  return FORMATS.filter((each) => (each === format ? wanted : formats.includes(each)));
}

/** Whether it is one PDF, the very one that is looked at. */
export function isPdfAlone(formats: readonly Format[]): boolean {
  return formats.length === 1 && formats[0] === 'pdf';
}

/** Plans and tables are of every setup, whatever sheets are chosen. */
export function needsSheets(formats: readonly Format[]): boolean {
  return formats.some((format) => format !== 'dxf' && format !== 'csv');
}
