/** The frame of the window: bar, tabs, store, list, first steps, and what is said of files. */

import { counted } from './counting.ts';

export const windowWords = {
  later: {
    coming: 'One moment…',
    failed: 'This part of the window could not be loaded: try again, or restart the program.',
  },
  start: {
    opening: 'Opening…',
    failed: 'Standlines could not start',
    retry: 'Try again',
  },

  bar: {
    label: 'Concert and file',
    file: 'File',
    new: 'New…',
    open: 'Open…',
    recent: 'Open recent',
    noRecent: 'Nothing opened yet',
    forgetRecent: 'Clear this list',
    demo: 'Open the demo concert',
    save: 'Save',
    saveAs: 'Save as…',
    print: 'Print the plot…',
    printShort: 'Print',
    concert: 'Concert and limits…',
    edited: 'not saved yet',
    readOnly: 'read-only',
    undo: (name: string | null) => (name ? `Undo ${name}` : 'Nothing to undo'),
    redo: (name: string | null) => (name ? `Redo ${name}` : 'Nothing to redo'),
    commands: 'Find a command',
    view: 'View',
    theme: 'Light or dark',
    themes: { system: 'Same as the system', light: 'Light', dark: 'Dark' },
    language: 'Language',
    languages: { system: 'Same as the system', en: 'English', de: 'Deutsch' },
    singleKeys: 'Single letters as keys',
    units: 'Units',
    unitChoices: { document: 'As the concert says', metric: 'Metric', imperial: 'Feet and inches' },
    show: 'Show on the plan',
    names: 'Names',
    marks: 'Marks',
    grid: 'Grid',
    reach: 'Reach lines',
    routes: 'Ways to the exit',
    leftPanel: 'Store and list',
    rightPanel: 'Properties and findings',
  },

  setups: {
    label: 'Programme',
    add: 'Add a setup',
    addEmpty: 'New, empty',
    copyThis: 'Copy of this one',
    rename: 'Rename…',
    remove: 'Remove this setup',
    earlier: 'Move earlier',
    later: 'Move later',
    more: 'This setup',
    nameTitle: 'Name of the setup',
    copyOf: (name: string) => `${name}, copy`,
    unnamed: (order: number) => `Setup ${order}`,
  },

  store: {
    label: 'Things to place',
    search: 'Search: viola, stand…',
    withStand: 'Players come with a stand',
    nothing: (search: string) => `Nothing called “${search}”.`,
    found: (count: number) => counted(count, 'thing', 'things'),
    how: 'Drag one onto the plan, or click one, then click on the plan. Enter puts it in the middle.',
    placing: (name: string) => `Click on the plan to set down: ${name}`,
    carrying: (name: string) => `Let go to set down: ${name}`,
    putBack: 'puts it back',
    stop: 'Stop placing',
    count: (count: number) => counted(count, 'thing', 'things'),
  },

  outline: {
    label: 'On the platform',
    empty: 'Nothing stands here yet.',
    house: 'Platform and house',
    hiddenUnderlay: 'Underlay, hidden',
    findings: (count: number, gravest: string) =>
      `${counted(count, 'finding', 'findings')}, ${count === 1 ? gravest : `the gravest: ${gravest}`}`,
    things: (count: number) => counted(count, 'thing', 'things'),
  },

  lost: {
    title: 'The program behind this window does not answer.',
    kept: 'Your work is safe here as long as this window stays open; it keeps trying to reach the program.',
    copy: 'Save a copy with the browser',
    back: 'The program answers again.',
    because: (cause: string) => `The program behind this window does not answer (${cause}).`,
  },

  banner: { dismiss: 'Dismiss' },

  hints: {
    label: 'First steps',
    lengths: { metric: '820, 2.4 m and 7\' 6"', imperial: '7\' 6", 90 and 2.4 m' },
    count: (step: number, steps: number) => `Try this, ${step} of ${steps}`,
    next: 'Next',
    show: 'Show me',
    away: 'Skip these',
    steps: (lengths: string) => [
      'Each seat is coloured and filled as far as it sees the player it sees worst. Choose another player below the plan.',
      'Setup 2b has real faults: click one in the list of findings and the plan goes there.',
      'Drag a music stand: seats and figures follow your hand. Escape puts it back.',
      `Type the place of what is selected: ${lengths} all work.`,
      'Click a seat to see what is in its way. Then print: the plot is exactly to scale.',
    ],
  },

  files: {
    savedAt: (time: string, name: string) => `Saved ${time} to ${name}`,
    savedAs: (name: string) => `Saved ${name}`,
    notKept: (name: string, message: string) =>
      `The unsaved work in “${name}” cannot be kept safe on the side; save it to a file soon. (${message})`,
    changed: (name: string) => `Another program has changed “${name}”. This window still shows it as it was.`,
    loadChanged: 'Load it as it is now',
    demoName: 'Demo concert',
    untitled: 'Untitled',
    opened: (name: string) => `Opened ${name}`,
  },
} as const;
