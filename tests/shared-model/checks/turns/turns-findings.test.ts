/**
 * MUSIC of the helpers: four bars of 4 s; page 1 is read from 0 to 8 s, page 2 from 8 s to the end and, with the bar before
 * it, needed from 4 s on, by the rules of model.md section 9.
 */

import { describe, expect, test } from 'vitest';
import { checkSetup } from '#model/checks/check-setup.ts';
import type { Finding } from '#model/checks/finding.ts';
import { createHarmCheck } from '#model/checks/remedies/harm.ts';
import { explain } from '#model/checks/sentences.ts';
import type { Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { judgedPlan } from '#model/pages/kept/judged.ts';
import { aDocument, aPagePlan, aPlayer, aScore, aStand, SETUP, SIDE } from '../../../helpers/build.ts';

function showing(...pages: readonly (number | null)[]): Document {
  return aDocument(
    aPlayer({ name: 'Oboe', x: 500, y: 2600 }),
    aStand({ lip: 1050, sides: [{ ...SIDE, reader: asId('player-1'), pagesAcross: 2 }] }),
    aScore({ players: [asId('player-1')] }),
    aPagePlan({
      stations: [
        {
          ...{ station: asId('stand-1'), kind: 'loose', leaves: 0, stackSide: 0 },
          pagesAcross: [2],
          views: [[pages]],
        },
      ],
    }),
  );
}

const broken = (document: Document) =>
  checkSetup(document, SETUP).findings.filter(({ code }) => code === 'turns.broken');

function only(document: Document) {
  const [finding, ...more] = broken(document);
  if (!finding || more.length > 0) throw new Error('not one finding of a kept plan');
  return finding;
}

describe('a page plan that is kept', () => {
  test('is no finding while it keeps every rule', () => expect(broken(showing(1, 2))).toEqual([]));

  test('is one finding, however many rules it breaks, which counts them all', () => {
    const document = showing(null, 9);
    const count = judgedPlan(document, SETUP)?.judgement.violations.length ?? 0;
    expect(count).toBeGreaterThan(1);
    expect(only(document)).toMatchObject({
      severity: 'fail',
      measured: count,
      required: 0,
      unit: 'count',
      subjects: ['player-1'],
      where: { x: 500, y: 2600 },
    });
  });

  test('is told by what leaves somebody without music for longest', () => {
    const worst = only(showing(null, 9)).detail['worst'];
    expect(worst).toMatch(/^Oboe \(player 1\) needs page [12] from .*not in view all that time\.$/);
  });

  test('says one thing where one rule is broken, and where the others are listed', () => {
    const one = showing(1, null);
    expect(explain(only(one), one, SETUP, 'metric')).toMatchObject({
      headline: 'The page plan that is kept breaks a rule',
      text: expect.stringMatching(/^Oboe \(player 1\) needs page 2 from [^.]*\.\d.*all that time\.$/),
      advice: 'Try: change the turns or the pages by hand, or plan the page turns again.',
    });
    const many = showing(null, 9);
    const { measured } = only(many);
    expect(explain(only(many), many, SETUP, 'metric')).toMatchObject({
      headline: `The page plan that is kept breaks ${measured} rules`,
      text: expect.stringMatching(new RegExp(`The page turns list the other (${measured - 1})?\\.?$`)),
    });
  });

  test('that cannot be judged is no finding, and neither is a setup without one', () => {
    const without = (kind: string) => {
      const document = showing(null, 9);
      const records = new Map([...document.records].filter(([, record]) => record.kind !== kind));
      return { ...document, records };
    };
    expect(broken(without('score'))).toEqual([]);
    expect(broken(without('pagePlan'))).toEqual([]);
  });
});

test('a change that makes a kept plan break a rule does harm', () => {
  const document = showing(1, 2);
  const finding: Finding = {
    ...{ code: 'reading.angle', severity: 'caution', subjects: [], detail: {} },
    ...{ measured: 50, required: 45, unit: 'degrees', where: null },
  };
  const harms = createHarmCheck({ document, setup: SETUP, finding });
  const change = { kind: 'turn', item: 'stand-1', by: 0 } as const;
  expect(harms(showing(1, 2), change)).toBe(false);
  expect(harms(showing(1, null), change)).toBe(true);
});
