/** What could not be known of a score, in one sentence each. */

import type { Music } from '../music.ts';
import type { Remark, RemarkCode } from '../remark.ts';
import { msgid, ngettext, t } from '../../words/say.ts';
import { barLabels } from './bar-labels.ts';

/** What a sentence may name. */
interface Named {
  /** "bar 12", "bar 12 of movement 2": as of `barLabels`. */
  readonly bar: string;
  readonly part: string;
  readonly text: string;
  readonly count: number;
  readonly whole: boolean;
}

const SENTENCES: Readonly<Record<RemarkCode, (named: Named) => string>> = {
  'tempo.assumed': ({ bar, whole }) =>
    whole
      ? t`No tempo is marked anywhere: 120 quarters a minute are assumed. Type the tempo to have right times.`
      : t`No tempo is marked before ${bar}: 120 quarters a minute are assumed. Type the tempo to have right times.`,
  'tempo.words': ({ bar, text }) => t`The tempo is read from printed words in ${bar}: "${text}".`,
  'tempo.disagree': ({ bar }) =>
    t`In ${bar} two parts give different tempos; that of the later part is taken.`,
  'tempo.modulation': ({ bar }) =>
    t`In ${bar} one note is set equal to another; that change of tempo is not followed.`,
  'tempo.free': ({ count }) =>
    t`${bars(count)} with a fermata or a change of tempo in words: they are counted in strict time.`,
  'part.alone': () =>
    t`This is one part by itself without a tempo mark: tempo and jumps often stand only in the score. Take the times from the score, or type them.`,
  'part.unlisted': ({ part }) => t`Part "${part}" is not in the list of parts.`,
  'part.noId': () => t`A part does not say which one it is.`,
  'part.noDivisions': ({ part }) => t`Part "${part}" does not say what it counts in; quarters are assumed.`,
  'part.barShort': ({ part, bar, count }) =>
    t`Part "${part}" is shorter than the others in ${bars(count)}, first in ${bar}; there it is silent to the end of the bar.`,
  'bar.backup': ({ part, bar }) => t`Part "${part}" goes back beyond the beginning of ${bar}.`,
  'bar.lengthUnknown': ({ bar }) =>
    t`Nothing says how long ${bar} is: it is empty and without a time signature. Four quarters are assumed.`,
  'repeat.open': ({ bar }) => t`The repeat that begins in ${bar} does not end; it is left out.`,
  'repeat.inside': ({ bar }) =>
    t`A repeat sign stands within ${bar}; it is taken as standing at the end, or the beginning, of that bar.`,
  'repeat.nested': ({ bar }) =>
    t`The repeat that begins in ${bar} lies within another one; it is made again each time.`,
  'repeat.afterJump': ({ bar }) =>
    t`As the score says, the repeat that ends in ${bar} is made after a jump, too.`,
  'ending.open': ({ bar }) =>
    t`The ending that begins in ${bar} has no end; it is taken to reach to its repeat sign.`,
  'ending.noNumber': ({ bar }) =>
    t`The ending in ${bar} has no number; it is counted on from the one before.`,
  'ending.contradictory': ({ bar }) =>
    t`The ending in ${bar} leads to no repeat, though others follow it. Check the order of the performance.`,
  'jump.words': ({ bar, text }) => t`In ${bar} the words "${text}" are taken for a jump.`,
  'jump.ambiguous': ({ bar }) =>
    t`The jump in ${bar} does not say where the music ends: it is played on to the end. Type the order if that is wrong.`,
  'jump.stopsBeforeTrio': ({ bar }) => t`After the da capo the music stops before the Trio in ${bar}.`,
  'jump.noTarget': ({ bar }) =>
    t`The jump in ${bar} leads nowhere, so it is not made. Type the order if that is wrong.`,
  'jump.repeatsLeftOut': ({ bar, count }) =>
    t`After the jump in ${bar} repeats are left out; with them the music would be ${bars(count)} longer.`,
  'pages.ofScore': () =>
    t`The page breaks are those of the whole score; a player's part has other pages. Type them, or open the part.`,
  'file.otherRoots': ({ text }) => t`The file holds other scores as well: ${text}.`,
  'time.rounded': () =>
    t`The edges of notes are rounded to 1/80,640 of a quarter: the parts count in units that do not fit together.`,
};

/** The music to name bars as they are printed. */
export function remarkSentence(remark: Remark, music: Pick<Music, 'bars' | 'movements'>): string {
  return SENTENCES[remark.code]({
    bar: remark.bar === null ? t`the score` : t`bar ${barLabels(music)(remark.bar)}`,
    part: remark.part ?? '',
    text: remark.text ?? '',
    count: remark.count ?? 0,
    whole: remark.bar === null,
  });
}

function bars(count: number): string {
  return ngettext(msgid`${count} bar`, `${count} bars`, count);
}
