/** Advice that nobody has tried says so, and is not what is known to be wrong; amounts are carried out and checked again. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkSetup } from '#model/checks/check-setup.ts';
import { setRound } from '#model/checks/facing/set-round.ts';
import { glanceAt } from '#model/checks/facing/bearings.ts';
import type { FindingCode } from '#model/checks/finding.ts';
import { reachFindings } from '#model/checks/reach/findings.ts';
import { approachNeeded } from '#model/checks/reach/if-nearer.ts';
import { explain } from '#model/checks/sentences.ts';
import type { Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord } from '#model/document/records.ts';
import {
  aConcert,
  aDocument,
  anInstrument,
  anInstrumentStand,
  aPiano,
  aPlayer,
  aSeatBlock,
  aStand,
  PERSON,
  SETUP,
  SIDE,
} from '../../helpers/build.ts';
import { FAULTS, MORE_FAULTS } from './faults.ts';

const READER = asId<'player'>('player-1');

const told = (document: Document, code: FindingCode) =>
  checkSetup(document, SETUP)
    .findings.filter((finding) => finding.code === code)
    .map((finding) => explain(finding, document, SETUP, 'metric'));

const adviceOf = (code: FindingCode, ...records: AnyRecord[]): string => {
  const [first] = told(aDocument(...records), code);
  if (!first) throw new Error(`no ${code}`);
  return first.advice;
};

test('all advice is marked as untried, or is no order at all', () => {
  const documents = [...Object.values(FAULTS).map(({ faulty }) => faulty), ...MORE_FAULTS];
  for (const document of documents) {
    for (const finding of checkSetup(document, SETUP).findings) {
      const { advice } = explain(finding, document, SETUP, 'metric');
      expect(advice).toMatch(/^Try: [^A-Z]|^It fits /);
      expect(advice).not.toMatch(/then it is|will do/);
    }
  }
});

describe('a grip that is too far', () => {
  const page = (x: number, y: number) =>
    aStand({ x, y, lip: 1000, sides: [{ ...SIDE, reader: READER, turned: true }] });

  test('is in reach once its thing has come as far as is said', () => {
    let carriedOut = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: -900, max: 900 }),
        fc.integer({ min: 400, max: 1900 }),
        fc.integer({ min: -180, max: 180 }),
        (x, y, facing) => {
          const player = aPlayer({ y: 2000, facing });
          const stand = page(x, y);
          const before = aDocument(player, stand);
          const [far] = reachFindings(before, SETUP).filter(({ code }) => code === 'reach.far');
          const words = far && explain(far, before, SETUP, 'metric').advice;
          const by = Number(/nearer by (\d+) mm, straight towards/.exec(words ?? '')?.[1]);
          if (Number.isNaN(by)) return;
          carriedOut++;
          const way = Math.hypot(player.x - x, player.y - y);
          const moved = page(x + (by * (player.x - x)) / way, y + (by * (player.y - y)) / way);
          const after = reachFindings(aDocument(player, moved), SETUP);
          expect(after.filter(({ code }) => code === 'reach.far')).toEqual([]);
        },
      ),
    );
    expect(carriedOut).toBeGreaterThan(20);
  });

  test('worked by hand: 1000 away on the line, 600 reached; beside the line by 300, 500 reached', () => {
    const [from, to] = [
      { x: 0, y: 0 },
      { x: 2000, y: 0 },
    ];
    expect(approachNeeded({ from, to, grip: from, shoulder: { x: 1000, y: 0 }, limit: 600 })).toBeCloseTo(
      400,
      9,
    );
    expect(approachNeeded({ from, to, grip: from, shoulder: { x: 1000, y: 300 }, limit: 500 })).toBeCloseTo(
      600,
      9,
    );
    expect(approachNeeded({ from, to, grip: from, shoulder: { x: 1000, y: 501 }, limit: 500 })).toBeNull();
    expect(approachNeeded({ from, to, grip: from, shoulder: { x: -900, y: 0 }, limit: 500 })).toBeNull();
  });
});

describe('a grip that is too late', () => {
  const waiting = (height: number, freeTime: number) => [
    aPlayer({ y: 2000 }),
    anInstrumentStand({ x: -500, y: 1700, height }),
    anInstrument({ model: 'clarinet-a', support: asId('instrumentStand-1'), freeTime }),
  ];

  test('names the stooping, and is raised where it is low', () => {
    // To bend and to rise: 60.9 TMU of 36 ms.
    const [late] = told(aDocument(...waiting(200, 1)), 'reach.late');
    expect(late?.text).toMatch(
      / by the published tables, 2\.2 s for stooping and rising \(from memory\); up to /,
    );
    expect(late?.advice).toMatch(
      /^Try: raise .*stoop.*, or find a longer rest: at its height it takes [23]\.\d s/,
    );
    expect(late?.advice).not.toContain('nearer');
  });

  test('with no rest at all nearer is not advised', () => {
    expect(adviceOf('reach.late', ...waiting(1000, 0))).not.toContain('nearer');
    const page = aStand({
      y: 1400,
      lip: 1000,
      sides: [{ ...SIDE, reader: READER, turned: true, freeTime: 0 }],
    });
    expect(adviceOf('reach.late', aPlayer({ y: 2000 }), page)).toBe(
      'Try: give the turn to somebody else, print the page again, or set one more stand: there is no rest there.',
    );
  });
});

describe('somebody whom the house does not see', () => {
  test.each([
    ['wheelchair', false],
    ['walks', true],
  ] as const)('%s: told to go up on a riser: %s', (mobility, riser) => {
    const player = aPlayer({ y: 2600, mobility });
    const [stand, front] = [aPiano({ y: 1500, lid: 'full' }), aPlayer({ id: 'player-2', y: 2200 })];
    for (const cover of [stand, front]) {
      const words = told(aDocument(player, cover), 'sight.house').find(({ headline }) =>
        headline.includes('player 1'),
      );
      expect(words?.advice.includes('riser')).toBe(riser);
    }
  });

  test('heads hide, and rails: the sentence tells which', () => {
    const heads = aDocument(
      aConcert({ headsInFront: true }),
      aSeatBlock({ rows: 5, name: 'Stalls' }),
      aPlayer(),
    );
    const [byHeads] = told(heads, 'sight.house');
    expect(byHeads?.text ?? '').toMatch(/Heads in Stalls hide most/);
    const rail = aDocument(aSeatBlock({ rows: 2, name: 'Balcony', frontRail: 1800 }), aPlayer());
    const [byRail] = told(rail, 'sight.house');
    expect(byRail?.text ?? '').toMatch(/The rail of Balcony hides most/);
  });
});

describe('partners beside and behind', () => {
  const at = (id: string, x: number, y: number, facing = 0) => aPlayer({ id, x, y, facing });
  const [me, left, right] = [
    at('player-1', 0, 2000),
    at('player-2', 1500, 2000),
    at('player-3', -1500, 2000),
  ];

  test('one turn suits all of one side, and after it no body turns', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -179, max: 179 }), { minLength: 1, maxLength: 4 }),
        (bearings) => {
          const glances = (facing: number) =>
            bearings.map((bearing, index) => {
              const angle = (bearing * Math.PI) / 180;
              const partner = at(
                `player-${index + 2}`,
                1000 * Math.sin(angle),
                2000 - 1000 * Math.cos(angle),
              );
              return glanceAt({ ...me, facing }, partner, []);
            });
          const before = glances(0);
          const round = setRound(before);
          if (round.kind !== 'round') return;
          expect(Math.abs(round.by)).toBeLessThanOrEqual(90);
          expect(glances(round.by).every(({ turn }) => turn !== 'body')).toBe(true);
        },
      ),
    );
  });

  test('opposite ones cannot be suited, and none is told to turn a back to the house', () => {
    const all = (...partners: ReturnType<typeof aPlayer>[]) =>
      setRound(partners.map((partner) => glanceAt(me, partner, [])));
    expect(all(left)).toEqual({ kind: 'round', by: 30 });
    expect(all(left, right)).toEqual({ kind: 'opposed' });
    expect(all(at('player-2', 0, 4000))).toEqual({ kind: 'back' });
  });
});

test('a piano that stands between eyes is not told to come down', () => {
  const eyes = { ...PERSON, measured: { ...PERSON.measured, eyeHeight: 900 } };
  const [blocked] = told(
    aDocument(
      aPlayer({ x: 300, y: 1200, person: eyes }),
      aPlayer({ id: 'player-2', x: 300, y: 3600, person: eyes }),
      aPiano({ x: 0, y: 2500, facing: 90, lid: 'closed' }),
    ),
    'facing.blocked',
  );
  expect(blocked?.text).toMatch(/^Piano 1 stands in the line/);
  expect(blocked?.advice).toBe('Try: move one of the two sideways, or piano 1 out of the line.');
});
