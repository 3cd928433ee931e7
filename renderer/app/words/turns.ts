/** The page turns of a setup. */

import { counted } from './counting.ts';

const turns = (count: number): string => counted(count, 'turn', 'turns');
const stations = (count: number): string => counted(count, 'stand', 'stands');
const panels = (count: number): string => counted(count, 'printed panel', 'printed panels');

const percent = (share: number): string => `${Math.round(share * 100)}\u00a0%`;

/** Less than this is the last bit of a sum, s. */
const LACKING = 1e-6;

export const turnsWords = {
  turns: {
    label: 'Page turns',
    action: 'Page turns of this setup',
    close: 'Close the page turns',
    why: 'Finds which page goes where, who turns it and in which rest: with as few turns, stands and printed panels as can be.',
    plan: 'Plan the page turns',
    again: 'Plan again',
    cancel: 'Stop',
    stale: 'The concert has changed since this was planned.',
    notYet: 'No page turns are planned for this setup yet.',
    failed: (message: string) => `The planning stopped with an error: ${message}`,
    missing: 'Something is missing:',
    faulty: 'This cannot be planned:',
    begun: 'Reading the parts…',
    stages: {
      turns: 'Looking for the fewest turns',
      width: 'Looking for the narrowest rows of pages',
      panels: 'Looking for the fewest printed panels',
      jumps: 'Looking for the fewest jumps of the eye',
    },
    progress: (stage: string, states: number) => `${stage}: ${states.toLocaleString('en')} states looked at`,
    planned: (count: number) => `Planned: ${turns(count)}.`,
    noneNow: 'There is no plan of the page turns.',

    figures: 'What it takes',
    figure: {
      turns,
      stations,
      width: (count: number) => `${counted(count, 'page', 'pages')} side by side at most`,
      panels,
      jumps: (count: number) => counted(count, 'jump of the eye', 'jumps of the eye'),
    },
    proved: 'fewest possible',
    bound: (least: number) => `at least ${least}; not proved to be the fewest`,
    others: 'Plans worth comparing',
    candidate: (cost: { readonly turns: number; readonly stations: number; readonly panels: number }) =>
      `${turns(cost.turns)}, ${stations(cost.stations)}, ${panels(cost.panels)}`,
    allProved: (candidate: string) => `${candidate}: the fewest possible`,
    strict: 'Counted in strict time from the score: try the turns in rehearsal.',

    list: 'Turns',
    none: 'Nobody has to turn: everything stands side by side.',
    at: (time: string, bar: string | null) => (bar === null ? time : `${time}, ${bar}`),
    who: (player: string, hand: string) => `${player}, ${hand} hand`,
    hands: { left: 'left', right: 'right' },
    page: (page: number, during: boolean) => `${during ? 'during' : 'after'} page ${page}`,
    back: 'back again',
    spare: (seconds: number) => {
      if (!Number.isFinite(seconds)) return 'any time';
      // What is lacking, however little, does not read as nothing.
      if (seconds < -LACKING) return `${Math.max(0.1, -seconds).toFixed(1)}\u00a0s too little time`;
      return `${Math.max(0, seconds).toFixed(1)}\u00a0s to spare`;
    },
    serves: 'also for the partner',
    sentence: (pieces: readonly string[]) => pieces.join('; '),

    onStands: 'On the stands',
    kinds: {
      loose: 'loose pages',
      book: 'a book',
      concertina: 'a concertina',
      ridge: 'a ridge booklet',
    },
    binding: (kind: string, leaves: number) =>
      leaves === 0 ? kind : `${kind}, ${counted(leaves, 'leaf', 'leaves')}`,
    stack: (reader: string) => `at first all leaves lie before ${reader}`,
    nobody: 'nobody reads here',
    /** A row of the pages on a stand with so many leaves, after some were turned. */
    rowOf: (leaves: number, turned: number) => {
      if (leaves === 0) return 'All the time';
      return turned === 0 ? 'At first' : `${counted(turned, 'leaf', 'leaves')} turned`;
    },
    blank: 'blank',
    side: (index: number) => `side ${index + 1}`,

    keep: 'Keep this plan',
    letGo: 'Discard the kept plan',
    empty: 'Start an empty plan',
    keptPlan: (candidate: string) => `Kept: ${candidate}`,
    notJudged: 'A page plan is kept, but it cannot be judged now:',
    cost: 'What the kept plan takes',
    asBest: 'The same figures as the best plan known.',
    comparison: {
      more: (count: number) => `${count} more than the best plan known`,
      fewer: (count: number) => `${count} fewer than the best plan known`,
    },
    notCompared: 'A plan that breaks rules is not compared with the best plan known.',
    rules: 'Rules that are broken',
    keepsRules: 'Every rule is kept.',
    broken: (count: number) => counted(count, 'rule is broken', 'rules are broken'),
    seen: (well: number, limit: number, player: string) =>
      `${percent(well)} of the places see at least ${percent(limit)} of ${player}`,
    seenWorst: (share: number, seat: string) => `worst ${percent(share)}, from ${seat}`,
    noTurns: 'No turns yet.',
    turnFields: {
      when: 'When',
      whenHint:
        'A time such as 2:17.5, or a bar as the list calls it: 48, or 48, second time; 48.5 is half through it.',
      who: 'Who',
      hand: 'Hand',
      direction: 'Which way',
      directions: { forward: 'on', back: 'back' },
      noSuchPlace: (typed: string) =>
        `There is no "${typed}" in this music: type a time such as 2:17 or a bar.`,
    },
    removeTurn: 'Remove this turn',
    addTurn: 'Add a turn',
    addTurnAt: (stand: string) => `Add a turn at ${stand}`,
    pinTurn: 'Keep this turn in its rest when planning again',
    pin: 'Pin',
    pinned: 'pinned',
    pinPage: (place: string) => `Pin: ${place}`,
    addPaper: (stand: string) => `Put paper on ${stand}`,
    removePaper: 'Take the paper off',
    removePaperOf: (stand: string) => `Take the paper off ${stand}`,
    bindingOf: (stand: string) => `Binding on ${stand}`,
    kindNames: { loose: 'Loose pages', book: 'Book', concertina: 'Concertina', ridge: 'Ridge booklet' },
    leaves: (count: number) => counted(count, 'leaf', 'leaves'),
    across: (count: number) => `${counted(count, 'page', 'pages')} side by side`,
    moreOf: { leaves: 'One leaf more', across: 'One page more side by side' },
    fewerOf: { leaves: 'One leaf fewer', across: 'One page fewer side by side' },
    stackBefore: (reader: string) => `All leaves lie before ${reader} at first`,
    turnStack: 'Let them lie on the other side',
    cell: (slot: number, state: string, reader: string) => `Place ${slot} from the left, ${state}, ${reader}`,
    cellHint: 'A page number, or nothing for a blank',
    notAPage: (typed: string) => `"${typed}" is no page number: type one from 1, or nothing for a blank.`,

    noPlan:
      'There is no plan: with these rests, hands and stands somebody would have to play on without his page.',
    notFound: 'No plan was found in the steps allowed; there may be one.',
    remedies: 'Each of these alone would make one:',
    eachNeeds: 'Each of these players needs one of the remedies named here:',
    together: (names: readonly string[]) => names.join(' with '),
    noOwnRemedy: 'no single rest, wider stand or further stand was found that helps.',
    without: (where: string) => `${where.slice(0, 1).toUpperCase()}${where.slice(1)}.`,
    twoAtOnce: 'Two changes at once do:',
    noRemedies: 'No single rest, wider stand or further stand was found that makes one.',
    remedy: {
      rest: (seconds: number, player: string, page: number, at: string) =>
        `a rest of ${seconds.toFixed(1)}\u00a0s for ${player} after page ${page}, at ${at}`,
      wider: (pages: number, stand: string) =>
        `room for ${counted(pages, 'page', 'pages')} side by side at ${stand}`,
      station: (stand: string) => `one more stand like ${stand}`,
      twoStations: (stand: string) => `two more stands like ${stand}`,
      both: (changes: readonly string[]) => changes.join(', and '),
      pinnedPage: (page: number, stand: string) => `letting go of the pin on page ${page} on ${stand}`,
      pinnedTurn: (player: string, stand: string) =>
        `letting go of the pin on the turn by ${player} at ${stand}`,
    },
  },
} as const;
