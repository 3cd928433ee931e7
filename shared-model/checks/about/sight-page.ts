import { USUAL_LIMITS } from '../sentence-parts.ts';
import { RAIL_AHEAD } from '../scene/house.ts';
import { BAND_FLOORS } from '../sightlines/bands.ts';
import { BODY_DEPTH } from '../../catalogue/outlines.ts';
import { t } from '../../words/say.ts';
import { percent, type AboutPage, type Teller } from './check-page.ts';
import { AUDITORIUM_STUDY, OWN, PRACTICE, SURVEY } from './cited.ts';

export function sightPage({ length }: Teller): AboutPage<'sight'> {
  return {
    id: 'sight',
    title: t`What the house sees`,
    asks: t`From how many places of the house is each player seen well?`,
    computes: [
      t`Every player has a window: an upright rectangle through the middle of his body, square to the line from the eye, as wide as the shoulders, from the waist (or the lowest part of the instrument that shows) to the top of the head.`,
      t`From the eye of every place, desks with their paper, other players and what they hold, pianos, tables, large instruments, levels, rails and the edge of the platform throw shadows on that window. The visible share is the part of its area that no shadow covers. Shadows are joined as shapes and measured exactly; no points are sampled.`,
      t`A place sees a player well when its share reaches your limit. The figure under the plan is the share of places that do; it also tells the middle place and the worst one.`,
    ],
    verdicts: [
      {
        code: 'sight.house',
        severity: 'fail',
        when: t`Fewer places see the player well than you ask for.`,
      },
    ],
    figures: [
      {
        what: t`Bands of the coloured seats begin at`,
        value: BAND_FLOORS.slice(1).map(percent).join(', '),
        source: AUDITORIUM_STUDY,
      },
      { what: t`Heights and breadths of bodies`, value: t`from the stature`, source: SURVEY },
      { what: t`Depth of a body, chest to back`, value: length(BODY_DEPTH), source: PRACTICE },
      {
        what: t`A rail stands before the eyes of the front row by`,
        value: length(RAIL_AHEAD),
        source: PRACTICE,
      },
      {
        what: t`Limits until you change them`,
        value: t`${percent(USUAL_LIMITS.seesWell)} of a player, from ${percent(USUAL_LIMITS.houseShare)} of the places`,
        source: OWN,
      },
    ],
    settings: [
      { kind: 'limit', limit: 'seesWell', what: t`How much of a player a place must see` },
      { kind: 'limit', limit: 'houseShare', what: t`How many of the places must` },
      { kind: 'switch', field: 'headsInFront', what: t`Whether heads in front count` },
      { kind: 'form', form: 'seats', what: t`Where the places are, and how high their eyes` },
      { kind: 'form', form: 'player', what: t`How tall a player is, and what he sits on` },
    ],
    unknown: [
      t`Arms, legs and chairs, lamps and the thin columns of stands are left out; a body is two upright rounds and a head.`,
      t`Of the room only what is on the plan is known: no pillars, balconies or lighting rigs that nobody has drawn.`,
      t`Nobody moves here: a leaning player or a turned head is not followed.`,
      t`How much of a player is enough is a matter of taste; no standard says it of a concert.`,
    ],
    caution: null,
    related: ['rows', 'tried'],
  };
}
