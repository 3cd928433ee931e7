import { describe, expect, it } from 'vitest';
import { readEnsemble } from '#model/arrange/ensemble-text.ts';
import { SHAPES, type Shape } from '#model/arrange/shapes.ts';
import { venueModel } from '#model/catalogue/venues.ts';
import { checkSetup } from '#model/checks/check-setup.ts';
import { applyDiff } from '#model/document/diff.ts';
import { inSetup, setupsOf, type Document } from '#model/document/document.ts';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { addEnsemble } from '../../../renderer/store/ensemble.ts';
import type { EnsembleOrder } from '../../../renderer/store/ensemble-records.ts';
import { newConcert } from '../../../renderer/store/new-concert.ts';
import { aDocument, SETUP } from '../../helpers/build.ts';

const hall = (): Document => {
  const venue = venueModel('small-concert-hall');
  if (!venue) throw new Error('no hall');
  return newConcert(venue, 'metric');
};

const set = (document: Document, words: string, order: Partial<EnsembleOrder> = {}) => {
  const setup = setupsOf(document)[0]?.id ?? SETUP;
  const { members } = readEnsemble(words);
  return addEnsemble(document, members, {
    setup,
    units: 'metric',
    shape: 'arc',
    withStands: true,
    shared: false,
    ...order,
  });
};

const after = (document: Document, words: string, order: Partial<EnsembleOrder> = {}): Document => {
  const outcome = set(document, words, order);
  if (!outcome.ok) throw new Error(outcome.reason);
  return applyDiff(document, outcome.diff);
};

const IN_THE_WAY = ['room.overlap', 'room.elbow', 'room.edge', 'room.door'];

describe('an ensemble set down at once', () => {
  const ensembles = [
    '2 vl, va, vc',
    'cl, va, perc',
    'fl, ob, cl, hn, bn',
    'vl, vc, pf',
    '2 vl, 2 va, 2 vc, 2 db',
  ];
  const cases = SHAPES.flatMap((shape) => ensembles.map((words): [Shape, string] => [shape, words]));

  it.each(cases)(
    '%s of %s: nobody stands in anybody, near an open edge or without room for his elbows',
    (shape, words) => {
      const document = after(hall(), words, { shape });
      const setup = setupsOf(document)[0]?.id ?? SETUP;
      const { findings } = checkSetup(document, setup);
      expect(
        findings
          .filter(({ code }) => IN_THE_WAY.includes(code))
          .map(({ code, subjects }) => [code, subjects]),
      ).toEqual([]);
      expect(readDocument(writeDocument(document)).ok).toBe(true);
    },
  );

  it('gives everybody his instrument, seat and stand in one step, and selects the players', () => {
    const outcome = set(aDocument(), '2 vl, va, vc');
    expect(outcome).toMatchObject({
      ok: true,
      label: 'add 4 players',
      select: expect.arrayContaining(['player-1']),
    });
    const document = after(aDocument(), '2 vl, va, vc');
    expect(inSetup(document, SETUP, 'player').map(({ name, chair }) => [name, chair?.model])).toEqual([
      ['Violin 1', 'orchestra-chair'],
      ['Violin 2', 'orchestra-chair'],
      ['Viola', 'orchestra-chair'],
      ['Cello', 'cello-chair'],
    ]);
    const readers = inSetup(document, SETUP, 'stand').map(({ sides: [side] }) => side.reader);
    expect(readers).toEqual(['player-1', 'player-2', 'player-3', 'player-4']);
  });

  it('lets two who face each other read from one stand', () => {
    const document = after(aDocument(), '2 vl, va', { shape: 'pairs', shared: true });
    const [pair, single] = inSetup(document, SETUP, 'stand');
    expect(pair).toMatchObject({
      form: 'backToBack',
      x: 0,
      sides: [{ reader: 'player-1' }, { reader: 'player-2' }],
    });
    expect(single).toMatchObject({ form: 'single', sides: [{ reader: 'player-3' }] });
    // Each page looks at its reader.
    const [first] = inSetup(document, SETUP, 'player');
    expect(first && first.x < 0 && pair && pair.facing).toBe(270);
  });

  it('goes beside those who are there', () => {
    const twice = after(after(hall(), 'vl, vc'), 'fl, ob', { shape: 'row' });
    const setup = setupsOf(twice)[0]?.id ?? SETUP;
    expect(inSetup(twice, setup, 'player')).toHaveLength(4);
    expect(checkSetup(twice, setup).findings.filter(({ code }) => IN_THE_WAY.includes(code))).toEqual([]);
  });

  it('is refused where the platform is too small for the shape', () => {
    expect(set(aDocument(), '20 vl', { shape: 'row' })).toMatchObject({
      ok: false,
      reason: expect.stringMatching(/choose another, or set fewer/),
    });
  });
});
