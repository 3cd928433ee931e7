/** Where a planning fails, and why, as a sentence without its stop. */

import { barWords } from '../../score/words/bar-words.ts';
import { tenthsWords } from '../../score/words/clock-words.ts';
import type { Reason, Without } from './first-without.ts';
import type { NameOf } from './words.ts';

/** "it can be planned up to 1:00.0 (bar 48, second time), where Oboe has to play on without page 3: no rest ..." */
export function withoutWords({ player, page, at, bar, pass, reason }: Without, nameOf: NameOf): string {
  const where = bar === null || bar === '' ? '' : ` (${barWords(bar, pass)})`;
  const what = `where ${nameOf(player)} has to play on without page ${page}`;
  return `it can be planned up to ${tenthsWords(at)}${where}, ${what}: ${reasonWords(reason)}`;
}

function reasonWords(reason: Reason): string {
  switch (reason.kind) {
    case 'reach':
      return 'nobody who could turn in time reaches a leaf there';
    case 'hand':
      return 'nobody who reaches a leaf there has a hand free while nobody reads from it';
    case 'wide':
      return `${reason.pages} pages have to be in view at once there, and there is room for ${reason.room}`;
    case 'rest':
      return reason.shared
        ? `all who read there share no rest of ${seconds(reason.seconds)}`
        : `${restWords(reason)}, and there is room for ${pages(reason.room)}`;
  }
}

function restWords({ since, seconds: needed, longest }: Extract<Reason, { kind: 'rest' }>): string {
  const there = longest > 0 ? `; the longest has ${seconds(longest)}` : '';
  return `from page ${since} on no rest has the ${seconds(needed)} that a turn and the look ahead take${there}`;
}

function pages(count: number): string {
  return count === 1 ? '1 page' : `${count} pages`;
}

function seconds(time: number): string {
  return `${time.toFixed(1)} s`;
}
