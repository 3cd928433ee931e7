/** Booklets and cards that a window asks for: the plan that it shows, and nothing that it makes up. */

import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { PaperRequest } from '#contract/contract.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { scoreOf } from '#model/document/parts.ts';
import type { PartPdf } from '#model/document/records.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { testShell } from '../../../helpers/services.ts';
import { partPdf } from '../booklet/invented-parts.ts';
import { placedForms, turnOf } from '../booklet/placed-pages.ts';
import { openPdf, pageTexts } from '../pdf-reading.ts';
import { demoDuo, keeping } from './plans.ts';

const duo = demoDuo();
const { setup } = duo;
const station = duo.plan.stations[0]!;
const [first] = duo.instance.players;

/** The first player's part as a PDF with a cover that is no page of the part. */
function withPdf(document: Document, bytes: Uint8Array, pages: number): Document {
  const score = scoreOf(document, setup)!;
  const pdf: PartPdf = {
    file: 'first.pdf',
    sha256: createHash('sha256').update(bytes).digest('hex'),
    sizes: Array.from({ length: pages + 1 }, () => ({ width: 210, height: 297 })),
    pages: Array.from({ length: pages }, (_, index) => index + 2),
    staffSize: null,
  };
  const pdfs = score.players.map((player) => (player === first!.id ? pdf : null));
  return documentOf(
    [...document.records.values()].map((record) => (record === score ? { ...score, pdfs } : record)),
  );
}

async function save(change: Partial<PaperRequest> & { readonly document?: Document } = {}) {
  const shell = testShell();
  const { document = keeping(duo), ...rest } = change;
  const bytes = await partPdf('first', { pages: first!.pages + 1 });
  const part = join(shell.folder, 'first.pdf');
  writeFileSync(part, bytes);
  const out = join(shell.folder, 'out.pdf');
  const handle = shell.services.handles.handleOf(part);
  const request: PaperRequest = {
    text: writeDocument(document),
    setup,
    booklets: [{ station: station.station, paper: 'a3' }],
    cards: null,
    pdfs: [],
    ...rest,
  };
  const pdfs = rest.pdfs?.map((pdf) => ({ ...pdf, handle }));
  const answer = await shell.handlers['paper.save'](
    { ...request, ...(pdfs ? { pdfs } : {}) },
    shell.services.handles.handleOf(out),
    false,
  );
  return { answer, out };
}

async function readBack(path: string) {
  const pdf = await openPdf(new Uint8Array(readFileSync(path)));
  const pages = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    const texts = await pageTexts(page);
    const words = texts.map(({ text }) => text).join(' ');
    pages.push({ forms: await placedForms(page), words, ...page.getViewport({ scale: 1 }) });
  }
  return pages;
}

it('prints the kept plan, with bars, times and hands of its turns', async () => {
  const { answer, out } = await save();
  expect(answer).toMatchObject({ ok: true, value: { name: 'out.pdf', notes: [] } });
  const words = (await readBack(out)).map((page) => page.words);
  for (const { bar } of duo.plan.turns) {
    const cued = words.filter(
      (each) => each.includes(`in bar ${bar} (`) && / turns?( |$)| turn for both/.test(each),
    );
    // The one who turns and his partner each have it at the foot of a panel, and the table names it.
    expect(cued.length).toBeGreaterThanOrEqual(3);
    expect(
      words.some((each) => new RegExp(`in bar ${bar} \\(\\d+:\\d\\d\\): turn for both`).test(each)),
    ).toBe(true);
    expect(
      words.some((each) =>
        new RegExp(`in bar ${bar} \\(\\d+:\\d\\d\\): Clarinet \\(player 1\\) turns`).test(each),
      ),
    ).toBe(true);
  }
});

it('puts the pages of a part in their place, those that the concert names', async () => {
  const bytes = await partPdf('first', { pages: first!.pages + 1 });
  const document = withPdf(keeping(duo), bytes, first!.pages);
  const { answer, out } = await save({ document, pdfs: [{ player: first!.id, handle: '' }] });
  expect(answer.ok).toBe(true);
  const sheets = await readBack(out);
  const forms = sheets.flatMap((sheet) => sheet.forms);
  expect(forms).toHaveLength(first!.pages);
  for (const form of forms) {
    expect(form.width).toBeCloseTo(595.276, 2);
    expect([0, 180]).toContain(turnOf(form));
  }
  const said = sheets.flatMap(({ words }) =>
    [...words.matchAll(/first page (\d+)/g)].map(([, page]) => Number(page)),
  );
  expect(said.toSorted((a, b) => a - b)).toEqual(
    Array.from({ length: first!.pages }, (_, index) => index + 2),
  );
});

it('puts booklets and cards into one file when both are asked for', async () => {
  const { answer, out } = await save({ cards: 'a4' });
  const sheets = await readBack(out);
  expect(answer).toMatchObject({ ok: true, value: { sheets: sheets.length } });
  expect(sheets.at(-1)?.words).toContain('cue card');
  expect(sheets[0]?.words).not.toContain('cue card');
});

it.each([
  ['no document', { text: '{}' }, 'paper.notADocument'],
  ['no such setup', { setup: 'setup-77' }, 'paper.noSetup'],
  ['no plan', { document: duo.document }, 'paper.noPlan'],
  ['no such stand', { booklets: [{ station: 'stand-77', paper: 'a4' }] }, 'paper.noStation'],
  ['no such paper', { cards: 'papyrus' }, 'paper.unknown'],
  [
    'paper smaller than a page',
    { booklets: [{ station: station.station, paper: 'a5' }] },
    'booklet.doesNotFit',
  ],
  ['a PDF that the concert does not name', { pdfs: [{ player: 'player-2', handle: '' }] }, 'paper.noPart'],
  [
    'another PDF than the concert names',
    {
      document: withPdf(keeping(duo), new Uint8Array([1]), first!.pages),
      pdfs: [{ player: first!.id, handle: '' }],
    },
    'paper.otherPart',
  ],
] as const)('refuses in words: %s', async (_, change, code) => {
  const { answer, out } = await save(change);
  expect(answer).toMatchObject({ ok: false, error: { code } });
  expect(() => readFileSync(out)).toThrow();
});

it('gives a handle for a file beside another one, and for no other place', async () => {
  const { folder, services, handlers } = testShell();
  const file = services.handles.handleOf(join(folder, 'a.pdf'));
  const beside = await handlers['files.beside'](file, 'b.pdf');
  if (!beside.ok) throw new Error(beside.error.message);
  expect(services.handles.pathOf(beside.value.handle)).toBe(join(folder, 'b.pdf'));
  expect(beside.value.exists).toBe(false);
  expect(await handlers['files.beside'](file, '../b.pdf')).toMatchObject({ ok: false });
});
