/** Figures of a comparison in words. */

import { formatLength, type Units } from '#model/document/measures.ts';
import type { ComparedFigure, FigureUnit } from '#model/programme/compare.ts';
import { fixed } from '#model/words/numbers.ts';
import { text } from '../text.ts';

export function figureName({ kind, player }: ComparedFigure): string {
  const words = text.programme.figures;
  return kind === 'seenWell' ? words.seenWell(player) : words[kind];
}

/** "83 %", "2:05", "-12 mm". */
export function figureValue(value: number | null, unit: FigureUnit, units: Units): string {
  if (value === null) return text.programme.unknown;
  switch (unit) {
    case 'share':
      return text.percent(value);
    case 'mm':
      return Math.abs(value) >= 10_000 ? metres(value, units) : formatLength(value, units);
    case 's':
      return Math.abs(value) >= 60 ? text.programme.clock(value) : `${fixed(value, 1)} s`;
    default:
      return String(value);
  }
}

function metres(value: number, units: Units): string {
  return units === 'metric' ? `${fixed(value / 1000, 1)} m` : formatLength(value, units);
}

/** "Hedgerow Dances, by 12 %"; that all are the same; or nothing, where there is nothing to compare. */
export function betterWords(figure: ComparedFigure, names: readonly string[], units: Units): string {
  const { best, by, unit } = figure;
  if (by === null) return text.programme.unknown;
  const leading = best.flatMap((index) => names[index] ?? []);
  const known = figure.values.filter((value) => value !== null).length;
  if (leading.length === known) return text.programme.tie;
  const words = text.programme;
  if (leading.length > 1) return text.list(leading);
  const much = unit === 'share' ? words.points(Math.round(by * 100)) : figureValue(by, unit, units);
  return words.by(text.list(leading), much);
}
