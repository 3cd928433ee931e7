/** Whoever has the print of a plan that breaks rules, and no screen, is told so; of another plan nothing is said. */

import { expect, it } from 'vitest';
import { judgePlan } from '#model/pages/planner/judge.ts';
import type { PlannedPaper } from '#model/drawing/cards/order.ts';
import { printPlanned } from '../../../../electron/services/planned-print.ts';
import { openPdf, pageTexts } from '../pdf-reading.ts';
import { demoDuo, withoutLastTurn } from './plans.ts';

type Asked = Pick<Parameters<typeof printPlanned>[0], 'booklets' | 'cards'>;

async function printed(planned: PlannedPaper, asked: Asked): Promise<string[]> {
  const { bytes } = await printPlanned({ ...planned, ...asked, parts: new Map(), now: new Date(0) });
  const pdf = await openPdf(bytes);
  const sheets: string[] = [];
  for (let number = 1; number <= pdf.numPages; number++)
    sheets.push((await pageTexts(await pdf.getPage(number))).map(({ text }) => text).join(' '));
  return sheets;
}

const WARNING = /This plan breaks (\d+) rules?; see the page turns in the editor\./g;

function warned(sheets: readonly string[]): string[] {
  return [...sheets.join(' ').matchAll(WARNING)].map(([, count]) => count ?? '');
}

const [whole, broken] = [demoDuo(), withoutLastTurn()];
const rules = String(judgePlan(broken.instance, broken.plan).violations.length);
const booklets = broken.plan.stations.map(({ station }) => ({ station, paper: 'a3' }));

it('every cue card says how many rules are broken', async () => {
  expect(Number(rules)).toBeGreaterThan(0);
  const sheets = await printed(broken, { booklets: [], cards: 'a4' });
  const cards = sheets.join(' ').match(/cue card( \d+ of \d+)?/g) ?? [];
  expect(cards.length).toBeGreaterThan(1);
  expect(warned(sheets)).toEqual(cards.map(() => rules));
});

it('so does the page of instructions of a booklet', async () => {
  const sheets = await printed(broken, { booklets, cards: null });
  expect(warned(sheets)).toEqual(booklets.map(() => rules));
});

it('a plan that keeps every rule has no such line', async () => {
  expect(warned(await printed(whole, { booklets, cards: 'a4' }))).toEqual([]);
});
