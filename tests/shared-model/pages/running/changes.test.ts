/** The clarinettist of the demo changes to the bass clarinet, which waits on a stand: how far, how long, and in which rest. */

import { describe, expect, it } from 'vitest';
import { reachResults } from '#model/checks/reach/reach.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { scoreOf } from '#model/document/parts.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { instrumentSwaps, type InstrumentSwap } from '#model/pages/running/changes.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import { runOf } from '#model/pages/running/run.ts';
import { warningSentence, warningsOf } from '#model/pages/running/warnings.ts';
import { performanceOf } from '#model/score/music/performance.ts';
import { timeLineOf } from '#model/score/music/readings.ts';
import type { Interval } from '#model/score/time-line.ts';
import { demoConcert } from '../../checks/remedies/demo.ts';

const setup = asId<'setup'>('setup-1');
const demo = demoConcert();

function changed(change: (record: AnyRecord) => AnyRecord | null): Document {
  return documentOf(
    [...demo.records.values()].flatMap((record) => {
      const after = change(record);
      return after ? [after] : [];
    }),
  );
}

/** With the stand of the bass clarinet somewhere else. */
const withStandAt = (x: number, y: number): Document =>
  changed((record) =>
    record.kind === 'instrumentStand' && record.setup === setup ? { ...record, x, y } : record,
  );

function swapsIn(document: Document, busy: readonly Interval[] = []): InstrumentSwap[] {
  const music = scoreOf(document, setup)?.music;
  const [part] = music?.parts ?? [];
  if (!music || !part) throw new Error('no music');
  const performance = performanceOf(music);
  const rests = timeLineOf(music, part, performance).silences;
  return instrumentSwaps({ document, setup, player: 'player-1', performance, rests, busy });
}

/** What the time strip says of changes of instrument. */
function toldIn(document: Document): string[] {
  const asked = instanceOf(document, setup);
  if (!asked.ok) throw new Error(asked.missing.join(' '));
  const run = runOf(asked.instance, { stations: [], turns: [] }, { document, setup });
  return warningsOf(run).flatMap((warning) =>
    'swap' in warning ? [warningSentence(warning, run, (id) => id)] : [],
  );
}

describe('a change of instrument', () => {
  const [swap] = swapsIn(demo);
  if (!swap) throw new Error('no change');

  it('takes as long as the check of reach says at the most', () => {
    const [, most] =
      reachResults(demo, setup).find(({ grip }) => grip.purpose === 'pickUp')?.secondsRange ?? [];
    expect(swap.seconds).toBe(most);
    expect(swap).toMatchObject({
      walk: false,
      spots: { from: { x: -735, y: 1900 }, to: { x: -1250, y: 2350 } },
    });
  });

  it('is a walk when the stand is far away, and takes longer', () => {
    const [far] = swapsIn(withStandAt(-2800, 4200));
    expect(far).toMatchObject({ walk: true, spots: { to: { x: -2800, y: 4200 } } });
    expect(far?.seconds ?? 0).toBeGreaterThan(swap.seconds ?? Infinity);
  });

  it('waits until a leaf has been turned in the same rest', () => {
    const { from } = swap.window;
    const [later] = swapsIn(demo, [{ from, to: from + 2.5 }]);
    expect(later?.at).toBeCloseTo(from + 2.5, 9);
  });

  it('lasts nobody knows how long when nobody says where the instrument waits', () => {
    const held = changed((record) =>
      record.kind === 'instrument' && record.support !== null ? { ...record, support: null } : record,
    );
    expect(swapsIn(held)[0]).toMatchObject({ seconds: null, spots: null, walk: false });
  });

  it('is not made to another instrument that waits there by chance', () => {
    const asking = (name: string): Document =>
      changed((record) =>
        record.kind === 'score'
          ? {
              ...record,
              music: {
                ...record.music,
                parts: record.music.parts.map((part) => ({
                  ...part,
                  instruments: part.instruments.slice(0, 1).map((one) => ({ ...one, name })),
                })),
              },
            }
          : record,
      );
    // A bass clarinet waits: by that name, in another language, or by one that nobody understands.
    for (const name of ['Bass Clarinet', 'Bassklarinette', 'Bass clarinet in B flat', 'the low one'])
      expect(swapsIn(asking(name))[0]?.seconds).toBe(swap.seconds);
    const piccolo = asking('Piccolo');
    expect(swapsIn(piccolo)).toMatchObject([{ name: 'Piccolo', seconds: null, spots: null, walk: false }]);
    expect(toldIn(piccolo)).toEqual([
      expect.stringMatching(/changes to Piccolo; that is not set anywhere within reach, so nobody knows/),
    ]);
    expect(toldIn(asking('Bass Clarinet')).join()).not.toContain('not set');
  });

  it('is not asked for again by a repeat: what is in the hands stays there', () => {
    const twice = changed((record) =>
      record.kind === 'score'
        ? {
            ...record,
            music: {
              ...record.music,
              order: [
                [0, 60],
                [51, 83],
              ],
            },
          }
        : record,
    );
    expect(swapsIn(twice).map(({ bar }) => bar)).toEqual(['52', '76']);
  });

  it('says which time through a bar that is played more than once', () => {
    // Back to the bar of the change once the other instrument has been taken up: bar 52 asks for it twice.
    const twice = changed((record) =>
      record.kind === 'score'
        ? {
            ...record,
            music: {
              ...record.music,
              order: [
                [0, 80],
                [45, 83],
              ],
            },
          }
        : record,
    );
    expect(swapsIn(twice).map(({ bar, pass }) => [bar, pass.time, pass.of])).toEqual([
      ['52', 1, 2],
      ['76', 1, 2],
      ['52', 2, 2],
      ['76', 2, 2],
    ]);
    expect(swapsIn(demo).map(({ pass }) => pass)).toEqual([
      { time: 1, of: 1 },
      { time: 1, of: 1 },
    ]);
  });
});
