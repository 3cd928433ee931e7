import { HALF_FIELD, PROFILE } from '../facing/published.ts';
import { TURN_LIMITS } from '../reading/gaze.ts';
import type { AboutPage } from './check-page.ts';
import { FIELD_OF_VISION, GAZE, PROFILE_MEMORY, SURVEY } from './cited.ts';

export function seeingPage(): AboutPage<'seeing'> {
  return {
    id: 'seeing',
    title: 'Seeing each other, and facing the house',
    asks: 'Can those who must see each other do so, and how far does each turn for it?',
    computes: [
      'For every two players who must see each other: whether the straight line from eyes to eyes passes over or beside everything that stands there, and by how much the worst thing would have to come down.',
      'How far each has to turn from what he reads to the other’s face: a glance, with the eyes, with the head, or with the whole body. It is not the same both ways.',
      'For each player, the angle between where he faces and straight at the house.',
    ],
    verdicts: [
      { code: 'facing.blocked', severity: 'fail', when: 'Something stands in the line between their eyes.' },
      {
        code: 'facing.turn',
        severity: 'caution',
        when: `One of the two has to turn the body (over ${TURN_LIMITS.head}°).`,
      },
      {
        code: 'facing.house',
        severity: 'note',
        when: `The player faces away from the house by more than a profile (${PROFILE}°).`,
      },
    ],
    figures: [
      {
        what: 'A glance, with the eyes, with the head: up to',
        value: `${TURN_LIMITS.glance}°, ${TURN_LIMITS.eyes}°, ${TURN_LIMITS.head}°`,
        source: GAZE,
      },
      {
        what: 'Noticed at the edge of the view without turning, up to',
        value: `${HALF_FIELD}° to one side`,
        source: FIELD_OF_VISION,
      },
      { what: 'Profile', value: `${PROFILE}°`, source: PROFILE_MEMORY },
      { what: 'Height of eyes', value: 'from the stature', source: SURVEY },
    ],
    settings: [
      {
        kind: 'form',
        form: 'player',
        what: 'Who must see whom: until you say otherwise, everybody everybody',
      },
      { kind: 'form', form: 'stand', what: 'How high the desks are' },
      { kind: 'form', form: 'piano', what: 'How far the lid is open' },
    ],
    unknown: [
      'Whether a cue can be read in a face from there, and in that light, is not known.',
      'Players keep still: nobody leans out to look past a stand.',
      'How two take their cues is theirs to say. Take the tick away where they may do without seeing each other.',
    ],
    caution: null,
    related: ['reading', 'sight', 'tried'],
  };
}
