/** Parts without a score, typed as tables, and parts as PDFs. */

import { counted } from './counting.ts';

const millimetres = (length: number): string => `${Math.round(length * 100) / 100}\u00a0mm`;

export const partsWords = {
  tables: {
    title: (setup: string) => `Tables of \u201c${setup}\u201d`,
    open: 'Type tables\u2026',
    edit: 'Tables\u2026',
    why: 'Without a score: a table for each player, a row for each page as it is read. What is played again is listed again.',
    paste:
      'Rows copied from a spreadsheet can be pasted into any cell; a first row with the names of columns may come along.',
    piece: 'Title of the piece',
    part: 'Part',
    playedBy: 'Played by',
    nobody: 'Nobody here',
    add: 'Another player',
    removeTable: (name: string) => `Remove this table: ${name}`,
    removeShort: 'Remove this table',
    fromFile: 'From a CSV file\u2026',
    columns: {
      page: 'Page',
      'first bar': 'First bar',
      'last bar': 'Last bar',
      tempo: 'Tempo or seconds',
      beats: 'Beats',
      'free hands': 'Free hands',
    },
    hints: {
      page: 'Number of the page',
      'first bar': 'The first bar on it',
      'last bar': 'The last bar on it',
      tempo: 'Quarters a minute, or how long the page takes: 40 s, 1:20. Empty: as before',
      beats: 'Quarters in a bar; 4 if no table says',
      'free hands': 'Bars in which the player does not play: 12-14, 20; all for the whole page',
    },
    cell: (column: string, row: number) => `${column}, row ${row}`,
    table: (name: string) => `Table of ${name}`,
    unnamed: (index: number) => `Part ${index + 1}`,
    wrong: (name: string, problem: string) => `${name}: ${problem}`,
    fits: (bars: number, length: string) =>
      `${counted(bars, 'bar', 'bars')}, ${length}. The tables go together.`,
    take: 'Take over',
    taken: 'The music is taken from the tables.',
    source: 'typed tables',

    further: 'Add a part by a table\u2026',
    partRow: 'Pages and rests',
    partShort: 'Table\u2026',
    partOf: (name: string) => `Table of ${name}\u2026`,
    furtherTitle: 'A part that the score lacks',
    furtherWhy:
      'Its pages, and the bars in which its player does not play. Rows go through all bars as the score prints them, each once: repeats, tempo and the length of bars come from the score.',
    partTitle: (name: string) => `Table of ${name}`,
    partWhy:
      'Takes the place of this part\u2019s pages and rests, and of no other\u2019s. Rows go through all bars as the score prints them, each once. Where the free bars stay as they are, so do the rests of the score.',
    partFits: (pages: number) => `${counted(pages, 'page', 'pages')}. The table goes with the score.`,
    partTaken: (name: string) => `${name} is taken from the table.`,
    removePart: (name: string) => `Remove this part: ${name}`,
    removePartShort: 'Remove part',
    partRemoved: (name: string) => `${name} is not among the parts any more.`,
  },

  pdf: {
    title: (part: string) => `PDF of ${part}`,
    none: 'No PDF of this part yet.',
    choose: 'Choose a PDF\u2026',
    look: 'PDF\u2026',
    printed: 'Printed part',
    other: 'Another PDF\u2026',
    forget: 'Remove the PDF',
    why: 'The part as it is printed: for booklets, and to know how large its staves are. The concert keeps the name of the file, not the file.',
    pages: (count: number, width: number, height: number) =>
      `${counted(count, 'page', 'pages')}, ${Math.round(width)} x ${Math.round(height)}\u00a0mm`,
    found: 'It lies beside the concert, or was shown.',
    missing: (file: string) =>
      `\u201c${file}\u201d does not lie beside the concert\u2019s file. Put it there, or show where it is.`,
    changed: (file: string) =>
      `\u201c${file}\u201d is there, but it is not the file that was chosen: its content has changed.`,
    takeChanged: 'Take it as it is now',
    find: 'Show where it is\u2026',
    reading: 'Reading the PDF\u2026',
    given: (file: string) => `The part is printed in ${file}.`,
    forgotten: 'This part has no PDF now.',
    otherFile: (file: string) =>
      `That file is not \u201c${file}\u201d as it was chosen: its content differs.`,
    map: 'Pages of the part',
    mapHint:
      'The PDF\u2019s pages in the order of the part\u2019s: 2-6, 8. A dash stands for a page that the PDF does not have.',
    mapBad: (count: number) => `Give pages from 1 to ${count}, such as 2-6, 8; a dash for none.`,
    tooFew: (pages: number, mapped: number) =>
      `The part has ${counted(pages, 'page', 'pages')}; the PDF gives ${mapped} of them.`,
    tooMany: (pages: number, given: number, left: string) =>
      `The PDF gives ${counted(given, 'page', 'pages')}, the part has ${pages}: PDF ${left} left out.`,
    leftOut: (pages: readonly number[], all: string) => {
      if (pages.length === 1) return `page ${all} is`;
      return pages.length === 2 ? `pages ${pages.join(' and ')} are` : `pages ${all} are`;
    },
    staffBad: (least: number, most: number) =>
      `Give the height of a staff in millimetres, from ${least} to ${most}; nothing when it is not known.`,
    isPage: (page: number) => `page ${page} of the part`,
    isPages: (pages: readonly number[]) => `pages ${pages.join(', ')} of the part`,
    unused: 'not used',
    behind: (pages: number) => `left out: the part has ${counted(pages, 'page', 'pages')}`,
    pdfPage: (page: number) => `PDF page ${page}`,
    use: (page: number) => `Use PDF page ${page}`,
    begin: 'Begin here',
    beginAt: (page: number) => `Begin here: PDF page ${page}`,
    measure: 'Measure',
    measureOn: (page: number) => `Measure: PDF page ${page}`,
    noPicture: 'This page cannot be shown.',
    staff: 'Staff height, printed',
    staffHint: 'From the bottom to the top line of a staff, millimetres. Empty: not known.',
    millimetres: 'mm',
    fromPart: (size: number) =>
      `From the printed part: ${millimetres(size)}. What is typed here goes before it.`,
  },

  ruler: {
    title: (page: number) => `Ruler on PDF page ${page}`,
    how: 'Put one mark on the bottom line and the other on the top line of a staff: drag them, or move them with the arrow keys (0.1\u00a0mm; with Shift 2\u00a0mm).',
    bottom: 'Bottom line',
    top: 'Top line',
    at: (x: number, y: number) => `${x.toFixed(1)} mm from the left, ${y.toFixed(1)} mm from the top`,
    reading: (height: number) =>
      `Staff height ${millimetres(height)}, staff space ${millimetres(height / 4)}`,
    tooSmall: 'Put the marks on the two outer lines of one staff.',
    larger: 'Larger',
    smaller: 'Smaller',
    zoom: (percent: number) => `${percent}\u00a0%`,
    take: 'Use this height',
    back: 'Back to the pages',
  },

  jumps: {
    switch: 'Play repeats after D.C. and D.S.',
    hint: 'As a rule players leave them out.',
    lengths: (without: string, made: string) => `${without} without, ${made} with them`,
  },
} as const;
