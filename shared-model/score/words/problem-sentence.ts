/** Why a score was not read, in one sentence: what is wrong, where, and what to do. */

import type { InBar, Problem } from '../problem.ts';
import { tenthsWords } from './clock-words.ts';

const AGAIN = 'export it again from the music program';

export function problemSentence(problem: Problem): string {
  switch (problem.code) {
    case 'xml.notWellFormed':
      return `The XML breaks off or is damaged at line ${problem.line} (${problem.reason}); ${AGAIN}.`;
    case 'xml.entities':
      return `Line ${problem.line} declares entities, which scores do not need and this program does not follow; ${AGAIN}.`;
    case 'xml.deep':
      return `Its elements lie more than ${problem.most} deep in one another: that is no score.`;
    case 'xml.elements':
      return `It has more than ${thousands(problem.most)} elements; split it into movements.`;
    case 'xml.attributes':
      return `An element has more than ${problem.most} attributes: that is no score.`;
    case 'xml.text':
      return `A text in it is longer than ${thousands(problem.most)} characters: that is no score.`;
    case 'xml.prologue':
      return `More than ${thousands(problem.most)} characters stand before its first element: that is no score.`;
    case 'xml.size':
      return `It is longer than ${thousands(problem.most)} characters; split it into movements.`;
    case 'score.notMusicXml':
      return `It is XML, but no MusicXML score: it begins with <${problem.root}> instead of <score-partwise> or <score-timewise>.`;
    case 'score.opus':
      return 'It is a list of scores (an opus); open one of the scores it names.';
    case 'score.noParts':
      return `It holds no part; ${AGAIN}.`;
    case 'score.noBars':
      return `Its first part holds no bar; ${AGAIN}.`;
    case 'score.tooLarge':
      return `It has more than ${thousands(problem.most)} ${problem.what}; split it.`;
    case 'number.range':
      return 'A length in it is too long or too finely divided to be counted exactly.';
    case 'value.bad':
      return `${placeOf(problem)}the ${problem.what} is "${problem.given}"; it has to be ${problem.allowed}.`;
    case 'parts.bars':
      return `Part "${problem.other.name}" has ${bars(problem.other.bars)}, part "${problem.first.name}" ${bars(problem.first.bars)}; all parts of a score have the same, so ${AGAIN}.`;
    case 'bar.partTwice':
      return `Part "${problem.part}" stands twice in bar ${problem.number}; ${AGAIN}.`;
    case 'jumps.endless':
      return `Repeats and jumps come to more than ${thousands(problem.most)} bars: look for repeats with a wrong number of times, or type the order.`;
    case 'typed.bad':
      return `The ${problem.what} "${problem.given}" cannot be used: ${problem.advice}.`;
    case 'table.empty':
      return 'The table holds no rows; give page, first bar, last bar, and tempo or seconds.';
    case 'table.rows':
      return `The table has more than ${thousands(problem.most)} rows.`;
    case 'table.missingColumn':
      return `The table has no column "${problem.column}"; its first row names ${problem.found}.`;
    case 'table.cell':
      return `Row ${problem.row}, column "${problem.column}": "${problem.given}" cannot be used; ${problem.advice}.`;
    case 'tables.order':
      return `Row ${problem.row} plays bar ${problem.bar} where "${problem.other.name}" (row ${problem.other.row}) plays bar ${problem.other.bar}; both have to go through the same bars in the same order.`;
    case 'tables.count':
      return `It plays ${bars(problem.bars)}, and "${problem.other.name}" ${bars(problem.other.bars)}; both have to go through the same bars.`;
    case 'tables.beats':
      return `Row ${problem.row} gives bar ${problem.bar} ${problem.beats} beats, and "${problem.other.name}" (row ${problem.other.row}) ${problem.other.beats}; a bar is as long for everybody.`;
    case 'tables.length':
      return `It lasts ${tenthsWords(problem.seconds)}, and "${problem.other.name}" ${tenthsWords(problem.other.seconds)}; leave its tempo out to go by the other.`;
  }
}

function placeOf({ part, bar, line }: Partial<InBar>): string {
  const words = [
    ...(part ? [`part "${part}"`] : []),
    ...(bar ? [`bar ${bar}`] : []),
    ...(line === undefined ? [] : [`line ${line}`]),
  ].join(', ');
  return words === '' ? '' : `In ${words}, `;
}

function bars(count: number): string {
  return count === 1 ? '1 bar' : `${thousands(count)} bars`;
}

/** 5 000 000 as 5,000,000. */
function thousands(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ',');
}
