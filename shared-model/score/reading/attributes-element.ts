/** `<attributes>`: divisions, time signature, transposition. */

import { fraction, plus, ZERO, type Fraction } from '../fraction.ts';
import { children, mark, textOf, type Element } from '../xml/element.ts';
import type { Context } from './context.ts';
import { divisionsOf } from './values.ts';

export function attributesElement(context: Context): Element {
  return {
    children: children({
      divisions: textOf((text) => (context.part.divisions = divisionsOf(text, context.where))),
      time: timeElement((nominal) => (context.part.nominal = nominal)),
      transpose: transposeElement(context),
    }),
  };
}

/** `take` gets the length of a bar in quarters, or null for music without measure. Composite signatures are summed. */
function timeElement(take: (nominal: Fraction | null) => void): Element {
  let nominal = ZERO;
  let beats = 0;
  let free = false;
  return {
    open: () => {
      [nominal, beats, free] = [ZERO, 0, false];
    },
    close: () => {
      if (free) take(null);
      else if (nominal.n > 0) take(nominal);
    },
    children: children({
      beats: textOf((text) => (beats = beatsOf(text))),
      'beat-type': textOf((text) => {
        const type = Number(text);
        if (beats > 0 && Number.isInteger(type) && type > 0 && type <= 1024)
          nominal = plus(nominal, fraction(4 * beats, type));
      }),
      'senza-misura': mark(() => (free = true)),
    }),
  };
}

/** "6", or "3+2+3"; 0 for what cannot be read: it only matters in a bar that holds nothing. */
function beatsOf(text: string): number {
  const beats = text.slice(0, 60).split('+').map(Number);
  return beats.every((beat) => Number.isInteger(beat) && beat > 0 && beat <= 1000)
    ? beats.reduce((sum, beat) => sum + beat, 0)
    : 0;
}

function transposeElement(context: Context): Element {
  let [chromatic, diatonic, octaves] = [0, 0, 0];
  return {
    open: () => {
      [chromatic, diatonic, octaves] = [0, 0, 0];
    },
    close: () => {
      const { part } = context;
      part.transpositions.push({ bar: part.bar, chromatic, diatonic, octaves });
    },
    children: children({
      chromatic: textOf((text) => (chromatic = wholeNumber(text))),
      diatonic: textOf((text) => (diatonic = wholeNumber(text))),
      'octave-change': textOf((text) => (octaves = wholeNumber(text))),
    }),
  };
}

function wholeNumber(text: string): number {
  const number = Number(text);
  return Number.isInteger(number) && Math.abs(number) < 1000 ? number : 0;
}
