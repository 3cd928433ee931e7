/** Numbers with the words they count. */

/** "1 place", "2 places". */
export const counted = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

export const points = (count: number): string => counted(Math.abs(count), 'point', 'points');

export const places = (count: number): string => counted(count, 'place', 'places');

/** With a space that does not break. */
export const percent = (share: number): string => `${Math.round(share * 100)}\u00a0%`;
