import { HALF_FIELD, PROFILE } from '../facing/published.ts';
import { TURN_LIMITS } from '../reading/gaze.ts';
import { t } from '../../words/say.ts';
import type { AboutPage } from './check-page.ts';
import { FIELD_OF_VISION, GAZE, PROFILE_MEMORY, SURVEY } from './cited.ts';

export function seeingPage(): AboutPage<'seeing'> {
  return {
    id: 'seeing',
    title: t`Seeing each other, and facing the house`,
    asks: t`Can those who must see each other do so, and how far does each turn for it?`,
    computes: [
      t`For every two players who must see each other: whether the straight line from eyes to eyes passes over or beside everything that stands there, and by how much the worst thing would have to come down.`,
      t`How far each has to turn from what he reads to the other’s face: a glance, with the eyes, with the head, or with the whole body. It is not the same both ways.`,
      t`For each player, the angle between where he faces and straight at the house.`,
    ],
    verdicts: [
      { code: 'facing.blocked', severity: 'fail', when: t`Something stands in the line between their eyes.` },
      {
        code: 'facing.turn',
        severity: 'caution',
        when: t`One of the two has to turn the body (over ${TURN_LIMITS.head}°).`,
      },
      {
        code: 'facing.house',
        severity: 'note',
        when: t`The player faces away from the house by more than a profile (${PROFILE}°).`,
      },
    ],
    figures: [
      {
        what: t`A glance, with the eyes, with the head: up to`,
        value: `${TURN_LIMITS.glance}°, ${TURN_LIMITS.eyes}°, ${TURN_LIMITS.head}°`,
        source: GAZE,
      },
      {
        what: t`Noticed at the edge of the view without turning, up to`,
        value: t`${HALF_FIELD}° to one side`,
        source: FIELD_OF_VISION,
      },
      { what: t`Profile`, value: `${PROFILE}°`, source: PROFILE_MEMORY },
      { what: t`Height of eyes`, value: t`from the stature`, source: SURVEY },
    ],
    settings: [
      {
        kind: 'form',
        form: 'player',
        what: t`Who must see whom: until you say otherwise, everybody everybody`,
      },
      { kind: 'form', form: 'stand', what: t`How high the desks are` },
      { kind: 'form', form: 'piano', what: t`How far the lid is open` },
    ],
    unknown: [
      t`Whether a cue can be read in a face from there, and in that light, is not known.`,
      t`Players keep still: nobody leans out to look past a stand.`,
      t`How two take their cues is theirs to say. Take the tick away where they may do without seeing each other.`,
    ],
    caution: null,
    related: ['reading', 'sight', 'tried'],
  };
}
