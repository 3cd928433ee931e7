/** What is tried where the least change of one kind does not help: desks laid flatter, and two changes at once. */

import { standModel, USUAL_STAND } from '../../catalogue/stands.ts';
import { concertOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { INCH } from '../../document/measures.ts';
import { isPlaced, type PlacedRecord, type Stand } from '../../document/records.ts';
import type { Remedy, SingleChange } from '../finding.ts';
import type { Search, Task } from './attempt.ts';
import { itemsOf } from './harm.ts';
import { standsReadBy, withOwnStands } from './own-stands.ts';
import { roomBelow, STRAIGHT, type Together } from './ways.ts';
import { weightOf } from './weights.ts';

/** So many things are changed, and of all single changes so many that bring most are put together, each with each. */
const MOST_THINGS = 4;
const MOST_SINGLES = 10;

/** The one change or the pair that asks for least, or null: none of those tried clears the finding without harm. */
export function oneOrTwo(task: Task, { attempt, things }: Search): Remedy | null {
  const lacking = attempt.lack(null);
  if (lacking === null || things.length === 0) return null;
  const promising = singlesOf(task, things)
    .map((single) => ({ ...single, left: attempt.lack(single.change) ?? lacking }))
    .filter(({ left }) => left < lacking)
    .sort((a, b) => a.left - b.left || a.effort - b.effort)
    .slice(0, MOST_SINGLES);
  const pairs = promising.flatMap((first, index) =>
    promising.slice(index + 1).flatMap((second) => (areApart(first, second) ? [inOrder(first, second)] : [])),
  );
  pairs.sort((a, b) => a.effort - b.effort);
  for (const { change } of [...promising.filter(({ left }) => left === 0), ...pairs]) {
    const after = attempt(change);
    if (after !== null) return { ...change, after };
  }
  return null;
}

interface Single {
  readonly change: SingleChange;
  /** What it asks of people, to compare: a desk that is set otherwise asks least. */
  readonly effort: number;
}

/** Two of the same kind to the same thing are one change. */
function areApart({ change: a }: Single, { change: b }: Single): boolean {
  return a.kind !== b.kind || itemsOf(a)[0] !== itemsOf(b)[0];
}

function inOrder(first: Single, second: Single) {
  return {
    change: { kind: 'both', first: first.change, second: second.change } as const,
    effort: first.effort + second.effort,
  };
}

/** In round amounts only. */
function singlesOf({ document, setup }: Task, things: readonly string[]): Single[] {
  const readers = things.flatMap((id) => standsReadBy(document, setup, id).map((stand) => stand.id));
  const all = [...new Set<string>([...things, ...readers])].slice(0, MOST_THINGS);
  return all.flatMap((id) => {
    const record = document.records.get(id);
    if (!record || !isPlaced(record) || weightOf(document, record) === null) return [];
    if (record.kind === 'stand')
      return [...deskChanges(document, record), ...moves([record.id], document, 2)];
    if (record.kind === 'player') return personChanges(document, setup, record);
    return moves([record.id], document, 3);
  });
}

const STEPS_DOWN = [50, 100, 200];
const FLATTER = [15, 35];
const TURNS = [-45, -30, -15, 15, 30, 45];

function deskChanges(document: Document, stand: Stand): Single[] {
  const { tilt } = standModel(stand.model) ?? USUAL_STAND;
  const down = STEPS_DOWN.map((by) => inUnits(document, by)).filter((by) => by <= roomBelow(stand));
  const flatter = FLATTER.filter((by) => stand.tilt - by >= tilt.least);
  return [
    ...down.map((by, effort) => ({ change: { kind: 'lower', item: stand.id, by } as const, effort })),
    ...flatter.map((by, effort) => ({ change: { kind: 'flatten', item: stand.id, by } as const, effort })),
    ...TURNS.map((by) => ({
      change: { kind: 'turn', item: stand.id, by } as const,
      effort: 1 + Math.abs(by) / 30,
    })),
  ];
}

function personChanges(document: Document, setup: Id<'setup'>, player: PlacedRecord): Single[] {
  const together = withOwnStands(document, setup, player.id);
  if (!together) return moves([player.id], document, 3);
  const turns = TURNS.map((by): Single => {
    const [item, ...others] = together;
    const change: SingleChange =
      others.length > 0 ? { kind: 'turnTogether', items: together, by } : { kind: 'turn', item, by };
    return { change, effort: 2 + Math.abs(by) / 30 };
  });
  return [...turns, ...moves(together, document, 3)];
}

const FAR = [150, 300, 500];

function moves(items: Together, document: Document, effort: number): Single[] {
  return FAR.flatMap((far, farther) =>
    STRAIGHT.map(({ x, y }) => {
      const by = inUnits(document, far);
      const [dx, dy] = [Math.round(x) * by + 0, Math.round(y) * by + 0];
      const change: SingleChange =
        items.length > 1 ? { kind: 'moveTogether', items, dx, dy } : { kind: 'move', item: items[0], dx, dy };
      return { change, effort: effort + farther };
    }),
  );
}

/** As many whole steps of 2 inches as there are of 50 mm. */
function inUnits(document: Document, length: number): number {
  return concertOf(document).units === 'metric' ? length : (length / 50) * 2 * INCH;
}
