/** Words of a command line to an order, or one clear sentence. */

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { PAPER_MODELS } from '#model/catalogue/paper.ts';
import { HELP, readOrder, UsageError } from '../../../electron/cli/usage.ts';

it.each<[string, object]>([
  [
    'check a.standlines',
    {
      verb: 'check',
      file: 'a.standlines',
      setup: null,
      json: false,
      geometry: false,
      whatIf: false,
      strict: false,
    },
  ],
  ['check --json --setup Trio demo --strict', { file: 'demo', setup: 'Trio', json: true, strict: true }],
  ['check demo --geometry', { json: true, geometry: true }],
  ['check demo --what-if', { json: true, geometry: false, whatIf: true }],
  ['plot demo --out a.pdf', { out: 'a.pdf', options: { paper: null, orientation: 'auto', scale: null } }],
  [
    'plot demo --out=a.PDF --paper tabloid --scale 1:50 --orientation Landscape',
    { out: 'a.PDF', options: { paper: 'Tabloid', orientation: 'landscape', scale: 50 } },
  ],
  ['plot demo --out a.pdf --scale 100', { options: { paper: null, orientation: 'auto', scale: 100 } }],
  ['check -- -odd.standlines', { file: '-odd.standlines' }],
  [
    'turns demo --plays Oboe=Ann --plays Harp=Bo --pages Oboe=1,9',
    {
      verb: 'turns',
      plays: [
        { part: 'Oboe', value: 'Ann' },
        { part: 'Harp', value: 'Bo' },
      ],
      pages: [{ part: 'Oboe', value: '1,9' }],
    },
  ],
  ['booklet a.json --out a.pdf', { verb: 'booklet', file: 'a.json', out: 'a.pdf', paper: null }],
  ...PAPER_MODELS.map(({ id }): [string, object] => [
    `booklet demo --out a.pdf --paper ${id}`,
    { paper: id },
  ]),
  ['booklet demo --out a.pdf --paper Tabloid', { paper: 'tabloid' }],
  ['schema', { verb: 'schema' }],
  ['help', { verb: 'help' }],
  ['--help', { verb: 'help' }],
  [
    'plot demo --out a.pdf --sheets Plot,marks',
    { options: { paper: null, orientation: 'auto', scale: null, parts: ['plot', 'marks'] } },
  ],
  ['plot --help', { verb: 'help' }],
])('%s', (line, order) => {
  expect(readOrder(line.split(' '))).toMatchObject(order);
});

it('names every paper of the catalogue in its help', () => {
  for (const { id } of PAPER_MODELS) expect(HELP).toMatch(new RegExp(`[ ]${id}[, \\n;]`));
});

it.each([
  ['', 'say what to do'],
  ['booklet demo --out a.pdf --paper papyrus', 'is not one of a4, a3, a5, '],
  ['chekc demo', 'there is no "chekc"'],
  ['check', 'check needs a FILE'],
  ['check a b', 'takes one FILE, but got "b" as well'],
  ['check demo --jsno', 'there is no option --jsno'],
  ['check demo --setup', '--setup needs a value'],
  ['score a.mxl --tempo -5', '--tempo "-5" is not a tempo such as 96 or 96@25'],
  ['score a.mxl --tempo', '--tempo needs a value (see'],
  ['plot demo --out --setup', '--out needs a value; one that begins with a dash is written --out="--setup"'],
  ['check demo -- --tempo -5', 'takes one FILE, but got "--tempo" as well'],
  ['check demo --json=yes', '--json takes no value'],
  ['check demo --out a.pdf', 'there is no option --out'],
  ['plot demo', 'plot needs --out'],
  ['plot demo --out a.txt', 'does not end in .pdf'],
  ['plot demo --out a.pdf --paper A0', '--paper "A0" is not one of A4, A3, Letter, Tabloid'],
  ['plot demo --out a.pdf --scale 1:0', 'not a ratio'],
  ['plot demo --out a.pdf --scale 1:-50', 'not a ratio'],
  ['plot demo --out a.pdf --scale fifty', 'not a ratio'],
  ['plot demo --out a.pdf --scale 1:1e9', 'not a ratio'],
  ['plot demo --out a.pdf --scale NaN', 'not a ratio'],
  [
    'plot demo --out a.pdf --sheets plot,mark',
    '--sheets "mark" is not one of plot, seats, section, marks, inventory, figures, findings, cautions',
  ],
  ['plot demo --out a.pdf --sheets ,', '--sheets names no sheet'],
  ['plot demo --out a.pdf --orientation up', 'not one of auto, portrait, landscape'],
  ['booklet a.json', 'booklet needs --out'],
  ['booklet --out a.pdf', 'booklet needs a FILE'],
  ['booklet a.json --out a.txt', 'does not end in .pdf'],
  ['booklet demo --out a.pdf --pdf Oboe', '--pdf "Oboe" is not of the form PART='],
  ['booklet demo --out a.pdf --paper A9', '--paper "A9" is not one of'],
  ['turns', 'turns needs a FILE'],
  ['schema x', 'schema takes nothing more'],
  ['plot demo --out a.pdf --scale 1:50 --scale 1:100', '--scale is given twice'],
  ['check demo --setup 1 --setup=2', '--setup is given twice'],
])('refuses "%s"', (line, sentence) => {
  expect(() => readOrder(line.split(' ').filter(Boolean))).toThrow(sentence);
});

it('any words whatever give an order or a usage error of one short sentence', () => {
  const word = fc.oneof(
    fc.string(),
    fc.constantFrom(
      'check',
      'plot',
      '--out',
      'a.pdf',
      '--json',
      '--setup',
      '--scale',
      '1:50',
      '--',
      '-h',
      'demo',
    ),
  );
  fc.assert(
    fc.property(fc.array(word, { maxLength: 6 }), (words) => {
      try {
        readOrder(words);
      } catch (error) {
        expect(error).toBeInstanceOf(UsageError);
        expect((error as Error).message.length).toBeLessThan(300);
      }
    }),
  );
});
