/** Where a planning fails, and why, as a sentence without its stop. */

import { barWords } from '../../score/words/bar-words.ts';
import { tenthsWords } from '../../score/words/clock-words.ts';
import { fixed } from '../../words/numbers.ts';
import { msgid, ngettext, t } from '../../words/say.ts';
import type { Reason, Without } from './first-without.ts';
import type { NameOf } from './words.ts';

/** "it can be planned up to 1:00.0 (bar 48, second time), where Oboe has to play on without page 3: no rest ..." */
export function withoutWords({ player, page, at, bar, pass, reason }: Without, nameOf: NameOf): string {
  const time = tenthsWords(at);
  const where = bar === null || bar === '' ? time : `${time} (${barWords(bar, pass)})`;
  return t`it can be planned up to ${where}, where ${nameOf(player)} has to play on without page ${page}: ${reasonWords(reason)}`;
}

function reasonWords(reason: Reason): string {
  switch (reason.kind) {
    case 'reach':
      return t`nobody who could turn in time reaches a leaf there`;
    case 'hand':
      return t`nobody who reaches a leaf there has a hand free while nobody reads from it`;
    case 'wide':
      return t`${reason.pages} pages have to be in view at once there, and there is room for ${reason.room}`;
    case 'rest':
      return reason.shared
        ? t`all who read there share no rest of ${seconds(reason.seconds)}`
        : t`${restWords(reason)}, and there is room for ${pages(reason.room)}`;
  }
}

function restWords({ since, seconds: needed, longest }: Extract<Reason, { kind: 'rest' }>): string {
  const none = t`from page ${since} on no rest has the ${seconds(needed)} that a turn and the look ahead take`;
  return longest > 0 ? t`${none}; the longest has ${seconds(longest)}` : none;
}

function pages(count: number): string {
  return ngettext(msgid`${count} page`, `${count} pages`, count);
}

function seconds(time: number): string {
  return `${fixed(time, 1)} s`;
}
