import { describe, expect, it } from 'vitest';
import { changeover } from '#model/programme/changeover.ts';
import { changeoverJson } from '#model/programme/changeover-json.ts';
import { changeoverNotes, enoughTime, timeVerdict } from '#model/programme/changeover-words.ts';
import { heavyCarryTime, walkingTime } from '#model/programme/handling.ts';
import { documentOf } from '#model/document/document.ts';
import { stepNotes } from '#model/programme/step-words.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { aDoor, aLamp, aRiser, aSeat, aSetup, aStand, aTable, SETUP } from '../../helpers/build.ts';
import { SECOND, standsAt, twoSetups } from './programme-scenes.ts';

/*
 * Walking times against the published speeds (check-values section 3, C4): 5.0 m take 4.687 s at 1.0668 m/s (TxDOT Roadway
 * Design Manual, 3.5 ft/s), 3.817 s at 1.31 m/s and 6.098 s at 0.82 m/s (Murtagh et al., Sports Med 2020). Getting going
 * (0.5, 0.2 and 1 s) is common practice, no source.
 */
describe('walking', () => {
  it('takes the published times', () => {
    const { usual, least, most } = walkingTime(5000);
    expect(usual - 0.5).toBeCloseTo(4.687, 3);
    expect(least - 0.2).toBeCloseTo(3.817, 3);
    expect(most - 1).toBeCloseTo(6.098, 3);
    expect(walkingTime(250)).toEqual({ usual: 0, least: 0, most: 0 });
  });

  it('with something heavy goes at the slow published pace', () => {
    const { usual, least, most } = heavyCarryTime(5000);
    expect(usual - 1).toBeCloseTo(6.098, 3);
    expect(least - 0.5).toBeCloseTo(4.687, 3);
    expect(most).toBe(2 * usual);
  });

  it('is in the time of a step: to move a stand twice as far takes so much longer', () => {
    const timeFor = (x: number) =>
      changeover(standsAt([{ x: -2500, y: 2500 }], [{ x, y: 2500 }]), SETUP, SECOND).time;
    const [near, far] = [timeFor(0), timeFor(2500)];
    expect(far.usual - near.usual).toBeCloseTo(2.5 / 1.0668, 6);
    expect(far.least - near.least).toBeCloseTo(2.5 / 1.31, 6);
    expect(far.most - near.most).toBeCloseTo(2.5 / 0.82, 6);
  });
});

describe('the time there is', () => {
  const moved = (changeTime: number | null) =>
    changeover(
      twoSetups(
        aSetup({ id: SECOND, order: 2, changeTime }),
        aStand(),
        aStand({ id: 'stand-2', setup: SECOND, x: 2000 }),
      ),
      SETUP,
      SECOND,
    );

  it('is held against what it takes, on both sides of each limit', () => {
    const { usual, most } = moved(null).time;
    expect(enoughTime(moved(null))).toBe('unknown');
    expect(
      [most + 1, most - 1, usual + 0.1, usual - 0.1].map((seconds) => enoughTime(moved(seconds))),
    ).toEqual(['enough', 'tight', 'tight', 'short']);
    expect(timeVerdict(moved(Math.floor(usual) - 4))).toMatch(/too little/);
  });

  it('is not called enough, nor too little, while something has no way', () => {
    const changeTime = 600;
    const shut = changeover(
      twoSetups(
        aSetup({ id: SECOND, order: 2, changeTime }),
        aDoor({ width: 300 }),
        aStand({ id: 'stand-2', setup: SECOND }),
      ),
      SETUP,
      SECOND,
    );
    expect(shut.steps[0]?.way.ease).toBe('none');
    expect(shut.time.most).toBeLessThan(changeTime);
    expect(enoughTime(shut)).toBe('unknown');
    expect(timeVerdict(shut)).toBe(
      'There are 10:00: whether that is enough cannot be told while 1 thing has no way.',
    );
  });

  it('of a variant is that of its setup', () => {
    const base = twoSetups(aSetup({ id: SECOND, order: 2, changeTime: 77 }));
    const variant = aSetup({ id: 'setup-3', order: 3, variantOf: SECOND });
    const document = documentOf([...base.records.values(), variant]);
    expect(changeover(document, SETUP, variant.id).available).toBe(77);
  });
});

describe('what is put aside', () => {
  const notesOf = (...records: AnyRecord[]) =>
    changeoverNotes(changeover(twoSetups(...records), SETUP, SECOND)).filter((note) => /aside/.test(note));

  it('is told to stand on what is moved', () => {
    const [before, after] = [SETUP, SECOND].map((setup, side) => [
      aRiser({ id: `riser-${side}`, setup, x: 3000 * side - 1500 }),
      aSeat({ id: `seat-${side}`, setup, x: 3000 * side - 2000 }),
      aStand({ id: `stand-${side}`, setup, x: 3000 * side - 1000 }),
    ]);
    expect(notesOf(...(before ?? []), ...(after ?? []))).toEqual([
      '2 things put aside first, because what they stand on is moved.',
    ]);
  });

  it('is told to exchange places where it does', () => {
    const exchange = (index: number): AnyRecord[] => {
      const [y, ids] = [1000 + 1700 * index, `-${index}`];
      return [
        aStand({ id: `stand-1${ids}`, x: -500, y }),
        aSeat({ id: `seat-1${ids}`, x: 500, y }),
        aStand({ id: `stand-2${ids}`, setup: SECOND, x: 500, y }),
        aSeat({ id: `seat-2${ids}`, setup: SECOND, x: -500, y }),
      ];
    };
    expect(notesOf(...exchange(0))).toEqual([
      '1 thing put aside first, because its place and another’s are exchanged.',
    ]);
    expect(notesOf(...exchange(0), ...exchange(1))).toEqual([
      '2 things put aside first, because their places and others’ are exchanged.',
    ]);
  });
});

describe('the length of the ways as data', () => {
  it('is the sum of those of the steps, and not what the assignment makes least', () => {
    // An exchange of places: what is put aside goes a longer way than the straight one to its new place.
    const document = twoSetups(
      aStand({ id: 'stand-1', x: -500 }),
      aTable({ id: 'table-1', x: 500 }),
      aStand({ id: 'stand-2', setup: SECOND, x: 500 }),
      aTable({ id: 'table-2', setup: SECOND, x: -500 }),
    );
    const change = changeover(document, SETUP, SECOND);
    const walked = change.steps.reduce((sum, { way }) => sum + way.length, 0);
    expect(walked).toBeGreaterThan(change.carried + 1000);
    expect(changeoverJson(document, change)).toMatchObject({ waysLength: walked, carried: change.carried });
  });
});

describe('a lamp with a cable', () => {
  const cable = [
    { x: 0, y: 1500 },
    { x: -3000, y: 1500 },
  ];
  const [lamp, bare] = [cable, []].map((points) => aLamp({ cable: points, cableCovered: true }));
  const notesOf = (from: typeof SETUP | null, record: AnyRecord | undefined): string => {
    const document = twoSetups(...(record ? [record] : []));
    const [step] = changeover(document, from, from ? null : SETUP).steps;
    if (!step) throw new Error('one step was expected');
    return stepNotes({ document, from, to: from ? null : SETUP, units: 'metric' }, step).join();
  };

  it('is told to be laid, covered and plugged in, and taken up again', () => {
    expect(notesOf(null, lamp)).toMatch(/lay its cable, cover it, then plug in/);
    expect(notesOf(SETUP, lamp)).toMatch(/unplug, then take up the cover and the cable/);
    expect(notesOf(null, bare)).not.toMatch(/cable/);
  });
});
