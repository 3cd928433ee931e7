/** Amounts that a person can set: nobody turns a stand by 1 degree, or moves a chair by 130 mm. */

import { concertOf, type Document } from '../../document/document.ts';
import { INCH } from '../../document/measures.ts';
import type { ItemChange, Remedy, RemedyChange } from '../finding.ts';
import type { Attempt } from './attempt.ts';
import { roomBelow } from './ways.ts';

/** Degrees that are set by eye. A figure of the tool's own. */
export const ROUND_TURN = 5;
/** Lengths that are set by eye and tape. A figure of the tool's own. */
export const ROUND_LENGTH = { metric: 50, imperial: 2 * INCH } as const;

/** The change with round amounts, at most a step and a half more, where that clears the finding as well; else as it was. */
export function settable(document: Document, remedy: Remedy, attempt: Attempt): Remedy {
  for (const change of rounder(document, remedy)) {
    const after = attempt(change);
    if (after !== null) return { ...change, after };
  }
  return remedy;
}

function rounder(document: Document, { after: _after, ...change }: Remedy): RemedyChange[] {
  const step = ROUND_LENGTH[concertOf(document).units];
  switch (change.kind) {
    case 'turn':
    case 'turnTogether':
      return [0, ROUND_TURN].map((more) => ({ ...change, by: outwards(change.by, ROUND_TURN, more) }));
    case 'lower':
      return [deskDown(document, change, step)].flatMap((item) => (item ? [{ ...change, ...item }] : []));
    case 'lowerAll': {
      const items = change.items.map((item) => deskDown(document, item, step) ?? item);
      return [{ ...change, items }];
    }
    case 'move':
    case 'moveTogether':
      return [0, step].map((more) => ({
        ...change,
        dx: outwards(change.dx, step, Math.abs(change.dx) >= Math.abs(change.dy) ? more : 0),
        dy: outwards(change.dy, step, Math.abs(change.dy) > Math.abs(change.dx) ? more : 0),
      }));
    default:
      return [];
  }
}

/** Away from 0 to the next whole step, and so much more. */
function outwards(amount: number, step: number, more: number): number {
  if (amount === 0) return 0;
  return Math.sign(amount) * (Math.ceil(Math.abs(amount) / step - 1e-9) * step + more);
}

/** Null: the desk does not go down so far. */
function deskDown(document: Document, { item, by }: ItemChange, step: number): ItemChange | null {
  const stand = document.records.get(item);
  const down = outwards(by, step, 0);
  return stand?.kind === 'stand' && down <= roomBelow(stand) ? { item, by: down } : null;
}
