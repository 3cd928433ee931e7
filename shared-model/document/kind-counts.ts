/** How many of a kind, in words: no language is left to add a letter to the word for one. */

import { msgid, ngettext } from '../words/say.ts';
import type { Kind } from './records.ts';

const COUNTED: Readonly<Record<Kind, (count: number) => string>> = {
  concert: (count) => ngettext(msgid`${count} concert`, `${count} concerts`, count),
  setup: (count) => ngettext(msgid`${count} setup`, `${count} setups`, count),
  score: (count) => ngettext(msgid`${count} score`, `${count} scores`, count),
  pagePlan: (count) => ngettext(msgid`${count} page plan`, `${count} page plans`, count),
  platform: (count) => ngettext(msgid`${count} platform`, `${count} platforms`, count),
  door: (count) => ngettext(msgid`${count} door`, `${count} doors`, count),
  seatBlock: (count) => ngettext(msgid`${count} seat block`, `${count} seat blocks`, count),
  place: (count) => ngettext(msgid`${count} place`, `${count} places`, count),
  storage: (count) => ngettext(msgid`${count} storage`, `${count} storages`, count),
  stock: (count) => ngettext(msgid`${count} stock`, `${count} stocks`, count),
  underlay: (count) => ngettext(msgid`${count} underlay`, `${count} underlays`, count),
  player: (count) => ngettext(msgid`${count} player`, `${count} players`, count),
  instrument: (count) => ngettext(msgid`${count} instrument`, `${count} instruments`, count),
  stand: (count) => ngettext(msgid`${count} stand`, `${count} stands`, count),
  instrumentStand: (count) => ngettext(msgid`${count} instrument stand`, `${count} instrument stands`, count),
  table: (count) => ngettext(msgid`${count} table`, `${count} tables`, count),
  seat: (count) => ngettext(msgid`${count} seat`, `${count} seats`, count),
  piano: (count) => ngettext(msgid`${count} piano`, `${count} pianos`, count),
  largeInstrument: (count) => ngettext(msgid`${count} large instrument`, `${count} large instruments`, count),
  lamp: (count) => ngettext(msgid`${count} lamp`, `${count} lamps`, count),
  riser: (count) => ngettext(msgid`${count} riser`, `${count} risers`, count),
  shape: (count) => ngettext(msgid`${count} object`, `${count} objects`, count),
  group: (count) => ngettext(msgid`${count} group`, `${count} groups`, count),
};

/** "3 stands", "1 stand". */
export function countOfKind(kind: Kind, count: number): string {
  return COUNTED[kind](count);
}
