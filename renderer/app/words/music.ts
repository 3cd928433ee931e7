/** The music of a setup, and where its rests are used. */

import { counted } from './counting.ts';

export const musicWords = {
  music: {
    short: 'Music',
    action: 'Music of this setup…',
    title: (setup: string) => `Music of “${setup}”`,
    why: 'Give this setup its score, and turns and changes of instrument are judged by the rests that are really in the parts. Page turns can then be planned, too.',
    how: 'Open MusicXML (.musicxml, .xml or .mxl): most notation programs export it. The music is kept in the concert; the file itself is not needed afterwards.',
    open: 'Open a score…',
    replace: 'Another score…',
    remove: 'Remove the music',
    done: 'Done',
    refusedLeft:
      'What is typed in a field was refused and would be lost: mend it, or close this window to leave it.',
    reading: 'Reading the score…',
    given: (name: string) => `The music is read from ${name}.`,
    dropped: (what: readonly string[]) => `Not kept of the music before: ${what.join('; ')}.`,
    removed: 'This setup has no music now.',

    untitled: 'Without a title',
    file: 'Read from',
    bars: 'Bars',
    barCount: (written: number, played: number) =>
      played === written ? `${written}` : `${written} in the score, ${played} as performed`,
    length: 'Length as performed',
    lengths: (performed: string, written: string) =>
      performed === written ? performed : `${performed}, each bar once ${written}`,
    tempo: 'Tempo',
    tempos: {
      sound: 'as marked',
      metronome: 'as marked',
      words: 'read from words',
      typed: 'typed',
    },
    tempoAt: (bar: string, tempo: number, source: string) =>
      `${bar}: ${Math.round(tempo * 10) / 10} (${source})`,
    tempoAssumed: (tempo: number) => `${tempo} (assumed)`,
    more: (count: number) => `and ${count} more`,
    typedTempo: 'Other tempo',
    typedTempoHint: 'Quarters a minute; it holds from that bar to the end.',
    quarters: 'quarters a minute',
    fromBar: 'From bar',
    fromStart: 'the beginning',
    setTempo: 'Set the tempo',
    tempoWanted: 'write a number, for instance 96',
    order: 'Order of the performance',
    orderHint:
      'Bars in the order in which they are played: 1-12, 5-20. #14 is the 14th bar of the file, for numbers that stand more than once.',
    hashes: '#14 is the 14th bar of the file: some numbers stand more than once, or are none.',
    remarks: (count: number) => counted(count, 'remark on the score', 'remarks on the score'),

    parts: 'Parts',
    part: (index: number) => `Part ${index + 1}`,
    playedBy: 'Played by',
    nobody: 'Nobody here',
    pages: 'Pages begin with bars',
    pagesHint: 'The first bar of each page that the player has before him: 1, 38, 77.',
    pagesExample: '1, 38, 77',
    pagesNotKnown:
      'Pages not known: the score tells only its own. Type the first bar of each page of the part.',
    pageCount: (count: number) => counted(count, 'page', 'pages'),
    rests: 'Longest rests',
    rest: (seconds: string, at: string, bars: string) => `${seconds} at ${at}, ${bars}`,
    noRests: 'none',
    takesUp: (instrument: string, bar: string) => `takes up ${instrument} in ${bar}`,
    seconds: (seconds: number) => `${seconds.toFixed(1)}\u00a0s`,

    choice: {
      title: 'Several scores in one file',
      words: (name: string) => `“${name}” holds more than one score. Which one is it?`,
      take: 'Take this one',
      holds: (parts: readonly string[]) =>
        parts.length > 4 ? `${parts.slice(0, 3).join(', ')} and ${parts.length - 3} more` : parts.join(', '),
    },

    fromPart: (rest: string) =>
      `From the part: the shortest rest there is ${rest}. What is typed here is not used.`,
    giveMusic: 'Take the rest from the part…',
  },
} as const;
