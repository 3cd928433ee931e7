/** The order in which a line is set that has words written from the right among words written from the left (UAX 9). */

import bidiFactory from 'bidi-js';

/** What is laid out at one go; pieces follow each other from left to right. */
export interface VisualPiece {
  readonly text: string;
  /** Its letters run from right to left: whoever lays it out turns them round. */
  readonly rightToLeft: boolean;
}

const bidi = bidiFactory();

const RIGHT_TO_LEFT = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;

/** The sheets are written in English, so that a line begins at the left whatever name it begins with. */
export function visualPieces(text: string): VisualPiece[] {
  if (!RIGHT_TO_LEFT.test(text)) return [{ text, rightToLeft: false }];
  const { levels } = bidi.getEmbeddingLevels(text, 'ltr');
  const stretches = inVisualOrder(stretchesOf(text, levels));
  return stretches.flatMap(({ text: letters, level }) =>
    level % 2 === 0 ? [{ text: letters, rightToLeft: false }] : turned(letters),
  );
}

interface Stretch {
  readonly text: string;
  readonly level: number;
}

/** Neighbours of one level; never between the halves of one character. */
function stretchesOf(text: string, levels: Uint8Array): Stretch[] {
  const stretches: { text: string; level: number }[] = [];
  let at = 0;
  for (const character of text) {
    const level = levels[at] ?? 0;
    const last = stretches.at(-1);
    if (last?.level === level) last.text += character;
    else stretches.push({ text: character, level });
    at += character.length;
  }
  return stretches;
}

/** Rule L2: from the highest level down to the lowest odd one, whatever is at least as high is turned round. */
function inVisualOrder(stretches: readonly Stretch[]): Stretch[] {
  const highest = stretches.reduce((most, { level }) => Math.max(most, level), 0);
  let order = [...stretches];
  for (let level = highest; level > 0; level--) order = turnedFrom(order, level);
  return order;
}

function turnedFrom(stretches: readonly Stretch[], level: number): Stretch[] {
  const order: Stretch[] = [];
  let high: Stretch[] = [];
  for (const stretch of stretches) {
    if (stretch.level >= level) high.unshift(stretch);
    else {
      order.push(...high, stretch);
      high = [];
    }
  }
  return [...order, ...high];
}

/** Word by word from the left; a bracket opens to the other side (rule L4). */
function turned(text: string): VisualPiece[] {
  const words = text.split(/(\s+)/u).filter((word) => word !== '');
  return words.toReversed().map((word) => {
    const mirrored = Array.from(word, (letter) => bidi.getMirroredCharacter(letter) ?? letter);
    // A layout engine turns letters round; signs alone it takes for a line from the left.
    const turnsItself = RIGHT_TO_LEFT.test(word);
    return turnsItself
      ? { text: mirrored.join(''), rightToLeft: true }
      : { text: mirrored.toReversed().join(''), rightToLeft: false };
  });
}
