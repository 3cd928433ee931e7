/** What is done to music and page plans, and why it is refused, in German. */

import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Outcome } from '#model/commands/command.ts';
import { keptParts } from '#model/commands/keep-parts.ts';
import { addPaper, setPage, setPagesAcross } from '#model/commands/plan-paper.ts';
import { addTurn } from '#model/commands/plan-turns.ts';
import { assignPart, setPartPdf } from '#model/commands/score.ts';
import { removePart, setPart } from '#model/commands/score-parts.ts';
import { turnTowards } from '#model/commands/turn.ts';
import { applyDiff } from '#model/document/diff.ts';
import type { Document } from '#model/document/document.ts';
import type { Part } from '#model/document/music.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import {
  aDocument,
  aPagePlan,
  aPdf,
  aPlayer,
  aScore,
  aStand,
  MUSIC,
  SETUP,
  SIDE,
} from '../../helpers/build.ts';

beforeEach(() => speakFrom('de', german));
afterEach(speakEnglish);

const player = aPlayer({ name: 'Oboe' });
const stand = aStand({ y: 1500, sides: [{ ...SIDE, reader: player.id, pagesAcross: 2 }] });
const [PART] = MUSIC.parts;

function withPages(count: number): Document {
  const pages = Array.from({ length: count }, (_, index) => ({ page: index + 1, bar: index }));
  const music = { ...MUSIC, parts: [{ ...part(), pages }] };
  return aDocument(player, stand, aScore({ players: [player.id], music }), aPagePlan());
}

function part(): Part {
  if (!PART) throw new Error('the music has a part');
  return PART;
}

function words(outcome: Outcome): string {
  return outcome.ok ? outcome.label : outcome.reason;
}

function done(document: Document, outcome: Outcome): Document {
  if (!outcome.ok) throw new Error(outcome.reason);
  return applyDiff(document, outcome.diff);
}

const paper = { setup: SETUP, stand: stand.id };
const turn = { station: stand.id, player: player.id, hand: 'left', place: 1, direction: 'forward' } as const;

it('names what is done, with the thing that it is done to behind it', () => {
  const document = withPages(4);
  const bound = done(document, addPaper(document, paper));
  expect([
    words(addPaper(document, paper)),
    words(setPage(bound, { ...paper, side: 0, state: 0, slot: 1, page: 2 })),
    words(setPagesAcross(bound, { ...paper, pages: 3 })),
    words(addTurn(bound, { setup: SETUP, turn })),
    words(assignPart(document, { score: aScore().id, part: 0, player: null })),
    words(setPartPdf(document, { score: aScore().id, part: 0, pdf: aPdf() })),
    words(turnTowards(document, { ids: [stand.id], towards: { id: player.id } })),
    words(turnTowards(document, { ids: [stand.id], towards: { x: 500, y: 500 } })),
  ]).toEqual([
    'Papier auflegen – Pult 1',
    'Seite 2 auflegen – Pult 1',
    'Seiten nebeneinander ändern – Pult 1',
    'Wendestelle hinzufügen',
    'festlegen, wer spielt – Oboe',
    'Noten-PDF festlegen – Oboe',
    'Pult 1 drehen, Blick auf Oboe (Spieler 1)',
    'Pult 1 drehen, Blick auf einen Punkt',
  ]);
});

it('leaves nothing open where a part has no name', () => {
  const document = withPages(4);
  const content = { ...part(), name: '' };
  const change = { score: aScore().id, part: 0, content, player: null };
  const unnamed = done(document, setPart(document, change));
  expect([
    words(setPart(document, change)),
    words(setPart(document, { ...change, part: null })),
    words(assignPart(unnamed, { score: aScore().id, part: 0, player: player.id })),
    words(setPartPdf(unnamed, { score: aScore().id, part: 0, pdf: aPdf() })),
  ]).toEqual([
    'Stimme ändern',
    'Stimme hinzufügen',
    'festlegen, wer spielt',
    'Noten-PDF festlegen – Stimme 1',
  ]);
});

it.each([
  [1, 'Oboe (Spieler 1) hat keine Seite 9: Die Stimme hat eine Seite.'],
  [4, 'Oboe (Spieler 1) hat keine Seite 9: Die Stimme hat 4 Seiten.'],
])('refuses a page beyond a part of %i', (count, reason) => {
  const document = withPages(count);
  const bound = done(document, addPaper(document, paper));
  expect(words(setPage(bound, { ...paper, side: 0, state: 0, slot: 0, page: 9 }))).toBe(reason);
});

it('refuses to take out the only part', () => {
  expect(words(removePart(withPages(4), { score: aScore().id, part: 0 }))).toBe(
    'Es ist die einzige Stimme: stattdessen die Musik entfernen.',
  );
});

it.each([
  [player.id, null, '„Harfe“ gibt es nicht mehr, auch nicht, wer sie spielte'],
  [null, aPdf(), '„Harfe“ gibt es nicht mehr, auch nicht das PDF dazu'],
  [player.id, aPdf(), '„Harfe“ gibt es nicht mehr, auch nicht, wer sie spielte, und das PDF dazu'],
])('tells what went with a part: %s, %j', (plays, pdf, phrase) => {
  const music = { ...MUSIC, parts: [part(), { ...part(), id: 'P2', name: 'Harfe' }] };
  const known = aScore({ music, players: [null, plays], pdfs: [null, pdf] });
  expect(keptParts(MUSIC, known, [player]).dropped).toEqual([phrase]);
});
