/** Pages of help about what is no check of a setup: changeovers, and how sources are marked. */

export const helpPagesWords = {
  changeover: {
    title: 'Changeovers between setups',
    asks: 'What is struck, set and moved between two setups, and how long may it take?',
    computes: [
      'Things of one kind stand in for each other: of all ways to make one setup of the other, the one with the least carrying is taken, along ways that really are free.',
      'Two people share the work in an order that is found by a few rules of preference; that no other order ends sooner is not promised. Times come with a least and a most.',
    ],
    usualWalk: 'Walking, as it usually goes',
    walks: 'Walking, from slow to brisk',
    between: (slow: string, brisk: string) => `${slow} to ${brisk} m/s`,
    handling: 'Brakes, marks, cables and adjusting',
    seconds: 'seconds each',
    sameSpot: 'A thing has not moved when it is within',
    stock: 'What there is, and where it waits',
    unknown: [
      'Weights, who is there and what they can carry.',
      'Doors that are shut, and people in the way.',
    ],
  },

  sources: {
    title: 'How sources are marked',
    asks: 'How far can a figure be trusted?',
    computes: [
      'Published: somebody has read the figure in the source that is named.',
      'As quoted: it was read where others quote it, and not in the source itself.',
      'From memory: nobody has looked it up. Check it before anything hangs on it.',
      'Common practice, no source: a fact of the trade that nobody publishes. This tool’s own: a choice, made to be useful.',
    ],
    unknown: [
      'No figure says what is allowed: codes, the venue and licensed practice do.',
      'The survey is of soldiers from 17 to 58 years. Where it matters, measure the people who play.',
    ],
  },
} as const;
