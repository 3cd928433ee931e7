/**
 * The music of the demo's first setup: a duo of our own, in three stretches that end in silence for both players, so
 * that pages can be turned over one ridge.
 */

interface Stretch {
  readonly first: number;
  readonly last: number;
  readonly beats: number;
  readonly quartersPerMinute: number;
  readonly words: string;
}

interface Voice {
  readonly name: string;
  /** As of MusicXML: of the instruments that it takes up, the first from the beginning. */
  readonly instruments: readonly string[];
  /** Printed numbers: [first, last], both included. */
  readonly rests: readonly (readonly [first: number, last: number])[];
  /** Bar in which another of the instruments is taken up, and its index. */
  readonly changes: readonly (readonly [bar: number, instrument: number])[];
  readonly octave: number;
  /** How many steps of the scale the tune moves on from note to note. */
  readonly stride: number;
  readonly clef: string;
}

/** The bars that begin each page of a part, as a user types them. */
export const LOCK_GATES_PAGES = { Clarinet: '1, 14, 30, 46, 61, 74', Viola: '1, 13, 30, 45, 61' } as const;

const STRETCHES: readonly Stretch[] = [
  { first: 1, last: 29, beats: 4, quartersPerMinute: 76, words: 'Filling' },
  { first: 30, last: 60, beats: 3, quartersPerMinute: 92, words: 'Level' },
  { first: 61, last: 84, beats: 4, quartersPerMinute: 60, words: 'Emptying' },
];

/** Played twice: printed numbers. */
const REPEAT = { first: 30, last: 45 };

/** Both are silent there. */
const SHUT: Voice['rests'] = [
  [27, 29],
  [58, 60],
];

const VOICES: readonly Voice[] = [
  {
    name: 'Clarinet',
    instruments: ['Clarinet in B flat', 'Bass clarinet'],
    rests: [[9, 11], [37, 38], [46, 51], [72, 75], ...SHUT],
    changes: [
      [52, 1],
      [76, 0],
    ],
    octave: 4,
    stride: 2,
    clef: '<clef><sign>G</sign><line>2</line></clef>',
  },
  {
    name: 'Viola',
    instruments: ['Viola'],
    rests: [[17, 20], [33, 34], [66, 67], ...SHUT],
    changes: [],
    octave: 3,
    stride: 3,
    clef: '<clef><sign>C</sign><line>3</line></clef>',
  },
];

/** Divisions are eighths. Each pattern fills a beat but the last, which takes what is left of the bar. */
const PATTERNS = [
  [2, 1, 1, 2],
  [3, 1, 2],
  [1, 1, 2, 2],
  [2, 4],
] as const;
const SCALE = ['D', 'E', 'F', 'G', 'A', 'B', 'C'] as const;
const TYPES: Readonly<Record<number, string>> = {
  1: '<type>eighth</type>',
  2: '<type>quarter</type>',
  3: '<type>quarter</type><dot/>',
  4: '<type>half</type>',
  6: '<type>half</type><dot/>',
  8: '<type>whole</type>',
};

export function lockGates(): string {
  const list = VOICES.map(({ name, instruments }, index) => {
    const scored = instruments.map(
      (instrument, place) =>
        `<score-instrument id="P${index + 1}-I${place + 1}"><instrument-name>${instrument}</instrument-name></score-instrument>`,
    );
    return `<score-part id="P${index + 1}"><part-name>${name}</part-name>${scored.join('')}</score-part>`;
  });
  const last = STRETCHES.at(-1)?.last ?? 0;
  const bodies = VOICES.map((voice, index) => {
    const bars = Array.from({ length: last }, (_, bar) => measure(voice, index, bar + 1));
    return `<part id="P${index + 1}">\n${bars.join('\n')}\n</part>`;
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<score-partwise version="4.0"><work><work-title>Lock Gates</work-title></work>`,
    `<part-list>${list.join('')}</part-list>`,
    ...bodies,
    '</score-partwise>',
    '',
  ].join('\n');
}

function measure(voice: Voice, index: number, bar: number): string {
  const stretch = STRETCHES.find(({ first, last }) => bar >= first && bar <= last);
  if (!stretch) throw new Error(`no bar ${bar}`);
  const repeats =
    (bar === REPEAT.first ? '<barline location="left"><repeat direction="forward"/></barline>' : '') +
    beginning(voice, index, bar, stretch);
  const isRest = voice.rests.some(([first, last]) => bar >= first && bar <= last);
  const length = 2 * stretch.beats;
  const content = isRest
    ? `<note><rest measure="yes"/><duration>${length}</duration></note>`
    : tune(voice, index, bar, length);
  const end = bar === REPEAT.last ? '<barline location="right"><repeat direction="backward"/></barline>' : '';
  return `<measure number="${bar}">${repeats}${content}${end}</measure>`;
}

function beginning({ clef, changes }: Voice, index: number, bar: number, stretch: Stretch): string {
  const isNew = bar === stretch.first;
  const divisions = bar === 1 ? '<divisions>2</divisions>' : '';
  const time = `<time><beats>${stretch.beats}</beats><beat-type>4</beat-type></time>`;
  const attributes = isNew ? `<attributes>${divisions}${time}${bar === 1 ? clef : ''}</attributes>` : '';
  const tempo =
    isNew && index === 0
      ? `<direction><direction-type><words>${stretch.words}</words></direction-type><sound tempo="${stretch.quartersPerMinute}"/></direction>`
      : '';
  const change = changes.find(([at]) => at === bar);
  const taken = change
    ? `<direction><direction-type><words>change</words></direction-type><sound><instrument-change id="P${index + 1}-I${change[1] + 1}"/></sound></direction>`
    : '';
  return attributes + tempo + taken;
}

function tune({ octave, stride }: Voice, index: number, bar: number, length: number): string {
  const notes: string[] = [];
  let left = length;
  for (let place = 0; left > 0; place += 1) {
    const pattern = PATTERNS[(bar + index) % PATTERNS.length] ?? [2];
    const wanted = pattern[place] ?? left;
    const duration = Math.min(wanted, left);
    const step = (bar * stride + place * (stride + 1)) % (2 * SCALE.length - 3);
    // The names of the scale begin with D; C is of the next octave.
    const pitchOctave = octave + Math.floor((step + 1) / SCALE.length);
    const pitch = `<pitch><step>${SCALE[step % SCALE.length] ?? 'D'}</step><octave>${pitchOctave}</octave></pitch>`;
    notes.push(`<note>${pitch}<duration>${duration}</duration>${TYPES[duration] ?? ''}</note>`);
    left -= duration;
  }
  return notes.join('');
}
