/** The time strip: a plan of page turns as it runs. */

export const stripWords = {
  strip: {
    label: 'Time strip',
    lanes: 'Players and what they turn',
    action: 'Time strip of this setup',
    close: 'Close the time strip',
    why: 'Plays the planned page turns along the music: the desks on the plan show what each player sees at the moment.',
    noPlan: 'There is no plan of the page turns of this setup yet.',
    noneFound: 'No plan of the page turns was found.',
    keptNotJudged:
      'A page plan is kept, but it cannot be judged as the concert is now, so it cannot be played. Page turns says more.',
    seeTurns: 'See the page turns',
    stale: 'The concert has changed since this was planned.',

    time: 'Time',
    play: 'Play',
    pause: 'Pause',
    turnBefore: 'Previous turn',
    turnAfter: 'Next turn',
    speed: 'Speed',
    speeds: (speed: number) => (speed === 0.5 ? '½×' : `${speed}×`),
    wider: 'Show less time, larger',
    narrower: 'Show more time',
    all: 'Show all of it',
    help: 'Arrow keys: a second; with Shift: a bar. Page up and down: the turns. Space plays. Plus and minus: how much is shown.',
    at: (clock: string, bar: string) => (bar === '' ? clock : `${clock}, ${bar}`),
    of: (clock: string) => `of ${clock}`,
    ended: 'at the end',

    now: 'At this moment',
    player: 'Player',
    page: 'Page',
    where: 'Where',
    does: 'Does',
    noPage: 'none',
    place: (stand: string, slot: number, of: number) =>
      of > 1 ? `${stand}, ${PLACES[of]?.[slot] ?? `page ${slot + 1} of ${of}`}` : stand,
    notSeen: 'not in view',
    lost: 'plays without the page',
    plays: 'plays',
    rests: 'rests',
    turns: (player: string, hand: 'left' | 'right') => `${player} turns, ${hand} hand`,
    turning: (stand: string, hand: 'left' | 'right') => `turns at ${stand}, ${hand} hand`,
    changes: (player: string, instrument: string) => `${player} changes to ${instrument}`,
    changing: (instrument: string, walks: boolean) =>
      walks ? `goes to change to ${instrument}` : `changes to ${instrument}`,

    warnings: 'To look at',
    more: (count: number) => `and ${count} more, marked on the strip`,
    fine: 'Every turn has time to spare.',
    limits: 'Listed: less than 1\u00a0s to spare, or less than half of what is needed.',
    legend: [
      'Filled: plays from the page.',
      'Bar with upright ends: rests.',
      'Solid block: a leaf is moved; the line above it is the time there is.',
      'Triangle: little time to spare.',
      'Lozenge: changes instruments.',
    ].join('\n'),
  },
} as const;

/** In a row of so many pages, as the reader sees it. */
const PLACES: Readonly<Record<number, readonly string[]>> = {
  2: ['on the left', 'on the right'],
  3: ['on the left', 'in the middle', 'on the right'],
};
