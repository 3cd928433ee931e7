/** The figures that one run of the search counts, gravest first, as one number. */

export interface Counted {
  readonly turns: number;
  readonly panels: number;
  readonly jumps: number;
}

/** Where reading goes on. */
export interface Glance {
  /** Place in the reader's row, from 0 at his left. */
  readonly place: number;
  /** Pages side by side on the desk there. */
  readonly across: number;
  /** It is the page that he read last. */
  readonly isSamePage: boolean;
}

/**
 * Reading goes on at the next place to the right, with the same page, or from the left end of the row as at a new line; a
 * desk of one page shows every page at the same place. Anywhere else the eye has to jump. (Common practice, no source.)
 */
export function isJump(from: number, { place, across, isSamePage }: Glance): boolean {
  if (place === from + 1 || place === 0) return false;
  return place !== from || !(isSamePage || across === 1);
}

export const TURN = 1e9;
export const PANEL = 1e4;
export const JUMP = 1;

export function countedOf(cost: number): Counted {
  const turns = Math.floor(cost / TURN);
  const panels = Math.floor((cost - turns * TURN) / PANEL);
  return { turns, panels, jumps: cost - turns * TURN - panels * PANEL };
}

export function numberOf({ turns, panels, jumps }: Counted): number {
  return turns * TURN + panels * PANEL + jumps * JUMP;
}
