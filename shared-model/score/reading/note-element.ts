/** `<note>`, `<backup>` and `<forward>`: what moves the cursor. */

import { ZERO, type Fraction } from '../fraction.ts';
import { children, mark, textOf, type Element } from '../xml/element.ts';
import type { Context } from './context.ts';
import { durationOf } from './values.ts';

export function noteElement(context: Context): Element {
  let duration = ZERO;
  let [chord, grace, cue, rest, pitched] = [false, false, false, false, false];
  let instrument: string | null = null;
  return {
    open: () => {
      duration = ZERO;
      [chord, grace, cue, rest, pitched] = [false, false, false, false, false];
      instrument = null;
    },
    close: () => {
      if (instrument !== null && pitched) context.takeUp(instrument, true);
      context.part.note({ duration, chord, grace, cue, rest });
    },
    children: children({
      duration: textOf((text) => (duration = durationOf(text, context.where))),
      chord: mark(() => (chord = true)),
      grace: mark(() => (grace = true)),
      cue: mark(() => (cue = true)),
      rest: mark(() => (rest = true)),
      pitch: mark(() => (pitched = true)),
      instrument: mark(({ id }) => (instrument = id ?? null)),
      notations: {
        children: children({ fermata: mark(() => context.marks.freeBars.add(context.part.bar)) }),
      },
    }),
  };
}

/** `direction` 1: forward; -1: back. */
export function moveElement(context: Context, direction: 1 | -1): Element {
  const move = (duration: Fraction) => {
    const { n, d } = context.part.quarters(duration);
    context.part.move({ n: direction * n, d });
  };
  return { children: children({ duration: textOf((text) => move(durationOf(text, context.where))) }) };
}
