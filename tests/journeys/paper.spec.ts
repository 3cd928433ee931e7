/** From planned page turns to paper: booklets and cue cards saved from the window, read back, and folded. */

import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from '@playwright/test';
import type { PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { partPdf } from '../electron/services/booklet/invented-parts.ts';
import { openPdf } from '../electron/services/pdf-reading.ts';
import type { EdgeName, FlatPanel, FlatStrip } from '../oracles/fold-simulation/flat-strip.ts';
import { foldOverRidge } from '../oracles/fold-simulation/fold.ts';
import { axeComplaints } from './axe.ts';
import { expect, test, type Editor } from './editor.ts';

const DEMO = new URL('../../assets/demo-concert.standlines', import.meta.url);
const CLARINET = 'Clarinet (player 1)';
const VIOLA = 'Viola (player 2)';

/** The demo, its first parts being printed in PDFs with covers. */
async function withParts(home: string, names: readonly string[]): Promise<void> {
  const file = JSON.parse(readFileSync(DEMO, 'utf8')) as { records: Record<string, unknown>[] };
  const score = file.records.find(({ kind }) => kind === 'score') as { pdfs: unknown[]; players: unknown[] };
  const pdfs = await Promise.all(names.map((name) => withCover(home, name)));
  score.pdfs = score.players.map((_, index) => pdfs[index] ?? null);
  writeFileSync(join(home, 'printed.standlines'), `${JSON.stringify(file, null, 2)}\n`);
}

async function withCover(home: string, name: string): Promise<unknown> {
  const bytes = await partPdf(name, { pages: 7 });
  writeFileSync(join(home, `${name}.pdf`), bytes);
  return {
    file: `${name}.pdf`,
    sha256: createHash('sha256').update(bytes).digest('hex'),
    sizes: Array.from({ length: 7 }, () => ({ width: 210, height: 297 })),
    pages: [2, 3, 4, 5, 6, 7],
    staffSize: null,
  };
}

interface Words {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly onHead: boolean;
}

async function wordsOn(page: PDFPageProxy): Promise<Words[]> {
  const { items } = await page.getTextContent();
  return items.flatMap((item) => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [a = 0, b = 0, , , x = 0, y = 0] = item.transform as number[];
    return [{ text: item.str, x, y, size: Math.hypot(a, b), onHead: a < 0 }];
  });
}

async function readPdf(path: string) {
  const pdf = await openPdf(new Uint8Array(readFileSync(path)));
  const pages = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    pages.push({ ...page.getViewport({ scale: 1 }), words: await wordsOn(page) });
  }
  return pages;
}

type Sheet = Awaited<ReturnType<typeof readPdf>>[number];

/** What is printed on a sheet of two pages and nothing else that the product knows. */
function panelOf({ words, width }: Sheet): FlatPanel {
  const [label] = words.filter(({ text }) => / view \d+ of \d+/.test(text));
  if (!label) throw new Error('a panel says whose it is');
  const reader = label.text.split(', ')[0] ?? '';
  const pages = [0, 1].map((half) => {
    const here = words.find(
      ({ text, x, size }) =>
        (/^clarinet page \d+$/.test(text) || (size > 100 && /^\d+$/.test(text))) &&
        x > (half * width) / 2 - (label.onHead ? 0 : 1) &&
        (half === 0 ? x < width / 2 : true),
    );
    if (!here) return null;
    const part = /^clarinet page (\d+)$/.exec(here.text)?.[1];
    return `${reader} ${part === undefined ? here.text : Number(part) - 1}`;
  });
  const upright = !label.onHead;
  return { upright, pages: upright ? pages : pages.toReversed() };
}

function stripOf(sheets: readonly Sheet[]): FlatStrip {
  const panels = sheets.map(panelOf);
  const ends = new Map<string, { panel: number; edge: EdgeName }[]>();
  sheets.forEach(({ words, height }, panel) => {
    for (const { text, y } of words) {
      const joint = /^tape ([A-Z]+) to \1 /.exec(text)?.[1];
      if (joint === undefined) continue;
      const atTop = y > height / 2;
      const edge: EdgeName = atTop === panels[panel]!.upright ? 'head' : 'foot';
      ends.set(joint, [...(ends.get(joint) ?? []), { panel, edge }]);
    }
  });
  const tapes = [...ends.values()].map(([first, second]) => {
    if (!first || !second) throw new Error('a joint has two ends');
    return { first, second };
  });
  return { panels, tapes };
}

/** The pages of a stand as the panel of the page turns shows them: by state, for one reader. */
async function shownTo(table: Locator, column: number): Promise<(string | null)[][]> {
  const rows = await table.locator('tbody tr').all();
  return Promise.all(
    rows.map(async (row) => {
      const pages = await row.locator('td').nth(column).locator('.page').allInnerTexts();
      return pages.map((page) => (/^\d+$/.test(page.trim()) ? page.trim() : null));
    }),
  );
}

const named = (who: string, views: (string | null)[][]) =>
  views.map((view) => view.map((page) => page && `${who} ${page}`));

async function openPaper(editor: Editor, page: Page): Promise<Locator> {
  await page.getByRole('button', { name: 'Page turns', exact: true }).click();
  const turns = page.getByRole('region', { name: 'Page turns', exact: true });
  await expect(turns.getByRole('list', { name: 'Turns' }).getByRole('button')).not.toHaveCount(0);
  await turns.getByRole('button', { name: 'Print booklets and cards…' }).click();
  await expect(editor.dialog).toContainText('Booklets and cue cards');
  return turns;
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`booklets and cards of a plan are saved, agree with it, and fold, ${colorScheme}`, async ({
    editor,
    page,
    program,
  }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await withParts(program.home, ['clarinet']);
    await editor.openFile('printed');
    await expect(editor.title).toContainText('printed');
    await expect(editor.title).toContainText('printed.standlines');
    const turns = await openPaper(editor, page);

    // The part's PDF is found beside the concert without a question; the other part has none.
    await expect(editor.dialog).toContainText('clarinet.pdf');
    await expect(editor.dialog).toContainText('numbered blanks');
    await expect(editor.dialog).toContainText('every page has a sheet of its own');
    expect(await axeComplaints(page), 'paper').toEqual([]);

    // Paper that a page does not go on is refused where it is chosen, and nothing can be saved.
    const paper = editor.dialog.getByLabel('Paper of stand 1');
    await paper.selectOption('a5');
    await expect(editor.dialog.getByRole('alert')).toContainText('does not go on A5');
    await expect(editor.dialog.getByRole('button', { name: /^Save \d+ PDFs/ })).toBeDisabled();
    await paper.selectOption('a3');
    await expect(editor.dialog.getByRole('alert')).toHaveCount(0);
    await expect(editor.dialog).toContainText('6 sheets at true size, and 1 of instructions');
    await expect(editor.dialog.getByRole('img', { name: /^Preview: .+: sheet 1, panel/ })).toBeVisible();
    await editor.dialog.getByRole('button', { name: 'Next sheet' }).click();
    await expect(editor.dialog.getByText('Sheet 2 of 7')).toBeVisible();
    await editor.dialog.getByRole('button', { name: /^Cue cards/ }).click();
    await expect(editor.dialog.getByRole('img', { name: /cue cards, sheet 1/ })).toBeVisible();

    await editor.dialog.getByRole('button', { name: 'Save 2 PDFs…' }).click();
    await editor.dialog.last().getByRole('button', { name: 'Save here' }).click();
    await expect(editor.dialog).toHaveCount(0);
    const [booklet, cards] = ['stand 1', 'cue cards'].map((what) =>
      join(program.home, `Lock Gates, ${what}.pdf`),
    ) as [string, string];
    expect(existsSync(booklet) && existsSync(cards)).toBe(true);

    // What they say is what the window shows: each turn with its bar, its time and who makes it.
    const list = turns.getByRole('list', { name: 'Turns' }).getByRole('button');
    const said = await list.allInnerTexts();
    const printed = await readPdf(booklet);
    const carded = (await readPdf(cards)).flatMap(({ words }) => words.map(({ text }) => text)).join(' ');
    expect(said.length).toBeGreaterThan(0);
    for (const [index, words] of said.entries()) {
      const [, minutes, seconds, bar] = /(\d+):(\d\d)[\d.]*, bar (\S+)/.exec(words) ?? [];
      const cue = `in bar ${bar} (${minutes}:${seconds})`;
      const onPanels = printed.flatMap(({ words: all }) => all).filter(({ text }) => text.startsWith(cue));
      expect(onPanels.map(({ text }) => text).some((text) => text.endsWith('turn for both'))).toBe(true);
      expect(onPanels.length).toBeGreaterThanOrEqual(2);
      const hand = /(left|right) hand/.exec(words)?.[0];
      expect(carded).toContain(`Turn ${index + 1}: you turn stand 1, ${hand}`);
      expect(carded).toContain(`Turn ${index + 1}: ${CLARINET} turns stand 1 for you`);
      expect(carded).toContain(`bar ${bar}`);
    }

    // Taped and folded as the sheets say, each reader sees what the plan says.
    const sheets = printed.filter(({ words }) => words.some(({ text }) => /^tape [A-Z]+ to/.test(text)));
    expect(sheets).toHaveLength(6);
    const table = turns.getByRole('table');
    const [clarinet, viola] = [
      named(CLARINET, await shownTo(table, 0)),
      named(VIOLA, await shownTo(table, 1)),
    ];
    const fixedFirst = sheets[0]!.words.find(({ text }) => text.startsWith('fix to'))?.text ?? '';
    const clarinetFirst = fixedFirst.includes(CLARINET);
    await expect(turns).toContainText(`at first all leaves lie before ${CLARINET}`);
    const { seen, problems } = foldOverRidge(stripOf(sheets), clarinetFirst ? 0 : 1, clarinet.length - 1);
    expect(problems).toEqual([]);
    expect(seen).toEqual(
      clarinet.map((view, state) => (clarinetFirst ? [view, viola[state]] : [viola[state], view])),
    );
  });
}

/** Where the words of a part's page stand on a sheet, points from its top left corner; 84 x 12 around them. */
interface Spot {
  readonly x: number;
  readonly y: number;
}

const WORDS = { width: 84, height: 12 };

const spotOf = ({ x, y, onHead }: Words, height: number): Spot =>
  onHead ? { x: x - WORDS.width, y: height - y } : { x, y: height - y - WORDS.height };

/** Share of the dots round each spot that are dark in the preview. */
function inkAt(preview: Locator, spots: readonly Spot[], width: number): Promise<number[]> {
  return preview.locator('canvas').evaluate(
    (canvas: HTMLCanvasElement, { spots: all, width: sheet, size }) => {
      const pen = canvas.getContext('2d')!;
      const dots = canvas.width / sheet;
      return all.map(({ x, y }) => {
        const { data } = pen.getImageData(x * dots, y * dots, size.width * dots, size.height * dots);
        let dark = 0;
        for (let at = 0; at < data.length; at += 4) dark += (data[at] ?? 255) < 160 ? 1 : 0;
        return dark / (data.length / 4);
      });
    },
    { spots: [...spots], width, size: WORDS },
  );
}

test('the preview shows the pages of the part where the print has them', async ({
  editor,
  page,
  program,
}) => {
  await withParts(program.home, ['clarinet', 'viola']);
  await editor.openFile('printed');
  await expect(editor.title).toContainText('printed');
  // Whoever saves before it is known where the parts are gets their pages, not blanks.
  await page.route(/part\.hash/, (route) => setTimeout(() => void route.fallback(), 1500));
  await openPaper(editor, page);
  await editor.dialog.getByLabel('Paper of stand 1').selectOption('a3');
  await editor.dialog.getByRole('button', { name: 'Save 2 PDFs…' }).click();
  await editor.dialog.last().getByRole('button', { name: 'Save here' }).click();
  await expect(editor.dialog).toHaveCount(0);
  const printed = await readPdf(join(program.home, 'Lock Gates, stand 1.pdf'));

  await page
    .getByRole('region', { name: 'Page turns', exact: true })
    .getByRole('button', { name: 'Print booklets and cards…' })
    .click();
  await editor.dialog.getByLabel('Paper of stand 1').selectOption('a3');
  const heads = new Set<boolean>();
  for (const [index, { words, width, height }] of printed.slice(0, 6).entries()) {
    await expect(editor.dialog.getByText(`Sheet ${index + 1} of 7`)).toBeVisible();
    const preview = editor.dialog.getByRole('img', { name: `sheet ${index + 1}, panel` });
    const pages = words.filter(({ text }) => /^(clarinet|viola) page \d+$/.test(text));
    const spots = pages.map((each) => spotOf(each, height));
    // The same spots with the sheet turned round: there the pages have nothing.
    const others = spots.map(({ x, y }) => ({
      x: width - x - WORDS.width,
      y: height - y - WORDS.height,
    }));
    for (const { onHead } of pages) heads.add(onHead);
    if (pages.length > 0) {
      await expect
        .poll(async () => Math.min(...(await inkAt(preview, spots, width))), `sheet ${index + 1}`)
        .toBeGreaterThan(0.05);
      expect(Math.max(...(await inkAt(preview, others, width))), `sheet ${index + 1}`).toBe(0);
    }
    if (index < 5) await editor.dialog.getByRole('button', { name: 'Next sheet' }).click();
  }
  // Of the two readers one has his pages upright, the other on their heads.
  expect([...heads].toSorted()).toEqual([false, true]);
});

test('a file that is there already is not written over unless it is said, and one file may hold all', async ({
  editor,
  page,
  program,
}) => {
  const kept = join(program.home, 'Lock Gates, cue cards.pdf');
  writeFileSync(kept, 'mine');
  await openPaper(editor, page);
  await editor.dialog.getByRole('button', { name: 'Save 2 PDFs…' }).click();
  await editor.dialog.last().getByRole('button', { name: 'Save here' }).click();
  await expect(editor.dialog.getByRole('alert')).toContainText(
    '“Lock Gates, cue cards.pdf” is already there.',
  );
  expect(readFileSync(kept, 'utf8')).toBe('mine');
  expect(existsSync(join(program.home, 'Lock Gates, stand 1.pdf'))).toBe(false);

  await editor.dialog.getByLabel('All in one file').check();
  await editor.dialog.getByRole('button', { name: 'Save PDF…' }).click();
  await editor.dialog.last().getByRole('button', { name: 'Save here' }).click();
  // A page for each sheet on A4 is said once more, so the dialog stays.
  await expect(editor.dialog.first()).toContainText('Saved Lock Gates, booklets and cue cards.pdf');
  await expect(editor.dialog.first()).toContainText('does not go on A4');
  const all = await readPdf(join(program.home, 'Lock Gates, booklets and cue cards.pdf'));
  expect(all).toHaveLength(12 + 2 + 1);
  expect(all.at(-1)!.words.some(({ text }) => text === CLARINET)).toBe(true);
});
