/** Printing booklets and cue cards. */

import { counted } from './counting.ts';

export const paperWords = {
  paper: {
    action: 'Print booklets and cards…',
    title: 'Booklets and cue cards',
    none: 'There is no page plan with paper to print: plan the page turns first.',
    stale: 'The concert has changed since this was planned. What was planned is printed.',
    broken: (count: number) =>
      `This plan breaks ${counted(count, 'rule', 'rules')}: see Page turns. The paper says so too.`,
    what: 'What is printed',
    print: 'Print',
    cards: 'Cue cards',
    cardsAre: (players: number) =>
      `for ${counted(players, 'player', 'players')}: what to set, which page is where, every turn`,
    onOf: (what: string) => `Paper of ${what}`,
    sheets: (printed: number, how: number) =>
      how === 0
        ? `${counted(printed, 'sheet', 'sheets')}.`
        : `${counted(printed, 'sheet', 'sheets')} at true size, and ${how} of instructions.`,
    pageASheet:
      'A panel is larger than this paper: every page has a sheet of its own, and they are taped side by side.',
    sources: 'Pages of the parts',
    blanks: 'numbered blanks, to be pasted over',
    noPdf: 'no PDF yet',
    found: (file: string) => file,
    looking: (file: string) => `${file}: looking for it…`,
    missing: (file: string) => `${file} is not beside the concert.`,
    changed: (file: string) => `${file} is not the file that it was when it was chosen.`,
    show: 'Show where it is…',
    showOf: (player: string) => `Show where the PDF of ${player} is…`,
    other: (file: string) => `That is another file than ${file} was.`,
    givePdf: 'PDFs of parts…',
    oneFile: 'All in one file',
    replace: 'Replace files of these names',
    beside: 'You choose the place of the first file; the others go beside it.',
    save: 'Save PDF…',
    saveAll: (count: number) => `Save ${count} PDFs…`,
    saving: (done: number, count: number) => (count === 1 ? 'Saving…' : `Saving ${done + 1} of ${count}…`),
    stop: 'Stop',
    stopped: (done: number, count: number) => `Stopped: ${done} of ${count} are saved.`,
    saved: (names: readonly string[]) => `Saved ${names.join(', ')}`,
    exists: (name: string) => `“${name}” is already there.`,
    /** Names go small in the name of a file. */
    files: (piece: string, what: string) => `${piece}, ${what.toLowerCase()}`,
  },
} as const;
