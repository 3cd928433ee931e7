import type { AboutPage } from './check-page.ts';
import { OWN } from './cited.ts';

export function triedPage(): AboutPage<'tried'> {
  return {
    id: 'tried',
    title: 'Changes that were tried',
    asks: 'What does the button “Try it” rest on?',
    computes: [
      'Against most findings the tool looks for the least lowering, move or turn, carries it out on a copy by the same command as you would, and asks the same check again. Only what then finds nothing is offered.',
      'A change is not offered when it makes something else come or grow worse: a finding as grave as this one, any nearness to an open edge, a page seen too steeply, a back to the house, or another player seen less well.',
      '“Try it” is one step: undo takes it back.',
    ],
    verdicts: [],
    figures: [
      { what: 'What counts as least, and in which order', value: 'the smaller change first', source: OWN },
    ],
    settings: [],
    unknown: [
      'Whether the players like it. A change is a suggestion from figures alone.',
      'Changes of several things at once, beyond the few kinds that are tried.',
      'Advice that begins with “Try:” nobody has tried.',
    ],
    caution: null,
    related: ['sight', 'reach', 'reading', 'seeing'],
  };
}
