import { describe, expect, it } from 'vitest';
import { changeover } from '#model/programme/changeover.ts';
import { compared, compareSetups } from '#model/programme/compare.ts';
import {
  neighboursOf,
  placeInProgramme,
  setupsWithVariants,
  variantsWith,
} from '#model/programme/programme.ts';
import { stockCheck, shortages, thingsMissing } from '#model/programme/stock-check.ts';
import { shortageWords } from '#model/programme/stock-words.ts';
import { checkSetup } from '#model/checks/check-setup.ts';
import { asId, type Id } from '#model/document/ids.ts';
import { documentOf, find, type Document } from '#model/document/document.ts';
import type { Stock } from '#model/document/records.ts';
import {
  aLamp,
  aPlayer,
  aSeat,
  aSeatBlock,
  aSetup,
  aShape,
  aStand,
  SETUP,
  SIDE,
} from '../../helpers/build.ts';
import { SECOND, twoSetups } from './programme-scenes.ts';

const THIRD: Id<'setup'> = asId('setup-3');
const chair = { model: 'orchestra-chair', height: 460 };

const stock = (id: number, fields: Partial<Stock>): Stock => ({
  id: asId(`stock-${id}`),
  kind: 'stock',
  name: '',
  item: 'stand',
  model: '',
  owned: 0,
  borrowed: 0,
  storage: null,
  ...fields,
});

/** First: three stands (a pair is two), two chairs. Second: two stands, a lamp with its cable. Third, a variant of it: five stands. */
function concert(...rows: Stock[]): Document {
  const base = twoSetups(
    aStand({ id: 'stand-1' }),
    aStand({ id: 'stand-2', form: 'backToBack', sides: [SIDE, SIDE], x: 900 }),
    aPlayer({ id: 'player-1', chair }),
    aSeat({ id: 'seat-1', x: 1500 }),
    aSeat({ id: 'seat-2', x: 2500, model: 'wheelchair' }),
    ...[0, 1].map((index) => aStand({ id: `stand-${3 + index}`, setup: SECOND, x: 800 * index })),
    aLamp({
      setup: SECOND,
      cable: [
        { x: 0, y: 2000 },
        { x: 1000, y: 2000 },
      ],
    }),
    ...[0, 1, 2, 3, 4].map((index) =>
      aStand({ id: `stand-${5 + index}`, setup: THIRD, x: 700 * index - 1400 }),
    ),
    aShape({ id: 'shape-1', setup: null }),
    aShape({ id: 'shape-2', setup: null, name: 'Lectern', fixed: false, x: 3000 }),
    ...rows,
  );
  return documentOf([
    ...base.records.values(),
    aSetup({ id: THIRD, name: 'Second, wider', order: 3, variantOf: SECOND }),
  ]);
}

const needOf = (document: Document, item: string) =>
  stockCheck(document).lines.find(({ thing }) => thing.item === item);

describe('the stock', () => {
  it('counts a pair as two, chairs of players and others, cables, and what stays, but no wheelchair and no building', () => {
    const document = concert();
    expect(needOf(document, 'stand')).toMatchObject({ needs: [3, 2, 5], most: 3 });
    expect(needOf(document, 'seat')).toMatchObject({ needs: [2, 0, 0], most: 2 });
    expect(needOf(document, 'cable')?.needs).toEqual([0, 1, 0]);
    expect(stockCheck(document).lines.filter(({ thing }) => thing.item === 'shape')).toMatchObject([
      { thing: { model: 'Lectern' }, needs: [1, 1, 1] },
    ]);
    expect(stockCheck(document).lines.some(({ thing }) => thing.model === 'wheelchair')).toBe(false);
  });

  it('tells what is missing, in variants too, on both sides of enough', () => {
    const with3 = concert(stock(1, { model: 'orchestral', owned: 2, borrowed: 1 }));
    expect(shortages(stockCheck(with3)).map(({ setup, short }) => [setup.id, short])).toEqual([[THIRD, 2]]);
    expect(shortageWords(stockCheck(with3))[0]).toBe(
      'Orchestral stand: 2 too few for Second, wider (a variant), which needs 5.',
    );
    const with2 = concert(stock(1, { model: 'orchestral', owned: 2 }));
    expect(shortages(stockCheck(with2)).map(({ setup, short }) => [setup.id, short])).toEqual([
      [SETUP, 1],
      [THIRD, 3],
    ]);
    expect(shortages(stockCheck(concert(stock(1, { model: 'orchestral', owned: 5 }))))).toEqual([]);
    expect(needOf(with3, 'stand')?.waiting).toEqual([0, 1, 0]);
  });

  it('counts missing things of what is played, a thing once however many setups lack it, and nothing of variants', () => {
    const missing = (owned: number) =>
      thingsMissing(stockCheck(concert(stock(1, { model: aStand().model, owned }))));
    // Three, two and, in the variant, five are needed.
    expect([0, 1, 2, 3, 4].map(missing)).toEqual([3, 2, 1, 0, 0]);
  });

  it('fills in with things of any model, each once', () => {
    const document = concert(
      stock(1, { model: 'orchestral', owned: 4 }),
      stock(2, { owned: 1 }),
      stock(3, { item: 'seat', model: 'folding-chair', owned: 9 }),
    );
    expect(needOf(document, 'stand')?.short).toEqual([0, 0, 0]);
    // Folding chairs are no orchestra chairs.
    expect(needOf(document, 'seat')?.short).toEqual([2, 0, 0]);
  });

  it('says nothing is short of which nobody counted', () => {
    expect(shortages(stockCheck(concert()))).toEqual([]);
    expect(shortageWords(stockCheck(concert())).join()).toMatch(/^Not counted.*Orchestral stand/);
  });
});

describe('setups in their order', () => {
  it('have their variants behind them, whichever was made first', () => {
    const document = documentOf([
      ...twoSetups().records.values(),
      aSetup({ id: SETUP, order: 1, variantOf: THIRD }),
      aSetup({ id: THIRD, order: 3 }),
    ]);
    expect(setupsWithVariants(document).map(({ id }) => id)).toEqual([SECOND, THIRD, SETUP]);
    expect(setupsWithVariants(document).map((setup) => placeInProgramme(document, setup))).toEqual([1, 2, 2]);
  });
});

describe('a comparison', () => {
  const figure = { kind: 'fails', player: '', unit: 'count', better: 'less' } as const;

  it('says which is best and by how much, and ties', () => {
    expect(compared(figure, [3, 1, 2])).toMatchObject({ best: [1], by: 1 });
    expect(compared(figure, [2, 2, 5])).toMatchObject({ best: [0, 1], by: 0 });
    expect(compared({ ...figure, unit: 'share', better: 'more' }, [0.81, 0.814])).toMatchObject({
      best: [0, 1],
      by: 0,
    });
    expect(compared({ ...figure, unit: 'share', better: 'more' }, [0.81, 0.83]).by).toBeCloseTo(0.02, 9);
    expect(compared(figure, [null, 4])).toMatchObject({ best: [], by: null });
  });

  it('of a setup and its variant takes the figures of the checks and of the changeovers round it', () => {
    const seen = [
      aPlayer({ id: 'player-8', name: 'Viola', setup: SECOND }),
      aPlayer({ id: 'player-9', name: 'Viola', setup: THIRD, y: 800 }),
    ];
    const document = documentOf([...concert().records.values(), aSeatBlock(), ...seen]);
    const second = find(document, SECOND);
    if (!second) throw new Error('no second setup');
    expect(neighboursOf(document, second)).toEqual({ before: SETUP, after: null });
    const setups = variantsWith(document, second);
    const { figures, wins } = compareSetups(document, setups);
    const row = (kind: string) => figures.find((each) => each.kind === kind);
    const seenWell = setups.map(({ id }) => checkSetup(document, id).sight.figures[0]?.seenWell);
    expect(row('seenWell')).toMatchObject({ player: 'Viola', values: seenWell });
    const before = setups.map(({ id }) => changeover(document, SETUP, id));
    const after = setups.map(({ id }) => changeover(document, id, null));
    expect(row('changeBefore')?.values).toEqual(before.map(({ time }) => time.usual));
    expect(row('changeAfter')?.values).toEqual(after.map(({ time }) => time.usual));
    const [carriedBefore, carriedAfter] = [before, after].map((each) => each.map(({ carried }) => carried));
    expect(row('carried')?.values).toEqual(
      carriedBefore?.map((each, index) => each + (carriedAfter?.[index] ?? NaN)),
    );
    expect(wins.reduce((a, b) => a + b, 0)).toBe(figures.filter(({ best }) => best.length === 1).length);
  });
});
