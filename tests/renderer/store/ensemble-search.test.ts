/** The best fashion of an ensemble, judged again by the whole check of every house of the catalogue. */

import { describe, expect, it } from 'vitest';
import { readEnsemble } from '#model/arrange/ensemble-text.ts';
import { fashionsOf, usualFashion } from '#model/arrange/fashions.ts';
import { SHAPES, type Shape } from '#model/arrange/shapes.ts';
import { VENUE_MODELS, venueModel } from '#model/catalogue/venues.ts';
import { checkSetup } from '#model/checks/check-setup.ts';
import type { Finding } from '#model/checks/finding.ts';
import { applyDiff } from '#model/document/diff.ts';
import { inSetup, setupsOf, type Document } from '#model/document/document.ts';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { addEnsemble } from '../../../renderer/store/ensemble.ts';
import type { EnsembleOrder } from '../../../renderer/store/ensemble-records.ts';
import { bestFashion } from '../../../renderer/store/ensemble-search.ts';
import { newConcert } from '../../../renderer/store/new-concert.ts';

function emptyHouse(id: string): Document {
  const venue = venueModel(id);
  if (!venue) throw new Error(`no house ${id}`);
  return newConcert(venue, 'metric');
}

function orderFor(document: Document, shape: Shape): EnsembleOrder {
  const [setup] = setupsOf(document);
  if (!setup) throw new Error('no setup');
  return { setup: setup.id, units: 'metric', shape, withStands: true, shared: false };
}

interface Placed {
  readonly document: Document;
  readonly foretold: readonly Finding[];
  readonly findings: readonly Finding[];
}

/** Null: refused. */
function placed(house: string, words: string, shape: Shape): Placed | null {
  const empty = emptyHouse(house);
  const order = orderFor(empty, shape);
  const { members } = readEnsemble(words);
  const best = bestFashion(empty, members, order);
  if (!best) return null;
  const outcome = addEnsemble(empty, members, order, best.fashion);
  if (!outcome.ok) throw new Error(outcome.reason);
  const document = applyDiff(empty, outcome.diff);
  return { document, foretold: best.remaining, findings: checkSetup(document, order.setup).findings };
}

const failsOf = (findings: readonly Finding[]): string[] =>
  findings
    .filter(({ severity }) => severity === 'fail')
    .map(({ code, subjects }) => `${code} ${subjects.join(' ')}`);

const HOUSES = VENUE_MODELS.map(({ id }) => id);

describe('an ensemble set where the checks like it best', () => {
  const cases = SHAPES.flatMap((shape) => HOUSES.map((house): [string, Shape] => [house, shape]));

  it.each(cases)('a string quartet in %s, %s: nothing fails', (house, shape) => {
    const set = placed(house, '2 vl, va, vc', shape);
    if (!set) throw new Error('refused');
    expect(failsOf(set.findings)).toEqual([]);
    expect(inSetup(set.document, orderFor(set.document, shape).setup, 'player')).toHaveLength(4);
    expect(readDocument(writeDocument(set.document)).ok).toBe(true);
  });

  it.each(HOUSES)('a clarinet, a viola and percussion in %s, whatever the shape: nothing fails', (house) => {
    for (const shape of SHAPES)
      expect(failsOf(placed(house, 'cl, va, perc', shape)?.findings ?? []), shape).toEqual([]);
  });

  it.each(HOUSES)('a wind quintet on an arc in %s: nothing fails', (house) => {
    expect(failsOf(placed(house, 'fl, ob, cl, hn, bn', 'arc')?.findings ?? [])).toEqual([]);
  });

  // On three sides of a platform some always look at the pianist over the case.
  it.each(HOUSES.filter((house) => house !== 'thrust-room'))(
    'a piano trio on an arc in %s: nothing fails',
    (house) => {
      expect(failsOf(placed(house, 'pf, vl, vc', 'arc')?.findings ?? [])).toEqual([]);
    },
  );

  it('eight strings on an arc of a stage that is large enough: nothing fails', () => {
    expect(failsOf(placed('small-concert-hall', '4 vl, 2 va, 2 vc', 'arc')?.findings ?? [])).toEqual([]);
  });

  it('in the usual fashion the same quartet fails, so that there is something to mend', () => {
    const empty = emptyHouse('recital-room');
    const order = orderFor(empty, 'arc');
    const outcome = addEnsemble(empty, readEnsemble('2 vl, va, vc').members, order, usualFashion('arc'));
    if (!outcome.ok) throw new Error(outcome.reason);
    expect(failsOf(checkSetup(applyDiff(empty, outcome.diff), order.setup).findings)).toHaveLength(4);
  });

  it('tells beforehand what the checks find afterwards, where a shape cannot do better', () => {
    const set = placed('recital-room', '2 vl, va, vc', 'arc');
    expect(set?.foretold.map(({ code }) => code)).toEqual(['facing.turn', 'facing.turn']);
    expect(set?.foretold).toEqual(set?.findings);
  });

  it('tells nothing of what was found before', () => {
    const first = placed('studio', '2 vl, va, vc', 'row');
    if (!first) throw new Error('refused');
    const order = orderFor(first.document, 'row');
    const second = bestFashion(first.document, readEnsemble('cl').members, order);
    const known = first.findings.map(({ code, subjects }) => `${code} ${subjects.join(' ')}`);
    expect(known.length).toBeGreaterThan(0);
    for (const { code, subjects } of second?.remaining ?? [])
      expect(known).not.toContain(`${code} ${subjects.join(' ')}`);
  });

  it('is the same each time', () => {
    const empty = emptyHouse('church-chancel');
    const { members } = readEnsemble('fl, ob, cl, hn, bn');
    const order = orderFor(empty, 'horseshoe');
    expect(bestFashion(empty, members, order)).toEqual(bestFashion(empty, members, order));
  });

  it('is refused where they do not go in any fashion', () => {
    expect(placed('drawing-room', '12 vl', 'row')).toBeNull();
  });
});

describe('fashions', () => {
  it('begin with the usual one of each shape, none twice', () => {
    for (const shape of SHAPES) {
      const all = fashionsOf(shape);
      expect(all[0]).toEqual({ fashion: usualFashion(shape), oddness: 0 });
      expect(new Set(all.map(({ fashion }) => JSON.stringify(fashion))).size).toBe(all.length);
    }
  });
});
