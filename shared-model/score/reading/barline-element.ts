/** `<barline>`: repeats, endings, and the signs that stand on a bar line. */

import { children, mark, type Attributes, type Element } from '../xml/element.ts';
import type { Context } from './context.ts';
import { endingNumbers, repeatTimesOf } from './values.ts';

type Location = 'left' | 'right' | 'middle';

export function barlineElement(context: Context): Element {
  let location: Location = 'right';
  return {
    open: (attributes) => {
      location = locationOf(attributes['location'], context);
      for (const kind of ['segno', 'coda'] as const)
        if (attributes[kind] !== undefined) sign(context, location, kind, attributes[kind]);
    },
    children: children({
      repeat: mark((attributes) => repeat(context, location, attributes)),
      ending: mark((attributes) => ending(context, location, attributes)),
      segno: mark(() => sign(context, location, 'segno', '')),
      coda: mark(() => sign(context, location, 'coda', '')),
      fermata: mark(() => context.marks.freeBars.add(context.part.bar)),
    }),
  };
}

/** Left out, it means right; files that leave it out at the very beginning of a bar mean left. */
function locationOf(given: string | undefined, { part }: Context): Location {
  if (given === 'left' || given === 'middle' || given === 'right') return given;
  return part.at.n === 0 ? 'left' : 'right';
}

/** A repeat begins with a bar and ends with one: at the wrong end of a bar it belongs to the neighbour. */
function repeat({ part, marks, where }: Context, location: Location, attributes: Attributes): void {
  const inside = location === 'middle';
  if (attributes['direction'] === 'forward')
    marks.forward.push({ bar: part.bar + (location === 'right' ? 1 : 0), inside });
  if (attributes['direction'] !== 'backward') return;
  const times = repeatTimesOf(attributes['times'], where);
  const afterJump = attributes['after-jump'] === 'yes';
  const bar = part.bar - (location === 'left' ? 1 : 0);
  if (bar >= 0) marks.backward.push({ bar, inside, times, afterJump });
}

function ending({ part, marks, where }: Context, location: Location, { type, number }: Attributes): void {
  if (type !== 'start' && type !== 'stop' && type !== 'discontinue') return;
  const before = location === 'left' && type !== 'start' ? 1 : 0;
  if (part.bar < before) return;
  marks.endings.push({ bar: part.bar - before, type, numbers: endingNumbers(number, where) });
}

/** A coda sign on a right bar line may mean either end of the jump, so only words and `<sound>` decide then. */
function sign({ part, marks }: Context, location: Location, kind: 'segno' | 'coda', name: string): void {
  if (location === 'right' && kind === 'coda') return;
  const bar = part.bar + (location === 'right' ? 1 : 0);
  marks.jumps.push({ kind, bar, name: name.trim().slice(0, 100), source: 'symbol' });
}
