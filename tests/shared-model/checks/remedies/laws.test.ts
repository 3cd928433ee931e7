/** Laws that every remedy keeps, on the demo concert and on seeded variations of it. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standModel } from '#model/catalogue/stands.ts';
import type { Finding } from '#model/checks/finding.ts';
import { itemsOf } from '#model/checks/remedies/harm.ts';
import { leastRemedies } from '#model/checks/remedy.ts';
import { allOf, documentOf, setupsOf, type Document } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
import type { AnyRecord, Stand } from '#model/document/records.ts';
import { isPlaced } from '#model/document/records.ts';
import { diceOf } from '../../../oracles/seeded.ts';
import { demoConcert } from './demo.ts';
import { carried, findingsIn, isLeast, isThere, type Case } from './trials.ts';

function casesIn(document: Document, setup: Id<'setup'>): Case[] {
  const before = findingsIn(document, setup);
  return before.flatMap((finding) =>
    leastRemedies(document, setup, finding).map((remedy) => ({ document, setup, before, finding, remedy })),
  );
}

const told = ({ finding, remedy }: Case): string =>
  `${finding.code} ${finding.subjects.join(' ')}: ${JSON.stringify(remedy)}`;

function newFails(before: readonly Finding[], after: readonly Finding[]): string[] {
  const fails = (findings: readonly Finding[]) => findings.filter(({ severity }) => severity === 'fail');
  return fails(after)
    .filter((finding) => !isThere(fails(before), finding))
    .map(({ code, subjects }) => `${code} ${subjects.join(' ')}`);
}

function expectLaws(cases: readonly Case[]): void {
  for (const one of cases) {
    const { document, setup, before, finding, remedy } = one;
    const after = findingsIn(carried(document, remedy), setup);
    expect(isThere(after, finding), told(one)).toBe(false);
    expect(newFails(before, after), told(one)).toEqual([]);
    expect(isLeast(one), told(one)).toBe(true);
    for (const id of itemsOf(remedy)) expect(mayChange(document.records.get(id)), told(one)).toBe(true);
    if (remedy.kind === 'lower' || remedy.kind === 'lowerAll')
      for (const stand of standsOf(carried(document, remedy), itemsOf(remedy)))
        expect(stand.lip, told(one)).toBeGreaterThanOrEqual(standModel(stand.model)?.lip.least ?? Infinity);
  }
}

function standsOf(document: Document, ids: readonly string[]): Stand[] {
  return allOf(document, 'stand').filter(({ id }) => ids.includes(id));
}

function mayChange(record: AnyRecord | undefined): boolean {
  return (
    record !== undefined &&
    isPlaced(record) &&
    record.kind !== 'riser' &&
    !(record.kind === 'shape' && record.fixed)
  );
}

describe('the demo concert', () => {
  const document = demoConcert();
  const cases = setupsOf(document).flatMap(({ id }) => casesIn(document, id));

  it('has findings of several kinds that can be cleared', () => {
    expect(new Set(cases.map(({ finding }) => finding.code)).size).toBeGreaterThanOrEqual(4);
  });

  it('every remedy clears its finding, does no harm, is the least, and leaves the building alone', () => {
    expectLaws(cases);
  });
});

/** Everything that is placed is shifted and turned a little, and desks are set at other heights. */
function varied(document: Document, seed: number): Document {
  const dice = diceOf(seed);
  return documentOf(
    [...document.records.values()].map((record) => {
      if (!isPlaced(record) || (record.kind === 'shape' && record.fixed)) return record;
      const round = (value: number): number => Math.round(value / 5) * 5;
      const there = {
        x: record.x + round(dice.between(-350, 350)),
        y: record.y + round(dice.between(-350, 350)),
        facing: Math.round(record.facing + dice.between(-25, 25)),
      };
      const lip = round(dice.between(700, 1150));
      return record.kind === 'stand' ? { ...record, ...there, lip } : { ...record, ...there };
    }),
  );
}

/** 150 were run once, in five minutes. */
const RUNS = 12;

describe('seeded variations', () => {
  const demo = demoConcert();
  const faulty = asId<'setup'>('setup-2');

  it('every remedy clears its finding, does no harm, is the least, and leaves the building alone', () => {
    let remedies = 0;
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.constantFrom(...setupsOf(demo)), (seed, { id }) => {
        const cases = casesIn(varied(demo, seed), id);
        expectLaws(cases);
        remedies += cases.length;
      }),
      { numRuns: RUNS },
    );
    // Otherwise nothing was tested.
    expect(remedies).toBeGreaterThan(RUNS);
  });

  it('the same document gives the same answer, in whatever order its records come', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const document = varied(demo, seed);
        const turnedRound = documentOf([...document.records.values()].reverse());
        for (const finding of findingsIn(document, faulty)) {
          const remedies = leastRemedies(document, faulty, finding);
          expect(leastRemedies(turnedRound, faulty, finding)).toEqual(remedies);
        }
      }),
      { numRuns: 3 },
    );
  });
});
