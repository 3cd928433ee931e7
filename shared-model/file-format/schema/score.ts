/** Schema of the music of a setup. */

import * as v from 'valibot';
import type { BarRange, BarSilence, RemarkCode } from '../../document/music.ts';
import {
  FASTEST_TEMPO,
  LONGEST_BAR,
  LONGEST_NAME,
  LONGEST_TEXT,
  MOST_BARS,
  MOST_DIVISIONS,
  MOST_PARTS,
  SLOWEST_TEMPO,
} from '../../score/limits.ts';
import {
  field,
  fields,
  idOf,
  lengthBetween,
  line,
  listOf,
  millimetresBetween,
  numberBetween,
  oneOf,
  textLike,
  wholeBetween,
  yesOrNo,
} from '../fields.ts';
import { LARGEST_PAGE, MOST_PDF_PAGES, PDF_NAME, SMALLEST_PAGE } from '../limits.ts';
import { common, playerOrNull } from './common.ts';
import { t } from '../../words/say.ts';

const MOST_TICKS = LONGEST_BAR * MOST_DIVISIONS;
/** Silences of one part, ranges of the order, marks of one kind: each bar may hold several. */
const MOST_MARKS = 4 * MOST_BARS;
const MOST_REMARKS = 2000;

const barIndex = wholeBetween(0, MOST_BARS - 1);
const ticks = wholeBetween(0, MOST_TICKS);
const name = line(LONGEST_NAME);

const atBar = field('Bar', 'Index of the bar, from 0.', barIndex);

const bar = fields({
  number: field('Number', 'As printed.', name),
  ticks: field('Ticks', 'Length of the bar.', ticks),
});

const tempo = fields({
  bar: atBar,
  at: field('At', 'Ticks from the beginning of the bar.', ticks),
  quartersPerMinute: field(
    'Quarters per minute',
    'The tempo from there on.',
    numberBetween(
      SLOWEST_TEMPO,
      FASTEST_TEMPO,
      () => t`give a tempo from ${SLOWEST_TEMPO} to ${FASTEST_TEMPO} quarters per minute`,
    ),
  ),
  source: field('Source', 'Where the tempo comes from.', oneOf(['sound', 'metronome', 'words', 'typed'])),
});

const range = listOf(barIndex, 2, 2) as unknown as v.GenericSchema<number[], BarRange>;
const silence = listOf(ticks, 3, 3) as unknown as v.GenericSchema<number[], BarSilence>;

const pageStart = fields({
  page: field('Page', 'Number of the page, from 1.', wholeBetween(1, MOST_BARS)),
  bar: atBar,
});

const instrumentChange = fields({ bar: atBar, name: field('Name', 'What the instrument is called.', name) });

const transposition = fields({
  bar: atBar,
  chromatic: field('Semitones', 'From what is written up to what sounds.', wholeBetween(-200, 200)),
  diatonic: field('Steps', 'The same in steps of the scale.', wholeBetween(-200, 200)),
  octaves: field('Octaves', 'Further octaves up.', wholeBetween(-20, 20)),
});

const part = fields({
  id: field('Id', 'Names the part within its score.', name),
  name: field('Name', 'What the part is called.', name),
  silences: field(
    'Silences',
    'When the part is silent: index of the bar and, in ticks from its beginning, from and to; in order.',
    listOf(silence, 0, MOST_MARKS),
  ),
  pages: field(
    'Pages',
    'The page and the bar that it begins with, in order; the first begins with bar 0.',
    listOf(pageStart, 1, MOST_BARS),
  ),
  ownPages: field(
    'Own pages',
    'Whether the player reads from paper with these pages; false: they are those of a score of several parts.',
    yesOrNo(),
  ),
  instruments: v.optional(
    field(
      'Instruments',
      'Where the player takes up another instrument.',
      listOf(instrumentChange, 0, MOST_BARS),
    ),
    [],
  ),
  transpositions: v.optional(
    field(
      'Transpositions',
      'From which bar on what is written sounds how: semitones and steps, and octaves besides.',
      listOf(transposition, 0, MOST_BARS),
    ),
    [],
  ),
});

const remark = fields({
  code: field(
    'Code',
    'What could not be known.',
    textLike(/^[a-z]+\.[A-Za-z]+$/, () => t`give the code of a remark`) as unknown as v.GenericSchema<
      string,
      RemarkCode
    >,
  ),
  bar: field('Bar', 'Index of the bar it is about; null: the whole score.', v.nullable(barIndex)),
  part: v.exactOptional(field('Part', 'Name of the part it is about.', name)),
  text: v.exactOptional(field('Text', 'Words of the score that it is about.', line(LONGEST_TEXT))),
  count: v.exactOptional(field('Count', 'How many there are.', wholeBetween(0, Number.MAX_SAFE_INTEGER))),
});

const afterJump = fields({
  repeats: field('Repeats', 'Whether the order makes them.', yesOrNo()),
  otherwise: field(
    'Otherwise',
    'The order the other way, as ranges of bar indices.',
    listOf(range, 1, MOST_MARKS),
  ),
});

const music = fields({
  title: v.optional(field('Title', 'What the piece is called.', name), ''),
  ticksPerQuarter: field('Ticks per quarter', 'Ticks of a quarter note.', wholeBetween(1, MOST_DIVISIONS)),
  bars: field('Bars', 'In the order of the score.', listOf(bar, 1, MOST_BARS)),
  tempos: field(
    'Tempos',
    'In order; 120 quarters per minute before the first.',
    listOf(tempo, 0, MOST_MARKS),
  ),
  movements: field(
    'Movements',
    'Index of the first bar of each; 0 comes first.',
    listOf(barIndex, 1, MOST_BARS),
  ),
  order: field(
    'Order',
    'What is played: ranges of bar indices, both ends included, in the order of the performance.',
    listOf(range, 1, MOST_MARKS),
  ),
  afterJump: v.optional(
    field(
      'After a jump',
      'Repeats that are passed once more after D.C. or D.S.; null: there are none, or the order was typed.',
      v.nullable(afterJump),
    ),
    null,
  ),
  ambiguous: v.optional(field('Ambiguous', 'Whether the order is a guess somewhere.', yesOrNo()), false),
  parts: field('Parts', 'In the order of the score.', listOf(part, 1, MOST_PARTS)),
  remarks: v.optional(
    field('Remarks', 'What the reader of the score could not know.', listOf(remark, 0, MOST_REMARKS)),
    [],
  ),
});

const pageSize = fields({
  width: field('Width', 'Millimetres across the page.', lengthBetween(SMALLEST_PAGE, LARGEST_PAGE)),
  height: field('Height', 'Millimetres along the page.', lengthBetween(SMALLEST_PAGE, LARGEST_PAGE)),
});

const partPdf = fields({
  file: field(
    'File',
    'Name of the PDF, without a folder: it is looked for beside this file.',
    textLike(
      PDF_NAME,
      () => t`give the name of a PDF without a folder, at most 200 characters with its ".pdf"`,
    ),
  ),
  sha256: field(
    'SHA-256',
    'Of the bytes of the PDF, to notice when it has changed.',
    textLike(/^[0-9a-f]{64}$/, () => t`give 64 hexadecimal digits in small letters`),
  ),
  sizes: field('Sizes', 'All pages of the PDF, as they are looked at.', listOf(pageSize, 1, MOST_PDF_PAGES)),
  pages: field(
    'Pages',
    'The page of the PDF, from 1, for each page of the part in order; null: none.',
    listOf(v.nullable(wholeBetween(1, MOST_PDF_PAGES)), 0, MOST_PDF_PAGES),
  ),
  staffSize: v.optional(
    field(
      'Staff size',
      'From the bottom to the top line of a staff as printed, millimetres; null: not known.',
      v.nullable(millimetresBetween(1, 100)),
    ),
    null,
  ),
});

export const score = fields({
  ...common('score'),
  setup: field('Setup', 'Id of the setup whose music it is.', idOf<'setup'>()),
  source: v.optional(field('Source', 'Name of the file that it was read from.', name), ''),
  music: field('Music', 'The piece as it is performed.', music),
  players: field(
    'Players',
    'Who plays each part, in their order; null: nobody on this platform.',
    listOf(playerOrNull, 1, MOST_PARTS),
  ),
  pdfs: field(
    'PDFs',
    'What each player reads from, in the order of the parts; null: no PDF of the part is known.',
    listOf(v.nullable(partPdf), 1, MOST_PARTS),
  ),
});
