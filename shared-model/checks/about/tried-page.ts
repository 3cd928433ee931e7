import { t } from '../../words/say.ts';
import type { AboutPage } from './check-page.ts';
import { OWN } from './cited.ts';

export function triedPage(): AboutPage<'tried'> {
  return {
    id: 'tried',
    title: t`Changes that were tried`,
    asks: t`What does the button “Try it” rest on?`,
    computes: [
      t`Against most findings the tool looks for the least lowering, move or turn, carries it out on a copy by the same command as you would, and asks the same check again. Only what then finds nothing is offered.`,
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
      t`Changes of several things at once, beyond the few kinds that are tried.`,
      t`Advice that begins with “Try:” nobody has tried.`,
    ],
    caution: null,
    related: ['sight', 'reach', 'reading', 'seeing'],
  };
}
