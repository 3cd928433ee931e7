/** Whether two players of a setup must see each other. */

import { inSetup } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { PlayerPair } from '../document/records.ts';
import { t } from '../words/say.ts';
import { refuse, type Command } from './command.ts';
import { editsOf, propose } from './propose.ts';
import { theRecord } from './targets.ts';
import { nameOf } from './words.ts';

export interface SetEyeContact {
  readonly setup: Id<'setup'>;
  readonly pair: PlayerPair;
  /** False: they may do without seeing each other in this setup. */
  readonly needed: boolean;
}

/** The pairs that may do without are kept with the setup, so copies of it have them too. */
export const setEyeContact: Command<SetEyeContact> = (document, { setup: id, pair, needed }) => {
  const target = theRecord(document, id, 'setup');
  if (!target.ok) return target;
  const [first, second] = pair.map((player) =>
    inSetup(document, id, 'player').find((record) => record.id === player),
  );
  if (!first || !second || first === second) return refuse(t`Name two different players of this setup.`);
  const others = target.record.needNotSee.filter((other) => !isSamePair(other, pair));
  const needNotSee = needed ? others : [...others, pair];
  const [one, other] = [nameOf(document, first), nameOf(document, second)];
  const label = needed
    ? t`let ${one} and ${other} see each other`
    : t`let ${one} and ${other} do without seeing each other`;
  return propose(document, editsOf([{ ...target.record, needNotSee }]), { label });
};

/** In either order. */
export function isSamePair([a, b]: PlayerPair, [c, d]: PlayerPair): boolean {
  return (a === c && b === d) || (a === d && b === c);
}
