import { describe, expect, test } from 'vitest';
import { whatIf } from '#model/checks/remedies/what-if.ts';
import { sightReport } from '#model/checks/sightlines/sight-report.ts';
import { standModel } from '#model/catalogue/stands.ts';
import type { Document } from '#model/document/document.ts';
import { inSetup, setupsOf } from '#model/document/document.ts';
import { aDocument, aPlayer, aShape, aStand, SETUP } from '../../../helpers/build.ts';
import { demoConcert } from './demo.ts';

const PLAYER = aPlayer();
/** Between the player and the house, high and square to both. */
const STAND = aStand({ y: 1500, lip: 1100, tilt: 80, facing: 180 });
const base = aDocument(PLAYER, STAND);

const figures = (document: Document) =>
  sightReport(document, SETUP).figures.map(({ player, seenWell }) => ({ player, seenWell }));
const plain = (seen: readonly { player: string; seenWell: number }[] | undefined) =>
  seen?.map(({ player, seenWell }) => ({ player, seenWell }));
const withStand = (change: Partial<typeof STAND>) => aDocument(PLAYER, { ...STAND, ...change });

describe('if this were not there', () => {
  test('as it stands, and without it, are what the whole check says of either', () => {
    const answer = whatIf(base, SETUP, STAND.id);
    expect(plain(answer?.now)).toEqual(figures(base));
    expect(plain(answer?.gone)).toEqual(figures(aDocument(PLAYER)));
    expect(answer?.gone[0]?.mean).toBeGreaterThan((answer?.now[0]?.mean ?? NaN) + 0.1);
  });

  test('lowered as far as its model goes', () => {
    const least = standModel(STAND.model)?.lip.least ?? NaN;
    const answer = whatIf(base, SETUP, STAND.id);
    expect(answer?.lowered?.by).toBe(STAND.lip - least);
    expect(plain(answer?.lowered?.seen)).toEqual(figures(withStand({ lip: least })));
  });

  test('a desk that is down already is not lowered', () => {
    const least = standModel(STAND.model)?.lip.least ?? NaN;
    expect(whatIf(withStand({ lip: least }), SETUP, STAND.id)?.lowered).toBeNull();
  });

  test('turned to where most is seen: what the check says of the turned desk, and more than now', () => {
    const answer = whatIf(base, SETUP, STAND.id);
    const turned = answer?.turned;
    if (!turned) throw new Error('no turn found');
    expect(plain(turned.seen)).toEqual(figures(withStand({ facing: STAND.facing + turned.by })));
    expect(turned.seen[0]?.mean).toBeGreaterThan(answer.now[0]?.mean ?? NaN);
  });

  test('what is built in is not turned, what has no desk is not lowered', () => {
    const pillar = aShape({ y: 1000 });
    const answer = whatIf(aDocument(PLAYER, pillar), SETUP, pillar.id);
    expect(answer).toMatchObject({ lowered: null, turned: null });
    expect(answer?.gone[0]?.mean).toBeGreaterThan(answer?.now[0]?.mean ?? NaN);
  });

  test('of what hides nobody there is nothing to say', () => {
    expect(whatIf(base, SETUP, 'door-1')).toBeNull();
    expect(whatIf(base, SETUP, 'no such thing')).toBeNull();
  });
});

test('in the demo nothing gets worse for anybody when a thing is taken away', () => {
  const document = demoConcert();
  for (const setup of setupsOf(document)) {
    for (const { id } of inSetup(document, setup.id, 'stand')) {
      const answer = whatIf(document, setup.id, id);
      if (!answer) throw new Error(`${id} hides nobody`);
      answer.gone.forEach(({ mean, seenWell }, index) => {
        const now = answer.now[index] ?? { mean: NaN, seenWell: NaN };
        expect(mean).toBeGreaterThanOrEqual(now.mean - 1e-12);
        expect(seenWell).toBeGreaterThanOrEqual(now.seenWell - 1e-12);
      });
    }
  }
});
