/** `standlines booklet`: from a description beside its parts to a PDF, or one line that says what is wrong. */

import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { commandLine } from '../../../electron/cli/command-line.ts';
import { pageList, readBookletDescription } from '../../../electron/services/booklet-description.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { temporaryFolder } from '../../helpers/folders.ts';
import { partPdf } from '../services/booklet/invented-parts.ts';
import { openPdf, pageTexts } from '../services/pdf-reading.ts';

type Description = Readonly<Record<string, unknown>>;

const DESCRIPTION: Description & { readonly sides: readonly Description[] } = {
  format: 'standlines-booklet',
  version: 1,
  title: 'Nonet, low stand',
  binding: 'ridge',
  pagesPerPanel: 2,
  stackSide: 'second',
  paper: 'a3',
  sides: [
    { player: 'Bassoon', pdf: 'bassoon.pdf', pdfPages: '2-7' },
    { player: 'Double bass', pages: 5 },
  ],
  cues: ['after bar 61', 'after bar 144'],
};

async function run(description: Description | string, out = 'booklet.pdf') {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'bassoon.pdf'), await partPdf('bassoon', { pages: 7 }));
  const file = join(folder, 'low-stand.json');
  writeFileSync(file, typeof description === 'string' ? description : JSON.stringify(description));
  const complaints: string[] = [];
  let printed = '';
  const code = await commandLine(['booklet', file, '--out', join(folder, out)], {
    fs: nodeFs,
    now: () => new Date('2027-02-13T12:00:00'),
    state: folder,
    print: (text) => (printed += text),
    complain: (line) => complaints.push(line),
  });
  return { code, printed, complaints, folder, path: join(folder, out) };
}

async function wordsOf(path: string): Promise<string[]> {
  const pdf = await openPdf(new Uint8Array(readFileSync(path)));
  const sheets: string[] = [];
  for (let number = 1; number <= pdf.numPages; number++)
    sheets.push((await pageTexts(await pdf.getPage(number))).map(({ text }) => text).join(' '));
  return sheets;
}

describe('a described booklet', () => {
  it('is printed, with the pages of the PDF that were chosen and blanks for those that are not there', async () => {
    const { code, printed, complaints, path } = await run(DESCRIPTION);
    expect([code, complaints]).toEqual([0, []]);
    expect(printed).toMatch(/booklet\.pdf: "Nonet, low stand", 6 sheets and 1 of instructions\n$/);
    const sheets = await wordsOf(path);
    expect(sheets).toHaveLength(7);
    expect(sheets[0]).toContain('bassoon page 2');
    expect(sheets[0]).toContain('bassoon page 3');
    expect(sheets[4]).toContain('bassoon page 7');
    expect(sheets[1]).toContain('after bar 61: turn for both');
    expect(sheets[3]).toContain('Double bass');
  });

  it('shows the views that it asks for', async () => {
    const sides = [
      {
        player: 'Bassoon',
        pdf: 'bassoon.pdf',
        views: [
          [1, 2],
          [7, null],
        ],
      },
      { player: '', views: null },
    ];
    const { code, path } = await run({ ...DESCRIPTION, sides, cues: [] });
    expect(code).toBe(0);
    const sheets = await wordsOf(path);
    expect(sheets).toHaveLength(5);
    expect(sheets[2]).toContain('bassoon page 7');
    expect(sheets[1]).toContain('nobody reads here');
  });

  it.each([
    ['book', 'a4'],
    ['concertina', 'a4'],
    ['loose', 'a4'],
  ])('may be a %s', async (binding, paper) => {
    const { stackSide: _, ...rest } = DESCRIPTION;
    const { code, complaints } = await run({
      ...rest,
      binding,
      paper,
      sides: DESCRIPTION.sides.slice(0, 1),
      cues: [],
    });
    expect([code, complaints]).toEqual([0, []]);
  });

  it('on paper too small for its panels has a page a sheet, which is noted', async () => {
    const { code, complaints } = await run({ ...DESCRIPTION, paper: 'a4' });
    expect(code).toBe(0);
    expect(complaints).toEqual([
      'standlines: note: A whole panel does not go on A4, so every page has a sheet of its own.',
    ]);
  });
});

const [first, second] = DESCRIPTION.sides;
const withFirst = (change: Description) => ({ ...DESCRIPTION, sides: [{ ...first, ...change }, second] });

it.each([
  ['nothing', '', 'does not start with "{"'],
  ['broken JSON', '{"format": ', 'Line 1, column 12'],
  ['another file', { records: [] }, 'format is missing; give "standlines-booklet"'],
  ['a newer version', { ...DESCRIPTION, version: 2 }, 'version: 2 is not allowed; give 1'],
  ['an unknown field', { ...DESCRIPTION, colour: 'red' }, 'colour is not a known field'],
  ['an unknown field of a side', withFirst({ pdff: 'x' }), 'sides[0].pdff is not a known field'],
  ['an unknown binding', { ...DESCRIPTION, binding: 'scroll' }, 'binding: "scroll" is not allowed'],
  ['an unknown paper', { ...DESCRIPTION, paper: 'papyrus' }, 'paper: "papyrus" is not allowed'],
  ['half a leaf', { ...DESCRIPTION, leaves: 0.5 }, 'leaves: 0.5 is not allowed'],
  [
    'too few leaves',
    { ...DESCRIPTION, leaves: 1, cues: [] },
    'sides[0].pages: 6 is not allowed; 1 leaves have room for 4',
  ],
  [
    'too many cues',
    { ...DESCRIPTION, cues: ['a', 'b', 'c'] },
    'low-stand.json: cues: ["a","b","c"] is not allowed; there are 2 turns',
  ],
  ['one side of a ridge', { ...DESCRIPTION, sides: [first] }, 'sides: '],
  [
    'a page that is not there',
    withFirst({ views: [[9, 1]] }),
    'sides[0].views: 9 is not allowed; the part has pages 1 to 6',
  ],
  [
    'pages the PDF has not',
    withFirst({ pdfPages: '2-9' }),
    'sides[0].pdfPages: "2-9" is not allowed; the PDF has pages 1 to 7',
  ],
  [
    'no list of pages',
    withFirst({ pdfPages: 'all' }),
    'sides[0].pdfPages: "all" is not allowed; give page numbers',
  ],
  [
    'more pages than chosen',
    withFirst({ pages: 8 }),
    'sides[0].pages: 8 is not allowed; "bassoon.pdf" gives 6',
  ],
  ['views of a wrong width', withFirst({ views: [[1], [2], [3]] }), 'The binding cannot be made'],
  ['a PDF that is not there', withFirst({ pdf: 'viola.pdf' }), '"viola.pdf" is not there'],
  ['a PDF that is none', withFirst({ pdf: 'low-stand.json' }), '"low-stand.json" is not a PDF'],
  ['a folder', withFirst({ pdf: '.' }), 'is a folder, not a file'],
  ['a page too large for the paper', { ...DESCRIPTION, paper: 'a5' }, 'does not go on A5'],
] as const)('%s is refused in one line', async (_, description, words) => {
  const { code, printed, complaints, path } = await run(description as Description | string);
  expect([code, printed, complaints.length]).toEqual([2, '', 1]);
  expect(complaints[0]).toContain(words);
  expect(complaints[0]).toMatch(/^standlines: [^\n]{1,300}$/);
  expect(existsSync(path)).toBe(false);
});

it('neither a part nor the description is written over', async () => {
  const { code, complaints, folder } = await run(DESCRIPTION, 'bassoon.pdf');
  expect([code, complaints]).toEqual([
    2,
    ['standlines: --out is a file that is being read; give another name'],
  ]);
  expect((await openPdf(new Uint8Array(readFileSync(join(folder, 'bassoon.pdf'))))).numPages).toBe(7);
});

it('pages are typed as numbers and ranges, in any order', () => {
  expect(pageList('3, 1-2,7', 7)).toEqual([3, 1, 2, 7]);
  for (const wrong of ['', '0', '3-2', '1-', '-2', '8', '1;2', '1e3', '1-2-3'])
    expect(typeof pageList(wrong, 7)).toBe('string');
});

it('what is left out of a description has a default', () => {
  const { format, version, title, binding, paper } = DESCRIPTION;
  const sides = [{ player: 'Oboe', pages: 2 }, { player: '' }];
  expect(
    readBookletDescription(JSON.stringify({ format, version, title, binding, paper, sides })),
  ).toMatchObject({
    leaves: null,
    pagesPerPanel: 2,
    stackSide: 'first',
    pageSize: null,
    cues: [],
    sides: [{ pdf: null, pdfPages: null, views: null }, { pages: null }],
  });
});

it('the description that DEVELOPERS.md shows is one', () => {
  const text = readFileSync(new URL('../../../DEVELOPERS.md', import.meta.url), 'utf8');
  const example = /```text\n([^`]*"standlines-booklet"[^`]*)```/.exec(text)?.[1] ?? '';
  const described = readBookletDescription(example.replace(/\/\/.*$/gm, ''));
  expect(described).toMatchObject({ leaves: 3, paper: 'a3', sides: [{ pdfPages: '2-9' }, { pages: 8 }] });
});
