/** Where things and people stand: in each other's way, and with room for elbows. */

import { BODY_DEPTH } from '../../catalogue/outlines.ts';
import { ELBOWS_AHEAD } from '../room/elbow.ts';
import { whoDecides } from '../room/room-words.ts';
import { t } from '../../words/say.ts';
import type { AboutPage, Teller } from './check-page.ts';
import { PRACTICE, SURVEY } from './cited.ts';

export function overlapPage(): AboutPage<'overlap'> {
  return {
    id: 'overlap',
    title: t`Things in each other’s place, or over the edge`,
    asks: t`Does everything that is drawn fit where it stands?`,
    computes: [
      t`Outlines on plan together with heights: a desk may hang over knees, legs of stands may stand between legs, a lamp may be clipped to a stand. Desks and the paper on them are compared as boards in space.`,
      t`What overlaps is told with the shortest shift that parts the two. What reaches over the platform, or over the level it stands on, is told with how far it stands out.`,
    ],
    verdicts: [
      { code: 'room.overlap', severity: 'fail', when: t`Two things take up the same room.` },
      {
        code: 'room.offPlatform',
        severity: 'fail',
        when: t`Something reaches over the outline of the platform or of the level it stands on.`,
      },
    ],
    figures: [
      { what: t`Outlines of instruments and furniture`, value: t`from the catalogue`, source: PRACTICE },
    ],
    settings: [
      { kind: 'form', form: 'platform', what: t`The outline of the platform` },
      { kind: 'form', form: 'stand', what: t`Form, size and height of a stand` },
    ],
    unknown: [
      t`Cables, bags, cases and whatever else nobody has drawn.`,
      t`Whether a platform or a level bears what is set on it: loads are not computed at all.`,
    ],
    caution: t`What stands over an edge can fall, and so can whoever follows it. ${whoDecides()}`,
    related: ['elbow', 'edge', 'tried'],
  };
}

export function elbowPage({ length }: Teller): AboutPage<'elbow'> {
  return {
    id: 'elbow',
    title: t`Elbow room`,
    asks: t`Has each player the room beside him that his instrument wants?`,
    computes: [
      t`On either side of the middle of the body, as far as the arms go while playing: what stands there between the height of the waist and of the shoulders, the zones of neighbours and walls included.`,
      t`Wanted is half the breadth of the shoulders with what the instrument asks for beyond it, and never less than half the breadth over both elbows. A player’s own stand, instrument and table do not count against him.`,
    ],
    verdicts: [
      { code: 'room.elbow', severity: 'caution', when: t`On one side there is less room than is wanted.` },
    ],
    figures: [
      { what: t`Breadth of shoulders and over both elbows`, value: t`from the stature`, source: SURVEY },
      {
        what: t`What each instrument asks for beyond the shoulders`,
        value: t`from the catalogue`,
        source: PRACTICE,
      },
      { what: t`Arms are looked for before the body up to`, value: length(ELBOWS_AHEAD), source: PRACTICE },
      { what: t`Depth of a body`, value: length(BODY_DEPTH), source: PRACTICE },
    ],
    settings: [{ kind: 'form', form: 'player', what: t`How tall the player is, and which instruments` }],
    unknown: [
      t`How somebody bows or breathes; who plays with wide gestures needs more.`,
      t`Loudness: nothing here says how near a loud neighbour may be. That is for those who know hearing protection.`,
    ],
    caution: null,
    related: ['overlap', 'tried'],
  };
}
