import { describe, expect, it } from 'vitest';
import type { AnyRecord } from '#model/document/records.ts';
import { changeoverNotes } from '#model/programme/changeover-words.ts';
import { changeover } from '#model/programme/changeover.ts';
import { stepNotes } from '#model/programme/step-words.ts';
import { aPiano, aRiser, aStand, SETUP } from '../../helpers/build.ts';
import { SECOND, twoSetups } from './programme-scenes.ts';

/* A piano goes on its wheels, a riser is carried by two. Common practice, no source. */

const upright = { model: 'upright', x: 0, y: 1500, setup: SECOND };
const listOf = (...records: AnyRecord[]) => {
  const document = twoSetups(...records);
  const change = changeover(document, SETUP, SECOND);
  const notes = change.steps.map((step) =>
    stepNotes({ document, from: SETUP, to: SECOND, units: 'metric' }, step).join(),
  );
  return { ...change, notes, mind: changeoverNotes(change).join() };
};

describe('what is rolled', () => {
  it('is told to go over a level that reaches from wall to wall', () => {
    const { steps, notes, mind } = listOf(
      aRiser({ setup: null, x: 0, y: 3500, width: 8000, depth: 1000, height: 180 }),
      aPiano(upright),
    );
    expect(steps).toMatchObject([{ work: 'set', step: 180 }]);
    expect(notes).toEqual([expect.stringMatching(/over a step of 180 mm/)]);
    expect(mind).toMatch(/1 thing that two carry or roll goes over a step/);
  });

  it('is told to come up onto a level that it stands on, and down from one before the door', () => {
    const under = aRiser({ setup: null, x: 0, y: 1500, width: 3000, depth: 1500, height: 200 });
    expect(listOf(under, aPiano(upright)).steps).toMatchObject([{ step: 200 }]);
    const before = aRiser({ setup: null, x: 0, y: 4500, width: 8000, depth: 1000, height: 150 });
    expect(listOf(before, aPiano(upright)).steps).toMatchObject([{ step: 150 }]);
    expect(listOf(before, aPiano({ ...upright, y: 4400, facing: 0 })).steps).toMatchObject([{ step: 150 }]);
  });

  it('goes round a level where that can be done, though what one person carries goes straight over it', () => {
    const level = aRiser({ setup: null, x: -500, y: 3300, width: 3000, depth: 1000, height: 200 });
    const piano = listOf(level, aPiano({ ...upright, x: -500 }));
    expect(piano.steps).toMatchObject([{ step: 0, way: { ease: 'clear' } }]);
    expect(piano.notes.join()).not.toMatch(/step/);
    // The straight line to the middle of the opening goes over the level: 500 across, 3500 up.
    expect(piano.steps[0]?.way.length).toBeGreaterThan(3700);
    const stand = listOf(level, aStand({ id: 'stand-1', setup: SECOND, x: -500, y: 1500 }));
    expect(stand.steps[0]?.way.length).toBeCloseTo(Math.hypot(500, 3500), 6);
    expect(stand.steps).toMatchObject([{ step: 0 }]);
  });

  const ring = (setup: typeof SETUP): AnyRecord[] => [
    aRiser({ id: `${setup}-riser-1`, setup, x: 0, y: 3500, width: 3600, depth: 800 }),
    aRiser({ id: `${setup}-riser-2`, setup, x: 0, y: 400, width: 3600, depth: 800 }),
    aRiser({ id: `${setup}-riser-3`, setup, x: -1400, y: 1950, width: 800, depth: 2300 }),
    aRiser({ id: `${setup}-riser-4`, setup, x: 1400, y: 1950, width: 800, depth: 2300 }),
  ];

  it('is set before the levels that would shut it in', () => {
    const { steps } = listOf(...ring(SECOND), aPiano({ ...upright, y: 1950 }));
    const order = steps.map(({ to }) => to?.id);
    expect(steps.find(({ to }) => to?.thing.item === 'piano')?.step).toBe(0);
    expect(order.indexOf('piano-1')).toBeLessThan(order.indexOf(`${SECOND}-riser-1`));
  });

  it('is struck after one of the levels that shut it in', () => {
    const { steps } = listOf(...ring(SETUP), aPiano({ ...upright, setup: SETUP, y: 1950 }));
    const piano = steps.find(({ from }) => from?.thing.item === 'piano');
    const level = steps.find(({ from }) => from?.id === `${SETUP}-riser-1`);
    expect(piano?.step).toBe(0);
    expect(piano?.begins).toBeGreaterThanOrEqual(level?.ends ?? Infinity);
  });
});

describe('what two carry', () => {
  it('is told to go over a level', () => {
    const { notes } = listOf(
      aRiser({ id: 'riser-1', setup: null, x: 0, y: 3500, width: 8000, depth: 1000, height: 200 }),
      aRiser({ id: 'riser-2', setup: SECOND, x: 0, y: 1500, height: 400 }),
    );
    expect(notes).toEqual([expect.stringMatching(/over a step of 200 mm/)]);
  });
});
