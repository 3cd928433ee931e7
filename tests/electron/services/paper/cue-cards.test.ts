/** Cue cards read back with pdf.js: every turn on exactly the cards it should be on, nothing over anything else. */

import { describe, expect, it } from 'vitest';
import { paperModel } from '#model/catalogue/paper.ts';
import { labelOf } from '#model/document/labels.ts';
import { cardGrid } from '#model/drawing/cards/imposition.ts';
import { cardSheets } from '#model/drawing/cards/card-sheets.ts';
import type { PlannedPaper } from '#model/drawing/cards/order.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import { reachResults } from '#model/checks/reach/reach.ts';
import { createMeasure } from '../../../../electron/services/fonts.ts';
import { printPlanned } from '../../../../electron/services/planned-print.ts';
import { openPdf, pageTexts, poppler, type PageText } from '../pdf-reading.ts';
import { demoDuo, longBook, wideConcertina, withoutLastTurn } from './plans.ts';

const MM = 72 / 25.4;

interface ReadCard {
  readonly player: string;
  readonly number: number;
  readonly texts: readonly PageText[];
  readonly words: string;
}

async function readCards(planned: PlannedPaper, paper: string) {
  const model = paperModel(paper);
  if (!model) throw new Error(`no paper ${paper}`);
  const print = { ...planned, parts: new Map(), booklets: [], cards: paper, now: new Date(0) };
  const { bytes } = await printPlanned(print);
  const pdf = await openPdf(bytes);
  const tools = { palette: PALETTES.print, measure: createMeasure() };
  const { cards } = cardSheets({ ...planned, units: 'metric', paper: model, tools });
  const grid = cardGrid(model);
  const sheets: { width: number; height: number; texts: PageText[] }[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    sheets.push({ width, height, texts: await pageTexts(page) });
  }
  const read = cards.map(({ player, number, sheet }, index): ReadCard => {
    const box = grid.cards[index % grid.cards.length]!;
    const { texts = [], height = 0 } = sheets[sheet] ?? {};
    const inside = texts.filter(
      ({ x, y }) =>
        x >= box.x * MM &&
        x < (box.x + box.width) * MM &&
        height - y > box.y * MM &&
        height - y <= (box.y + box.height) * MM,
    );
    return { player, number, texts: inside, words: inside.map(({ text }) => text).join(' ') };
  });
  return { bytes, sheets, read, grid };
}

/** Of the plan alone: who turns, and who reads where it is turned. */
function turnsOf({ instance, plan }: PlannedPaper, player: string): { number: number; own: boolean }[] {
  const inTime = plan.turns.toSorted((a, b) => a.at - b.at);
  return inTime.flatMap((turn, index) => {
    const sides = instance.stations.find(({ id }) => id === turn.station)?.sides ?? [];
    const own = turn.player === player;
    return own || sides.some(({ reader }) => reader === player) ? [{ number: index + 1, own }] : [];
  });
}

function overlap(a: PageText, b: PageText): boolean {
  const [across, along] = [
    Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x),
    Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y),
  ];
  return across > 0.05 && along > 0.05;
}

describe.each([
  ['a duo that shares a booklet', demoDuo],
  ['a long part that is a book', longBook],
  ['a plan that breaks rules', withoutLastTurn],
  ['a concertina of which four pages lie open', wideConcertina],
] as const)('cue cards of %s', (_, make) => {
  const plan = make();

  it.each(['a4', 'letter', 'a3', 'a5'])(
    'have every turn on exactly the cards it should be on, %s',
    async (paper) => {
      const { read } = await readCards(plan, paper);
      expect(plan.plan.turns.length).toBeGreaterThan(0);
      for (const { id } of plan.instance.players) {
        const words = read
          .filter(({ player }) => player === id)
          .map((card) => card.words)
          .join(' ');
        const told = [...words.matchAll(/Turn (\d+): (you)?/g)].map(([, number, you]) => ({
          number: Number(number),
          own: you !== undefined,
        }));
        expect(told).toEqual(turnsOf(plan, id));
        expect(words).toContain(labelOf(plan.document, plan.setup, id));
      }
    },
  );

  it.each(['a4', 'letter'])('have no text over another, beyond the card or under 7 pt, %s', async (paper) => {
    const { read, sheets, grid } = await readCards(plan, paper);
    expect(read.reduce((sum, { texts }) => sum + texts.length, 0)).toBe(
      sheets.reduce((sum, { texts }) => sum + texts.length, 0),
    );
    for (const [index, { texts }] of read.entries()) {
      const box = grid.cards[index % grid.cards.length]!;
      for (const [at, text] of texts.entries()) {
        expect(text.size).toBeGreaterThanOrEqual(7);
        expect(text.x).toBeGreaterThan((box.x + 7) * MM);
        expect(text.x + text.width).toBeLessThan((box.x + box.width - 7) * MM);
        for (const other of texts.slice(at + 1))
          expect(overlap(text, other), `"${text.text}" and "${other.text}"`).toBe(false);
      }
    }
  });

  it('come two on a sheet of A4 or Letter, to a hundredth of a point', async () => {
    for (const [paper, width, height] of [
      ['a4', 297, 210],
      ['letter', 279.4, 215.9],
    ] as const) {
      const { sheets, read } = await readCards(plan, paper);
      expect(sheets).toHaveLength(Math.ceil(read.length / 2));
      for (const sheet of sheets) {
        expect(sheet.width).toBeCloseTo(width * MM, 2);
        expect(sheet.height).toBeCloseTo(height * MM, 2);
      }
    }
  });
});

describe('a cue card of the demo', () => {
  it('says bar, time, hand, rest, need and whom a turn serves, and where things are', async () => {
    const duo = demoDuo();
    const { read } = await readCards(duo, 'a4');
    const turn = duo.plan.turns[0]!;
    const own = read.find(({ player }) => player === turn.player)!.words;
    const partner = read.find(({ player }) => player !== turn.player)!.words;
    expect(turn.servesPartner).toBe(true);
    expect(own).toContain(`bar ${turn.bar}`);
    expect(own).toContain(`${turn.hand} hand`);
    expect(own).toContain(`Hand and leaf free for ${(turn.window.to - turn.window.from).toFixed(1)} s`);
    expect(own).toContain(`the turn takes ${turn.seconds.toFixed(1)} s with care, hand there and back;`);
    expect(own).toContain('It is also for Viola (player 2)');
    expect(own).toContain('on centre, 1960 US');
    expect(own).toContain('A booklet over the ridge, 2 leaves');
    // By tests/helpers/lock-gates.ts: silent from bar 46 on, where the tempo is 92, and the bass clarinet plays from bar 52.
    expect(own).toMatch(/bar 46 2:34 Take up: Bass clarinet\. You play it from bar 52 on\./);
    // What the check of reach says of the same, and the time typed for a concert without a score is not there besides.
    const taken = reachResults(duo.document, duo.setup).find(({ grip }) => grip.purpose === 'pickUp')!;
    expect(own).toContain(
      `You rest for ${taken.freeTime!.toFixed(1)} s; the change takes ${taken.seconds.toFixed(1)} s, with care ${taken.secondsRange[1].toFixed(1)} s.`,
    );
    expect(own).not.toContain('Take it up in a rest of');
    expect(partner).toContain('turns stand 1 for you');
    expect(partner).not.toContain('you turn');
  });

  it('marks a turn that has little to spare, and no other', async () => {
    const duo = demoDuo();
    const { read } = await readCards(duo, 'a4');
    const thin = duo.plan.turns.filter(({ margin, seconds }) => margin < 1 || margin < seconds / 2);
    const said = read.flatMap(({ words }) => [...words.matchAll(/Thin: [\d.]+ s to spare!/g)]);
    expect(thin.length).toBeGreaterThan(0);
    expect(said).toHaveLength(thin.length);
  });

  it('embeds its fonts', async () => {
    const { bytes } = await readCards(demoDuo(), 'a4');
    const fonts = poppler('pdffonts', bytes);
    if (fonts === null) return;
    const rows = fonts.trim().split('\n').slice(2);
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect(row).toMatch(/\byes\s+yes\s+yes\b/);
  });
});

it('a concertina wider than two pages says how many lie open, and what a turn moves on', async () => {
  const wide = wideConcertina();
  const [paper, ...more] = wide.plan.stations;
  expect([paper?.kind, paper?.leaves, paper?.pagesAcross, more]).toEqual(['concertina', 2, [4], []]);
  const views = paper?.views[0] ?? [];
  // Each turn moves the row on by two: what lay on the right lies on the left.
  expect(views.slice(1).map((view) => view.slice(0, 2))).toEqual(
    views.slice(0, -1).map((view) => view.slice(2)),
  );
  const { read } = await readCards(wide, 'a4');
  const [card] = read;
  expect(card?.words).toContain(
    'A concertina, 2 leaves, 4 pages open at a time; each turn moves them on by two.',
  );
  // The pages that lie open at first and after each turn, as small rows on the right.
  const numbers = (card?.texts ?? []).filter(({ text }) => /^\d$/.test(text)).map(({ text }) => Number(text));
  expect(numbers.join(' ')).toContain(views.flat().join(' '));
});

it('a long part goes on over several cards, each of which says whose it is', async () => {
  const { read } = await readCards(longBook(), 'a4');
  expect(read.length).toBeGreaterThan(1);
  expect(read[0]!.words).toContain(`cue card 1 of ${read.length}`);
  for (const { words, number } of read.slice(1)) {
    expect(words).toContain(`cue card ${number} of ${read.length}`);
    expect(words).toContain('continued');
  }
});
