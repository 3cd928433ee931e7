import { t } from '../../words/say.ts';
import { ROUND_LENGTH, ROUND_TURN } from '../remedies/settable.ts';
import type { AboutPage, Teller } from './check-page.ts';
import { OWN } from './cited.ts';

export function triedPage({ length, units }: Teller): AboutPage<'tried'> {
  return {
    id: 'tried',
    title: t`Changes that were tried`,
    asks: t`What does the button “Try it” rest on?`,
    computes: [
      t`Against most findings the tool looks for the least lowering, move or turn, carries it out on a copy by the same command as you would, and asks the same check again. Only what then finds nothing is offered.`,
      t`The amount is rounded to what a person sets, ${ROUND_TURN}° or ${length(ROUND_LENGTH[units])}, where that helps as well.`,
      t`Where no such change helps, desks laid flatter and two changes together are tried: of some dozens of round changes to the four things that matter most the ten that bring most, each with each. Two together are told as such.`,
      t`For whoever suffers from several findings it is looked which of the changes found clears most of them; the list says what it leaves.`,
      t`A change is not offered when it makes something else come or grow worse: a finding as grave as this one, any nearness to an open edge, a page seen too steeply, a back to the house, or another player seen less well.`,
      t`“Try it” is one step: undo takes it back.`,
    ],
    verdicts: [],
    figures: [
      { what: t`What counts as least, and in which order`, value: t`the smaller change first`, source: OWN },
    ],
    settings: [],
    unknown: [
      t`Whether the players like it. A change is a suggestion from figures alone.`,
      t`Three or more changes at once, and pairs beyond those that are tried.`,
      t`Advice that begins with “Try:” nobody has tried.`,
    ],
    caution: null,
    related: ['sight', 'reach', 'reading', 'seeing'],
  };
}
