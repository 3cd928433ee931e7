/** The figures that one run of the search counts, gravest first, as one number. */

export interface Counted {
  readonly turns: number;
  readonly panels: number;
  readonly jumps: number;
}

/** Reading goes on at the same place or at the next to the right; anywhere else the eye has to jump. */
export function isJump(from: number, to: number): boolean {
  return to !== from && to !== from + 1;
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
