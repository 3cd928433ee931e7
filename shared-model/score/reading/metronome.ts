/** Metronome marks: "dotted quarter = ca. 80" in quarters a minute. Equations of two notes are only noticed. */

import { children, mark, textOf, type Element } from '../xml/element.ts';

/** Quarters in the notes that MusicXML names. Source: MusicXML 4.0, data type note-type-value. */
const QUARTERS: ReadonlyMap<string, number> = new Map([
  ['maxima', 32],
  ['long', 16],
  ['breve', 8],
  ['whole', 4],
  ['half', 2],
  ['quarter', 1],
  ['eighth', 1 / 2],
  ['16th', 1 / 4],
  ['32nd', 1 / 8],
  ['64th', 1 / 16],
  ['128th', 1 / 32],
  ['256th', 1 / 64],
  ['512th', 1 / 128],
  ['1024th', 1 / 256],
]);

/** Quarters in a note with dots; null for a name that is none. */
export function beatUnit(name: string, dots: number): number | null {
  const quarters = QUARTERS.get(name.trim());
  return quarters === undefined ? null : quarters * (2 - 0.5 ** dots);
}

export interface Metronome {
  /** Null: the mark gives none. */
  readonly quartersPerMinute: number | null;
  /** One note is set equal to another. */
  readonly modulation: boolean;
}

/** `take` gets each mark as it closes. */
export function metronomeElement(take: (metronome: Metronome) => void): Element {
  let units: { name: string; dots: number }[] = [];
  let figure: string | null = null;
  let notes = 0;
  return {
    open: () => {
      [units, figure, notes] = [[], null, 0];
    },
    close: () => take(metronomeOf(units, figure, notes > 0)),
    children: children({
      'beat-unit': textOf((name) => units.push({ name, dots: 0 })),
      'beat-unit-dot': mark(() => {
        const last = units.at(-1);
        if (last) last.dots += 1;
      }),
      'per-minute': textOf((text) => (figure = text)),
      'metronome-note': mark(() => (notes += 1)),
    }),
  };
}

function metronomeOf(
  units: readonly { readonly name: string; readonly dots: number }[],
  figure: string | null,
  ofNotes: boolean,
): Metronome {
  const [unit] = units;
  const number = Number(/\d+(?:[.,]\d+)?/.exec(figure?.slice(0, 100) ?? '')?.[0].replace(',', '.'));
  const quarters = unit ? beatUnit(unit.name, unit.dots) : null;
  const plain = figure !== null && quarters !== null && Number.isFinite(number);
  return {
    quartersPerMinute: plain ? number * quarters : null,
    modulation: ofNotes || units.length > 1,
  };
}
