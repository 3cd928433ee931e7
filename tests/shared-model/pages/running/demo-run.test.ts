/** The demo's duo as it runs: bars of a repeat, a change of instrument, and a turn with little to spare. */

import { describe, expect, it } from 'vitest';
import { asId } from '#model/document/ids.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { barAt } from '#model/pages/running/bar-at.ts';
import { momentAt } from '#model/pages/running/moment.ts';
import { runOf } from '#model/pages/running/run.ts';
import { warningsOf } from '#model/pages/running/warnings.ts';
import { demoConcert } from '../../checks/remedies/demo.ts';

const document = demoConcert();
const setup = asId<'setup'>('setup-1');
const asked = instanceOf(document, setup);
if (!asked.ok) throw new Error(asked.missing.join(' '));
const result = planNow(asked.instance);
if (result.status !== 'planned') throw new Error(result.status);
const run = runOf(asked.instance, result.plan, { document, setup });

/** From the tempos: 29 bars of 4 quarters at 76, then 3 quarters at 92, the first 16 bars of them twice. */
const [SLOW, QUICK] = [(4 * 60) / 76, (3 * 60) / 92];
const bar30 = 29 * SLOW;

describe('the demo’s duo', () => {
  it('names the bars, and counts how often they were played', () => {
    expect(barAt(run, 0)).toBe('bar 1');
    expect(barAt(run, bar30 + 0.1)).toBe('bar 30, first time');
    expect(barAt(run, bar30 + 16 * QUICK + 0.1)).toBe('bar 30, second time');
    expect(barAt(run, bar30 + 32 * QUICK + 0.1)).toBe('bar 46');
    expect(barAt(run, run.seconds)).toBe('');
    expect(run.bars).toHaveLength(84 + 16);
  });

  it('shows the pages before each player in each stretch', () => {
    const pagesAt = (time: number) => momentAt(run, time).players.map(({ page }) => page);
    expect(pagesAt(5)).toEqual([1, 1]);
    // Bar 13 is on the clarinet's first page and on the viola's second.
    expect(pagesAt(12 * SLOW + 1)).toEqual([1, 2]);
    expect(pagesAt(bar30 + 15 * QUICK + 0.1)).toEqual([3, 4]);
    expect(pagesAt(bar30 + 16 * QUICK + 0.1)).toEqual([3, 3]);
    const [station] = momentAt(run, run.seconds - 5).stations;
    expect(station?.sides.map(({ view }) => view)).toEqual([
      [5, 6],
      [5, null],
    ]);
  });

  it('has the clarinettist change instruments in her rests, one bar 46 to 51, the other 72 to 75', () => {
    const from46 = bar30 + 32 * QUICK;
    expect(run.swaps).toMatchObject([
      { player: 'player-1', name: 'Bass clarinet', bar: '52' },
      { player: 'player-1', name: 'Clarinet in B flat', bar: '76' },
    ]);
    expect(run.swaps[0]?.at).toBeCloseTo(from46, 6);
    expect(run.swaps[0]?.window.to).toBeCloseTo(from46 + 6 * QUICK, 6);
    expect(momentAt(run, from46 + 1).swaps).toEqual([run.swaps[0]]);
  });

  it('warns of the second turn alone', () => {
    expect(warningsOf(run)).toMatchObject([{ code: 'thin-turn', turn: { bar: '58', player: 'player-1' } }]);
  });
});
