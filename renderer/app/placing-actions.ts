/** Everything in the store as commands, so that the list of commands finds what can be set down too. */

import { placeAtViewCentre } from '../canvas/placing.ts';
import { THINGS, type Thing } from '../store/things.ts';
import type { Action } from './actions.ts';
import { text } from './text.ts';

/** The placing of each thing whose name or words hold every one of these lower-case words; of none for no words. */
export function placingActions(wanted: readonly string[]): Action[] {
  if (wanted.length === 0) return [];
  return THINGS.filter(({ name, words }) => {
    const all = `${text.commands.place(name).toLowerCase()} ${words}`;
    return wanted.every((word) => all.includes(word));
  }).map(placing);
}

function placing(thing: Thing): Action {
  return {
    id: `place.${thing.id}`,
    words: () => text.commands.place(thing.name),
    keys: [],
    byBrowser: false,
    onPlan: false,
    may: () => true,
    run: (editor) => placeAtViewCentre(editor, thing),
  };
}
