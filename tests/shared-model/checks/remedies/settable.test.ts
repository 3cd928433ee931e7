/** What is told can be set by a person, clears the finding, and is hardly more than the least that would. */

import { describe, expect, it } from 'vitest';
import { readEnsemble } from '#model/arrange/ensemble-text.ts';
import { usualFashion } from '#model/arrange/fashions.ts';
import { venueModel } from '#model/catalogue/venues.ts';
import type { Remedy } from '#model/checks/finding.ts';
import { leastRemedies, mendingMost, suggestRemedies } from '#model/checks/remedy.ts';
import { remedyOutcome } from '#model/checks/remedies/carry-out.ts';
import { itemsOf } from '#model/checks/remedies/harm.ts';
import { remedyWords } from '#model/checks/remedy-words.ts';
import { applyDiff, invertDiff } from '#model/document/diff.ts';
import { concertOf, documentOf, setupsOf, type Document } from '#model/document/document.ts';
import { labelOf } from '#model/document/labels.ts';
import { formatLength } from '#model/document/measures.ts';
import { addEnsemble } from '../../../../renderer/store/ensemble.ts';
import { newConcert } from '../../../../renderer/store/new-concert.ts';
import { demoConcert } from './demo.ts';
import { carried, findingsIn, isThere } from './trials.ts';

const demo = demoConcert();
const told = setupsOf(demo).flatMap(({ id: setup }) =>
  findingsIn(demo, setup).flatMap((finding) => {
    const least = leastRemedies(demo, setup, finding);
    return suggestRemedies(demo, setup, finding).map((remedy, index) => ({
      setup,
      finding,
      remedy,
      least: least[index],
    }));
  }),
);

const isWhole = (amount: number, step: number): boolean =>
  Math.abs(amount / step - Math.round(amount / step)) < 1e-9;

function isRound(remedy: Remedy): boolean {
  if ('dx' in remedy) return isWhole(remedy.dx, 50) && isWhole(remedy.dy, 50);
  if (remedy.kind === 'turn' || remedy.kind === 'turnTogether') return isWhole(remedy.by, 5);
  return remedy.kind !== 'lower' || isWhole(remedy.by, 50);
}

describe('suggestions for the demo', () => {
  it('are round wherever the round amount helps too, and nearly all are', () => {
    const alone = told.filter(({ remedy }) => remedy.kind !== 'both' && remedy.kind !== 'cover');
    expect(alone.length).toBeGreaterThan(8);
    const round = alone.filter(({ remedy }) => isRound(remedy));
    expect(round.length / alone.length).toBeGreaterThan(0.7);
    // What is not is the least itself, to the millimetre or degree.
    for (const { remedy, least } of alone) if (!isRound(remedy)) expect(remedy).toEqual(least);
  });

  it('clear what they are against and make nothing worse, checked again from nothing', () => {
    for (const { setup, finding, remedy } of told) {
      const before = findingsIn(demo, setup);
      const after = findingsIn(carried(demo, remedy), setup);
      const name = `${finding.code} ${JSON.stringify(remedy)}`;
      expect(isThere(after, finding), name).toBe(false);
      const fails = after.filter(({ severity }) => severity === 'fail');
      expect(
        fails.filter((found) => !isThere(before, found)).map(({ code }) => code),
        name,
      ).toEqual([]);
    }
  });
});

it('in an imperial concert lengths are whole steps of two inches', () => {
  const records = [...demo.records.values()].map((record) =>
    record.kind === 'concert' ? { ...record, units: 'imperial' as const } : record,
  );
  const imperial = documentOf(records);
  const lengths = setupsOf(imperial).flatMap(({ id: setup }) =>
    findingsIn(imperial, setup)
      .flatMap((finding) => suggestRemedies(imperial, setup, finding))
      .flatMap((remedy) => ('dx' in remedy ? [remedy.dx, remedy.dy] : []))
      .filter((length) => length !== 0),
  );
  expect(lengths.length).toBeGreaterThan(4);
  expect(lengths.filter((length) => isWhole(length, 50.8)).length / lengths.length).toBeGreaterThan(0.6);
  expect(formatLength(50.8, 'imperial')).toMatch(/^2/);
});

/** Set as people set them who do not think of the house: nobody is seen well over his own desk. */
function plainQuartet(house: string, shape: 'arc' | 'horseshoe'): Document {
  const venue = venueModel(house);
  if (!venue) throw new Error(`no house ${house}`);
  const empty = newConcert(venue, 'metric');
  const order = { setup: setupsOf(empty)[0]?.id, units: 'metric', shape, withStands: true, shared: false };
  if (!order.setup) throw new Error('no setup');
  const outcome = addEnsemble(
    empty,
    readEnsemble('2 vl, va, vc').members,
    { ...order, setup: order.setup } as Parameters<typeof addEnsemble>[2],
    usualFashion(shape),
  );
  if (!outcome.ok) throw new Error(outcome.reason);
  return applyDiff(empty, outcome.diff);
}

describe('two changes together', () => {
  const document = plainQuartet('studio', 'arc');
  const [setup] = setupsOf(document);
  if (!setup) throw new Error('no setup');
  const before = findingsIn(document, setup.id);
  const pairs = before.flatMap((finding) =>
    leastRemedies(document, setup.id, finding).length > 0
      ? []
      : suggestRemedies(document, setup.id, finding).flatMap((remedy) =>
          remedy.kind === 'both' ? [{ finding, remedy }] : [],
        ),
  );

  it('help where none helps alone', () => {
    expect(pairs.length).toBeGreaterThan(0);
    for (const { finding, remedy } of pairs) {
      const after = findingsIn(carried(document, remedy), setup.id);
      expect(isThere(after, finding), JSON.stringify(remedy)).toBe(false);
      for (const half of [remedy.first, remedy.second])
        expect(isThere(findingsIn(carried(document, half), setup.id), finding), JSON.stringify(half)).toBe(
          true,
        );
    }
  });

  it('are one step, and their words name both', () => {
    const [pair] = pairs;
    if (!pair) throw new Error('no pair');
    const { remedy } = pair;
    const outcome = remedyOutcome(document, remedy);
    if (!outcome.ok) throw new Error(outcome.reason);
    const changed = applyDiff(document, outcome.diff);
    expect(applyDiff(changed, invertDiff(outcome.diff)).records).toEqual(document.records);
    const words = remedyWords(remedy, (id) => labelOf(document, setup.id, id), concertOf(document).units);
    for (const item of itemsOf(remedy))
      if (item.startsWith('stand')) expect(words).toContain(labelOf(document, setup.id, item));
    expect(words).toContain(', and: ');
  });

  it('are the same each time', () => {
    for (const { finding, remedy } of pairs.slice(0, 2))
      expect(suggestRemedies(document, setup.id, finding)).toEqual([remedy]);
  });
});

it('one change is found that mends most of what a player suffers from, and it is said what it leaves', () => {
  const document = plainQuartet('recital-room', 'arc');
  const [setup] = setupsOf(document);
  if (!setup) throw new Error('no setup');
  const findings = findingsIn(document, setup.id).filter(
    ({ code, subjects }) => code === 'facing.turn' && subjects[0] === 'player-1',
  );
  expect(findings.length).toBeGreaterThan(1);
  const changes = findings.flatMap((finding) => suggestRemedies(document, setup.id, finding));
  const best = mendingMost({ document, setup: setup.id, findings, changes });
  if (!best) throw new Error('nothing mends two');
  expect(best.mends.length).toBeGreaterThan(1);
  expect([...best.mends, ...best.leaves].sort()).toEqual([...findings.keys()]);
  const after = findingsIn(carried(document, best.change), setup.id);
  for (const [index, finding] of findings.entries())
    expect(isThere(after, finding), String(index)).toBe(best.leaves.includes(index));
});
