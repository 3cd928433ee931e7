/** The bar that proves the scale of a print: laid under a ruler it must measure what it says. */

import type { Units } from '../../document/measures.ts';
import { atMost } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import { line, rectangle } from '../outline.ts';
import type { Palette } from '../palette.ts';
import type { GroupPrimitive, Primitive } from '../primitives.ts';
import { scaleDesignation } from '../scales.ts';
import { ASCENT, TEXT, WEIGHT } from '../style.ts';
import { textLine } from '../text.ts';

export interface ScaleBarRequest {
  readonly scale: number;
  readonly units: Units;
  readonly palette: Palette;
  /** Top left corner on the page, and the room there is, mm. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

const BAR_HEIGHT = 2.2;
const LEAST_UNIT = 8;
const MOST_UNITS = 10;
const LONGEST = 110;
/** For the last figure, which is centred on the bar's end. */
const OVERHANG = 8;

export const SCALE_BAR_HEIGHT = 2 * TEXT.small + BAR_HEIGHT + TEXT.strong + 6;

/** Scale, bar, figures and what a ruler must show. */
export function scaleBar(request: ScaleBarRequest): GroupPrimitive {
  const { scale, units, palette, x, y } = request;
  const { unit, count, figure } = barUnits(request);
  const step = unit / scale;
  const top = y + TEXT.strong + TEXT.small + 3.4;
  const words = ruleWords(units, { unit, count, scale });
  const title = textLine(
    scaleDesignation(scale),
    { x, y: y + TEXT.strong * ASCENT },
    { size: TEXT.strong, weight: 'bold', colour: palette.ink },
  );
  const note = textLine(
    words,
    { x, y: top + BAR_HEIGHT + 1.5 + TEXT.small },
    { size: TEXT.small, weight: 'regular', colour: palette.ink },
  );
  const left = x + START;
  return {
    kind: 'group',
    description: t`Scale bar, ${scaleDesignation(scale)}. ${words}`,
    children: [
      title,
      ...blocks({ left, top, step, count, palette }),
      ...Array.from({ length: count + 1 }, (_, index) =>
        textLine(
          figure(index),
          { x: left + index * step, y: top - 1 },
          { size: TEXT.small, weight: 'regular', colour: palette.ink, anchor: 'middle' },
        ),
      ),
      note,
    ],
  };
}

/** The first figure is centred on the bar's start. */
const START = 1;

interface Blocks {
  readonly left: number;
  readonly top: number;
  readonly step: number;
  readonly count: number;
  readonly palette: Palette;
}

/** One rectangle a unit, filled in turn, so that each can be measured by itself; the first with a finer rule. */
function blocks({ left, top, step, count, palette }: Blocks): Primitive[] {
  const drawn = Array.from({ length: count }, (_, index): Primitive => {
    const path = rectangle({ x: left + index * step, y: top, width: step, height: BAR_HEIGHT });
    const fill = index % 2 === 0 ? palette.ink : palette.paper;
    return { kind: 'path', path, fill, stroke: { colour: palette.ink, width: WEIGHT.thin } };
  });
  // A tenth of a metre can be told from the next only on a large drawing.
  const parts = step >= 20 ? 10 : 1;
  const ticks = Array.from({ length: parts - 1 }, (_, index) => {
    const x = left + (step * (index + 1)) / parts;
    return line({ x, y: top + BAR_HEIGHT }, { x, y: top + BAR_HEIGHT + 0.8 });
  }).flat();
  return [...drawn, { kind: 'path', path: ticks, stroke: { colour: palette.ink, width: WEIGHT.thin } }];
}

const FOOT = 304.8;
const MULTIPLES = [1, 2, 5, 10, 20, 50];

interface BarUnits {
  /** On the stage, mm. */
  readonly unit: number;
  readonly count: number;
  readonly figure: (index: number) => string;
}

function barUnits({ scale, units, width }: ScaleBarRequest): BarUnits {
  const base = units === 'metric' ? 1000 : FOOT;
  const multiple = MULTIPLES.find((candidate) => (candidate * base) / scale >= LEAST_UNIT) ?? 50;
  const unit = multiple * base;
  const room = Math.min(width, LONGEST) - OVERHANG;
  const count = Math.max(1, Math.min(MOST_UNITS, Math.floor(room / (unit / scale))));
  const name = units === 'metric' ? ' m' : ' ft';
  return { unit, count, figure: (index) => `${index * multiple}${index === count ? name : ''}` };
}

interface Rule {
  readonly unit: number;
  readonly count: number;
  readonly scale: number;
}

function ruleWords(units: Units, { unit, count, scale }: Rule): string {
  const whole = (unit * count) / scale;
  if (units === 'metric') return t`The whole bar must measure ${atMost(whole, 1)} mm.`;
  return t`The whole bar must measure ${atMost(whole / 25.4, 2)} in.`;
}
