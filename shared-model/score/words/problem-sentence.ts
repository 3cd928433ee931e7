/** Why a score was not read, in one sentence: what is wrong, where, and what to do. */

import { language } from '../../words/catalogue.ts';
import { atMost } from '../../words/numbers.ts';
import { msgid, ngettext, t } from '../../words/say.ts';
import type { CountedThing, InBar, Problem, ScoreValue, TypedThing } from '../problem.ts';
import { tenthsWords } from './clock-words.ts';
import { xmlFaultWords } from './xml-fault-words.ts';

export function problemSentence(problem: Problem): string {
  switch (problem.code) {
    case 'xml.notWellFormed':
      return t`The XML breaks off or is damaged at line ${problem.line} (${xmlFaultWords(problem.reason)}); export it again from the music program.`;
    case 'xml.entities':
      return t`Line ${problem.line} declares entities, which scores do not need and this program does not follow; export it again from the music program.`;
    case 'xml.deep':
      return t`Its elements lie more than ${problem.most} deep in one another: that is no score.`;
    case 'xml.elements':
      return t`It has more than ${thousands(problem.most)} elements; split it into movements.`;
    case 'xml.attributes':
      return t`An element has more than ${problem.most} attributes: that is no score.`;
    case 'xml.text':
      return t`A text in it is longer than ${thousands(problem.most)} characters: that is no score.`;
    case 'xml.prologue':
      return t`More than ${thousands(problem.most)} characters stand before its first element: that is no score.`;
    case 'xml.size':
      return t`It is longer than ${thousands(problem.most)} characters; split it into movements.`;
    case 'score.notMusicXml':
      return t`It is XML, but no MusicXML score: it begins with <${problem.root}> instead of <score-partwise> or <score-timewise>.`;
    case 'score.opus':
      return t`It is a list of scores (an opus); open one of the scores it names.`;
    case 'score.noParts':
      return t`It holds no part; export it again from the music program.`;
    case 'score.noBars':
      return t`Its first part holds no bar; export it again from the music program.`;
    case 'score.tooLarge':
      return TOO_MANY[problem.what](thousands(problem.most));
    case 'number.range':
      return t`A length in it is too long or too finely divided to be counted exactly.`;
    case 'value.bad':
      return badValueSentence(problem);
    case 'parts.bars':
      return t`Part "${problem.other.name}" has ${bars(problem.other.bars)}, part "${problem.first.name}" ${bars(problem.first.bars)}; all parts of a score have the same, so export it again from the music program.`;
    case 'bar.partTwice':
      return t`Part "${problem.part}" stands twice in bar ${problem.number}; export it again from the music program.`;
    case 'jumps.endless':
      return t`Repeats and jumps come to more than ${thousands(problem.most)} bars: look for repeats with a wrong number of times, or type the order.`;
    case 'typed.bad':
      return CANNOT_BE_USED[problem.what](problem.given, problem.advice);
    case 'table.empty':
      return t`The table holds no rows; give page, first bar, last bar, and tempo or seconds.`;
    case 'table.rows':
      return t`The table has more than ${thousands(problem.most)} rows.`;
    case 'table.missingColumn':
      return t`The table has no column "${problem.column}"; its first row names ${problem.found}.`;
    case 'table.cell':
      return t`Row ${problem.row}, column "${problem.column}": "${problem.given}" cannot be used; ${problem.advice}.`;
    case 'tables.order':
      return t`Row ${problem.row} plays bar ${problem.bar} where "${problem.other.name}" (row ${problem.other.row}) plays bar ${problem.other.bar}; both have to go through the same bars in the same order.`;
    case 'tables.count':
      return t`It plays ${bars(problem.bars)}, and "${problem.other.name}" ${bars(problem.other.bars)}; both have to go through the same bars.`;
    case 'tables.beats':
      return t`Row ${problem.row} gives bar ${problem.bar} ${atMost(problem.beats, 10)} beats, and "${problem.other.name}" (row ${problem.other.row}) ${atMost(problem.other.beats, 10)}; a bar is as long for everybody.`;
    case 'tables.length':
      return t`It lasts ${tenthsWords(problem.seconds)}, and "${problem.other.name}" ${tenthsWords(problem.other.seconds)}; leave its tempo out to go by the other.`;
  }
}

const TOO_MANY: Readonly<Record<CountedThing, (most: string) => string>> = {
  parts: (most) => t`It has more than ${most} parts; split it.`,
  bars: (most) => t`It has more than ${most} bars; split it.`,
  jumps: (most) => t`It has more than ${most} jumps; split it.`,
  'tempo marks': (most) => t`It has more than ${most} tempo marks; split it.`,
  'notes between rests': (most) => t`It has more than ${most} notes between rests; split it.`,
};

const CANNOT_BE_USED: Readonly<Record<TypedThing, (given: string, advice: string) => string>> = {
  bar: (given, advice) => t`The bar "${given}" cannot be used: ${advice}.`,
  'first bar of a page': (given, advice) => t`The first bar of a page "${given}" cannot be used: ${advice}.`,
  tempo: (given, advice) => t`The tempo "${given}" cannot be used: ${advice}.`,
  order: (given, advice) => t`The order "${given}" cannot be used: ${advice}.`,
  range: (given, advice) => t`The range "${given}" cannot be used: ${advice}.`,
};

const VALUES: Readonly<Record<ScoreValue, () => string>> = {
  divisions: () => t`the divisions`,
  duration: () => t`the duration`,
  offset: () => t`the offset`,
  tempo: () => t`the tempo`,
  'times of a repeat': () => t`the times of a repeat`,
  'number of an ending': () => t`the number of an ending`,
};

function badValueSentence(problem: Extract<Problem, { code: 'value.bad' }>): string {
  const { given, allowed } = problem;
  const [place, what] = [placeOf(problem), VALUES[problem.what]()];
  return place === ''
    ? t`${what} is "${given}"; it has to be ${allowed}.`
    : t`In ${place}, ${what} is "${given}"; it has to be ${allowed}.`;
}

/** "part "Flute", bar 3, line 12", as far as it is known. */
function placeOf({ part, bar, line }: Partial<InBar>): string {
  return [
    ...(part ? [t`part "${part}"`] : []),
    ...(bar ? [t`bar ${bar}`] : []),
    ...(line === undefined ? [] : [t`line ${line}`]),
  ].join(', ');
}

function bars(count: number): string {
  return ngettext(msgid`${thousands(count)} bar`, `${thousands(count)} bars`, count);
}

/** 5 000 000 as 5,000,000, in German as 5.000.000. */
function thousands(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, language() === 'de' ? '.' : ',');
}
