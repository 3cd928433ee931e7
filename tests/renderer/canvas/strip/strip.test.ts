/** What the time strip draws and where it is hit, on a made-up performance. */

import { describe, expect, it } from 'vitest';
import type { Turn } from '#model/pages/planner/plan.ts';
import type { PageSpan } from '#model/pages/running/player-lane.ts';
import type { Run } from '#model/pages/running/run.ts';
import { rulerOf } from '../../../../renderer/canvas/strip/ruler-marks.ts';
import { turnNear } from '../../../../renderer/canvas/strip/strip-marks.ts';
import {
  paintLanes,
  paintPagesGoingOn,
  paintPassGoingOn,
  paintRuler,
} from '../../../../renderer/canvas/strip/strip-painting.ts';
import { STRIP } from '../../../../renderer/canvas/strip/strip-sizes.ts';
import { wholeOf } from '../../../../renderer/canvas/strip/time-window.ts';

function turn(player: string, at: number): Turn {
  return {
    station: 's',
    player,
    hand: 'left',
    at,
    seconds: 2,
    direction: 'forward',
    fromState: 0,
    toState: 1,
    liftedFrom: 0,
    bar: null,
    pass: null,
    readers: [],
    window: { from: at, to: at + 6 },
    margin: 4,
    servesPartner: false,
  };
}

/** Bars of 2 s; a page each 20 s; a rest of 5 s in each page. */
function performance(minutes: number, players: number): Run {
  const seconds = minutes * 60;
  const bars = Array.from({ length: seconds / 2 }, (_, bar) => ({
    label: String(bar < 20 ? bar + 1 : bar - 9),
    name: String(bar < 20 ? bar + 1 : bar - 9),
    pass: bar >= 20 && bar < 30 ? 2 : 1,
    passes: bar >= 10 && bar < 30 ? 2 : 1,
    from: 2 * bar,
    to: 2 * bar + 2,
  }));
  const spans = Array.from({ length: seconds / 20 }, (_, page): PageSpan => {
    const place = { station: 's', side: 0, slot: page % 2 } as const;
    return { page: page + 1, from: 20 * page, to: 20 * page + 20, place, needed: true };
  });
  const lanes = Array.from({ length: players }, (_, index) => ({
    player: `p${index}`,
    spans,
    rests: spans.map(({ from }) => ({ from: from + 10, to: from + 15 })),
    turns: [turn(`p${index}`, 30 + index)],
  }));
  return {
    seconds,
    bars,
    players: lanes,
    stations: [],
    turns: lanes.flatMap(({ turns }) => turns),
    swaps: [],
  };
}

const INKS = { ink: 'i', paper: 'p', faint: 'f', hairline: 'h', played: 'l', pencil: 'r' };

/** Everything that is asked of a canvas, counted. */
function countingPen(): { pen: CanvasRenderingContext2D; written: string[]; calls: () => number } {
  let calls = 0;
  const written: string[] = [];
  const pen = new Proxy({} as CanvasRenderingContext2D, {
    set: () => true,
    get:
      (_, name) =>
      (...given: unknown[]) => {
        calls += 1;
        if (name === 'fillText') written.push(String(given[0]));
        return { width: 7 };
      },
  });
  return { pen, written, calls: () => calls };
}

describe('the ruler', () => {
  it('writes the clock in even steps and the bars where there is room', () => {
    const { clock, bars } = rulerOf(performance(2, 1), wholeOf(120), 600);
    expect(clock.map(({ words }) => words)).toEqual([
      '0:00',
      '0:15',
      '0:30',
      '0:45',
      '1:00',
      '1:15',
      '1:30',
      '1:45',
      '2:00',
    ]);
    expect(clock[1]?.x).toBeCloseTo(75, 9);
    for (const [index, { x }] of bars.entries())
      expect(x - (bars[index - 1]?.x ?? -34)).toBeGreaterThanOrEqual(34);
  });

  it('marks what is played a second time', () => {
    const { repeats } = rulerOf(performance(2, 1), wholeOf(120), 600);
    expect(repeats).toEqual([{ from: 200, to: 300, pass: 2 }]);
  });
});

describe('the lanes', () => {
  it('write each page once, and no page that is out of view', () => {
    const { pen, written } = countingPen();
    paintLanes(pen, {
      run: performance(2, 1),
      window: { from: 30, seconds: 40 },
      width: 600,
      inks: INKS,
      chosen: null,
    });
    expect(written).toEqual(['2', '3', '4']);
  });

  it('write the page that goes on at the left edge, over what is painted, unless something begins there', () => {
    const goingOn = (from: number): string[] => {
      const { pen, written } = countingPen();
      const frame = {
        run: performance(2, 1),
        window: { from, seconds: 40 },
        width: 600,
        inks: INKS,
        chosen: null,
      };
      paintPagesGoingOn(pen, frame);
      paintPassGoingOn(pen, frame);
      return written;
    };
    expect(goingOn(0)).toEqual([]);
    expect(goingOn(25)).toEqual(['2']);
    // A turn from 30 to 36 s would be covered.
    expect(goingOn(30)).toEqual([]);
    // From 40 to 60 s bars are played a second time.
    expect(goingOn(45)).toEqual(['3', '2×']);
    expect(goingOn(59.5)).toEqual([]);
  });

  it('of an hour for twelve players take no more strokes than of some minutes when as much of them is shown', () => {
    const strokes = (minutes: number): number => {
      const { pen, calls } = countingPen();
      const frame = {
        run: performance(minutes, 12),
        window: { from: 60, seconds: 60 },
        width: 900,
        inks: INKS,
        chosen: null,
      };
      paintLanes(pen, frame);
      paintRuler(pen, frame);
      return calls();
    };
    expect(strokes(4)).toBeGreaterThan(100);
    expect(strokes(60)).toBe(strokes(4));
  });

  it('give the turn that is clicked on or near, in its own lane', () => {
    const run = performance(2, 3);
    const at = (x: number, lane: number) =>
      turnNear(run, wholeOf(120), 600, { x, y: lane * STRIP.lane + 10 });
    // The first player's turn goes from 30 to 32 s, pixels 150 to 160; the second's begins 1 s later.
    expect(at(155, 0)).toBe(run.turns[0]);
    expect(at(150 - STRIP.near, 0)).toBe(run.turns[0]);
    expect(at(150 - STRIP.near - 1, 0)).toBeNull();
    expect(at(155, 1)).toBe(run.turns[1]);
    expect(at(155, 7)).toBeNull();
  });
});
