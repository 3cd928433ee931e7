/** Booklets and cue cards in German: bars and times in a German's order, nothing cut, and whose left and right is meant. */

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { paperModel } from '#model/catalogue/paper.ts';
import type { Music } from '#model/document/music.ts';
import { bookletOfStation } from '#model/drawing/booklet/planned.ts';
import { cardSheets } from '#model/drawing/cards/card-sheets.ts';
import type { PlannedPaper } from '#model/drawing/cards/order.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { wordsOf } from '#model/pages/planner/words.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { drawnBooklet } from '../../../../electron/services/booklet.ts';
import { createMeasure } from '../../../../electron/services/fonts.ts';
import { jobOfStation, printPlanned } from '../../../../electron/services/planned-print.ts';
import { aDocument, aPlayer, aScore, aStand, SETUP, SIDE } from '../../../helpers/build.ts';
import { textsIn } from '../../../shared-model/drawing/drawings.ts';
import { demoDuo, longBook, planned, repeatedBars, wideConcertina } from './plans.ts';

beforeEach(() => speakFrom('de', german));
afterEach(speakEnglish);

const twoMovements: Music = {
  ...repeatedBars,
  bars: repeatedBars.bars.map((bar, index) => ({ ...bar, number: String((index % 5) + 1) })),
  movements: [0, 5],
  order: [[0, 9]],
};

function oboeWith(music: Music): PlannedPaper {
  const player = aPlayer({ name: 'Oboe' });
  const stand = aStand({ y: 1500, sides: [{ ...SIDE, reader: player.id, pagesAcross: 2 }] });
  return planned(aDocument(player, stand, aScore({ players: [player.id], music })), SETUP);
}

function onCards(paper: PlannedPaper): string[] {
  const model = paperModel('a4');
  if (!model) throw new Error('there is A4');
  const tools = { palette: PALETTES.print, measure: createMeasure() };
  const { sheets } = cardSheets({ ...paper, units: 'metric', paper: model, tools });
  return sheets.flatMap(({ children }) => textsIn(children).map(({ text }) => text));
}

function printOf(paper: PlannedPaper) {
  return { ...paper, parts: new Map(), booklets: [], cards: 'a4', now: new Date(0) };
}

function inBooklets(paper: PlannedPaper, model: string): string[] {
  return paper.plan.stations
    .flatMap((station) => drawnBooklet(jobOfStation(printOf(paper), station, model)).sheets)
    .flatMap(({ children }) => textsIn(children).map(({ text }) => text));
}

describe('a turn', () => {
  it('tells its bar, its time and which time through it in lines of their own', () => {
    const written = onCards(oboeWith(repeatedBars));
    const at = written.indexOf('Takt 4');
    expect(written.slice(at, at + 3)).toEqual(['Takt 4', '0:28', '2. Mal']);
    const moved = onCards(oboeWith(twoMovements));
    const there = moved.indexOf('Takt 4');
    expect(moved.slice(there, there + 3)).toEqual(['Takt 4', '0:12', 'im 1. Satz']);
  });

  it('stands on the leaf and in the plan’s lines with a decimal comma', () => {
    const paper = oboeWith(repeatedBars);
    const [station] = paper.plan.stations;
    if (!station) throw new Error('the plan uses the stand');
    expect(bookletOfStation(paper, station).cues).toEqual(['in Takt 4, 2. Mal (0:28)']);
    expect(wordsOf(paper.instance, planNow(paper.instance)).join('\n')).toMatch(
      /^0:28, Takt 4, 2\. Mal: player-1 blättert um, stand-1, (linke|rechte) Hand, nach Seite 2; \d+,\d s übrig$/m,
    );
  });
});

describe('a cue card', () => {
  it('says that left and right are as seen from the house, which the English one has no need to', () => {
    const sides = 'li, re: vom Saal aus gesehen; hi: nach hinten, vo: nach vorn.';
    const duo = demoDuo();
    expect(onCards(duo)).toContain(sides);
    speakEnglish();
    expect(onCards(duo).filter((words) => /^SL|Saal/.test(words))).toEqual([]);
  });

  it('tells one who turns with which hand, and another who does it for him', () => {
    const written = onCards(demoDuo()).join(' ');
    expect(written).toContain('1. Umblättern: Clarinet (Spieler 1) an Pult 1, nach Seite 2.');
    expect(written).toContain('1. Umblättern: Pult 1, linke Hand, nach Seite 2.');
    expect(written).toContain('Ein Heft über dem First, 2 Wendeblätter,');
  });

  it('is a PDF in German', async () => {
    const { bytes } = await printPlanned(printOf(demoDuo()));
    expect(Buffer.from(bytes).toString('latin1')).toMatch(/\/Lang \(de\)/);
  });
});

it.each([
  ['a booklet over the ridge on A3', demoDuo, 'a3'],
  ['a booklet over the ridge on A4', demoDuo, 'a4'],
  ['a wide concertina', wideConcertina, 'a4'],
  ['a long book', longBook, 'a4'],
])('%s has room for its words wherever English has', (_, plan, model) => {
  const paper = plan();
  const cut = (): number =>
    [...inBooklets(paper, model), ...onCards(paper)].filter((words) => words.endsWith('…')).length;
  const inGerman = cut();
  speakEnglish();
  expect(inGerman).toBeLessThanOrEqual(cut());
});
