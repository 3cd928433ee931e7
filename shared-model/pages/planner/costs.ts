/** The figures that one run of the search counts, gravest first, as one number. */

export interface Counted {
  readonly turns: number;
  readonly panels: number;
  readonly jumps: number;
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
