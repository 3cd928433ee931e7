/** What the checks say beside the plan. */

import { counted } from './counting.ts';
import { severities } from './names.ts';

export const findingsWords = {
  figures: {
    title: 'Reading, turning and seeing each other',
    pages: (stand: string) => `Pages on ${stand}`,
    distance: (nearest: string, farthest: string) =>
      nearest === farthest ? `${nearest} away` : `${nearest} to ${farthest} away`,
    angle: (degrees: number) => `${Math.round(degrees)}° off square`,
    space: (minutes: number) => `a staff space is ${minutes.toFixed(1)} minutes of arc high`,
    bearing: (degrees: number) => {
      const whole = Math.round(degrees);
      if (whole === 0) return 'straight ahead';
      return `${Math.abs(whole)}° to the ${whole > 0 ? 'left' : 'right'}`;
    },
    turns: {
      glance: 'a glance',
      eyes: 'with the eyes',
      head: 'with the head',
      body: 'turning the body',
    },
    eyesMeet: 'eyes meet',
    blocked: (things: string) => `${things} in the way`,
    house: 'The house',
    grips: {
      turnCorner: (item: string) => `Turning on ${item}`,
      turnRidge: (item: string) => `Turning on ${item}`,
      pickUp: (item: string) => `Taking up ${item}`,
    },
    manners: {
      reach: 'within reach',
      lean: 'leaning over',
      step: 'with a step',
      walk: 'has to walk',
      none: 'cannot be reached',
    },
    takes: (seconds: number) => `about ${seconds.toFixed(1)}\u00a0s`,
    rest: (seconds: number, source: 'part' | 'typed') =>
      `rest ${seconds.toFixed(1)}\u00a0s, ${source === 'part' ? 'from the part' : 'as typed'}`,
    noRest: 'rest not known',
    toHouse: (degrees: number) =>
      Math.round(degrees) === 0 ? 'straight ahead' : `${Math.round(degrees)}° from where the player faces`,
  },

  whatIf: {
    title: 'What the house would see',
    caption: 'Share of the places that see a player well',
    player: 'Player',
    now: 'Now',
    gone: 'Away',
    lowered: 'Lowered',
    turned: 'Turned',
    by: (lower: string | null, turn: string | null) =>
      [
        lower === null ? '' : `Lowered: by ${lower}, as low as it goes.`,
        turn === null ? '' : `Turned: by ${turn}, where most is seen.`,
      ]
        .filter(Boolean)
        .join(' '),
    turn: (degrees: number, side: string) => `${degrees}° towards ${side}`,
    nobody: 'Taking it away, lowering or turning it changes nothing that matters for any place.',
    looking: 'Trying it…',
  },

  findings: {
    label: 'Findings',
    none: 'The checks found nothing in this setup.',
    waiting: 'Checking…',
    failed: (message: string) => `The checks stopped with an error: ${message}. The figures may be old.`,
    severities,
    sufferers: { house: 'The house', all: 'Everybody on the platform' },
    tryIt: 'Try it',
    tried: 'A change that was tried and helps',
    looking: 'Looking for a remedy…',
    mendsAll: (count: number) => `Mends all ${count} of these at once`,
    mendsMost: (count: number, of: number, left: string) => `Mends ${count} of these ${of}; leaves: ${left}`,
    oneCause: (count: number) => `${count} with one cause`,
    show: 'Show it on the plan',
    showAll: (count: number) => `Show all ${count}`,
    count: (fails: number, cautions: number) =>
      `${fails} failing, ${counted(cautions, 'caution', 'cautions')}`,
    disclaimer:
      'Edges, cables, routes and loads: this tool only gives cautions. Local codes, the venue and licensed practice decide.',
  },
} as const;
