/** A turn in a bar that is played twice says in which of its times, wherever it is told. */

import { expect, it } from 'vitest';
import { paperModel } from '#model/catalogue/paper.ts';
import type { Music } from '#model/document/music.ts';
import { bookletOfStation } from '#model/drawing/booklet/planned.ts';
import { cardSheets } from '#model/drawing/cards/card-sheets.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import { planJson } from '#model/pages/planner/plan-json.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { wordsOf } from '#model/pages/planner/words.ts';
import { createMeasure } from '../../../../electron/services/fonts.ts';
import { aDocument, aPlayer, aScore, aStand, SETUP, SIDE } from '../../../helpers/build.ts';
import { textsIn } from '../../../shared-model/drawing/drawings.ts';
import { planned, repeatedBars } from './plans.ts';

const player = aPlayer({ name: 'Oboe' });
const stand = aStand({ y: 1500, sides: [{ ...SIDE, reader: player.id, pagesAcross: 2 }] });
const paper = planned(aDocument(player, stand, aScore({ players: [player.id], music: repeatedBars })), SETUP);

it('in the plan’s lines and data', () => {
  const result = planNow(paper.instance);
  expect(wordsOf(paper.instance, result).join('\n')).toMatch(/^0:28 bar 4, second time, player-1 turns/m);
  expect(planJson(paper.instance, result)).toMatchObject({
    plan: { turns: [{ at: 28, bar: '4', pass: { time: 2, of: 2 } }] },
  });
});

it('on the cue card', () => {
  const model = paperModel('a4');
  if (!model) throw new Error('there is A4');
  const tools = { palette: PALETTES.print, measure: createMeasure() };
  const { sheets } = cardSheets({ ...paper, units: 'metric', paper: model, tools });
  const written = JSON.stringify(sheets);
  expect(written).toContain('bar 4');
  expect(written).toContain('second time');
});

it('on the cue card, where an instrument is taken up', () => {
  const model = paperModel('a4');
  if (!model) throw new Error('there is A4');
  const tools = { palette: PALETTES.print, measure: createMeasure() };
  const [part] = repeatedBars.parts;
  // Bar 7 begins after the second time through bars 3 to 6; bar 4 asks for the other instrument each time.
  const instruments = [
    { bar: 3, name: 'Cor anglais' },
    { bar: 5, name: 'Oboe' },
  ];
  const changing = { ...repeatedBars, parts: [{ ...part!, instruments }] };
  const asked = planned(aDocument(player, stand, aScore({ players: [player.id], music: changing })), SETUP);
  const { sheets } = cardSheets({ ...asked, units: 'metric', paper: model, tools });
  const written = sheets.flatMap(({ children }) => textsIn(children).map(({ text }) => text));
  const taken = written.flatMap((words, index) => (words === 'Take up: Cor anglais.' ? [index] : []));
  expect(taken.map((index) => written.slice(index - 3, index))).toEqual([
    ['bar 4', '0:12', 'first time'],
    ['bar 4', '0:28', 'second time'],
  ]);
});

it('in the note on the leaf', () => {
  const [station] = paper.plan.stations;
  if (!station) throw new Error('the plan uses the stand');
  expect(bookletOfStation(paper, station).cues).toEqual(['in bar 4, second time (0:28)']);
});

it('and in which movement, where a bar is played once, and its number stands in two of them', () => {
  const twoMovements: Music = {
    ...repeatedBars,
    bars: repeatedBars.bars.map((bar, index) => ({ ...bar, number: String((index % 5) + 1) })),
    movements: [0, 5],
    order: [[0, 9]],
  };
  const once = planned(
    aDocument(player, stand, aScore({ players: [player.id], music: twoMovements })),
    SETUP,
  );
  expect(once.plan.turns.map(({ bar, pass }) => [bar, pass])).toEqual([['4 of movement 1', null]]);
  expect(wordsOf(once.instance, planNow(once.instance)).join('\n')).toMatch(
    /^0:12 bar 4 of movement 1, player-1 turns/m,
  );
});
