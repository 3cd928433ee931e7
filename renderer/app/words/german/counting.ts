/** Numbers with the words they count. */

import { counted } from '../counting.ts';

/** "1 Punkt", "2 Punkte". */
export const points = (count: number): string => counted(Math.abs(count), 'Punkt', 'Punkte');

export const places = (count: number): string => counted(count, 'Platz', 'Plätze');

/** Whatever can be selected and is not told by its kind. */
export const elements = (count: number): string => counted(count, 'Element', 'Elemente');
