/** The plan and what belongs to it: section, house, what is seen from a place. */

import type { Units } from '#model/document/measures.ts';
import { counted, percent, places, points } from './counting.ts';

export const planWords = {
  plan: {
    label: 'Plan of the platform and the house',
    help: (fine: string, coarse: string, brackets: boolean) =>
      `Arrow keys move what is selected by ${fine}, with Shift by ${coarse}.${brackets ? ' Square brackets turn it.' : ''} The list “On the platform” has every item with its position.`,
    summary: (setup: string, items: number, seats: number) =>
      `${setup === '' ? '' : `${setup}: `}${items === 0 ? 'Nothing' : counted(items, 'item', 'items')} on the platform, ${seats === 0 ? 'no places' : places(seats)} in the house.`,
    zoomIn: 'Zoom in',
    zoomOut: 'Zoom out',
    fit: 'Show everything',
    fitStage: 'Show the platform',
    fitSelection: 'Show what is selected',
    section: 'Section through the house',
    actualSize: 'True size on this screen',
    ratio: (ratio: number) => `1:${ratio}`,
    ratioHelp: 'Scale on this screen, about',
    panHand: 'Move the view',
    arrangeHand: 'Arrange',
    faces: (name: string) => `faces ${name}`,
    turned: (by: number) => `${Math.abs(by)}° ${by < 0 ? 'clockwise' : 'anticlockwise'}`,
    pointer: (position: string) => position,
  },

  section: {
    label: 'Section',
    explained:
      'C: by how much the line of sight of a row passes above the eyes in front. A cross: a head or a thing cuts it.',
    cut: 'Cut',
    centreLine: 'On the centre line',
    through: (seat: string, player: string) => `From place ${seat} to ${player}`,
    chooseSeat: 'From a place: click one on the plan',
    focus: 'Lines of sight to',
    edge: 'the edge of the platform',
    described: (focus: string) => `The house from the side, with the line of sight of every row to ${focus}`,
    noRoom: 'There is no room here for a section of this house.',
    close: 'Close the section',
    look: 'How the section is looked at',
    fit: 'Show all of the section',
    keys: 'Plus and minus zoom, the arrows move, 0 shows all of it.',
    rows: {
      label: 'C-values row by row',
      row: 'Row',
      away: 'Away',
      awayHelp: 'From the eyes of the row to what is looked at, measured level',
      clearance: (units: Units) => `C, ${units === 'metric' ? 'mm' : 'in'}`,
      overNext: 'next',
      overNextHelp: 'C over the eyes of the next row in front',
      overInLine: 'in line',
      overInLineHelp: 'C over the nearest head in line: the one that counts where rows are staggered',
      step: 'Step',
      stepHelp: 'How much higher these eyes are than those of the next row in front',
      needed: 'Step for a C of',
      neededHelp: (clearance: string) =>
        `The step that would give a C of ${clearance} over the head in line, the rows in front as they are`,
      sees: 'The row sees',
      notDrawn: (name: string) => `${name}, not on this cut: along its own middle`,
    },
  },

  house: {
    label: 'What the house sees',
    worst: 'Worst seen',
    worstShort: 'by each seat',
    worstHelp: 'Each seat shows whom it sees least of',
    off: 'Plain seats',
    nobody: 'Nobody plays here yet: place a player and the house tells what it sees of him.',
    noPlaces: 'The house has no places yet, so there is nowhere to judge from.',
    seenWell: (share: number) => `${percent(share)} of the places see well`,
    figure: (share: number) => percent(share),
    ofPlaces: 'of places see well',
    seeWell: 'see well',
    change: (points: number) => `${points > 0 ? '+' : '−'}${Math.abs(points)}`,
    changeWords: (change: number) => `${points(change)} ${change > 0 ? 'more' : 'fewer'} than before`,
    median: (share: number) => `middle seat sees ${percent(share)}`,
    worstSeat: (label: string, share: number) => `worst: ${label}, ${percent(share)}`,
    legend: 'Share of the player that a seat sees',
    bandCount: (words: string, count: number) => `${words}: ${places(count)}`,
    changes: (
      changes: readonly { readonly player: string; readonly now: number; readonly change: number }[],
    ) =>
      changes
        .map(
          ({ player, now, change }) =>
            `${player}: ${percent(now)} of places see well, ${points(change)} ${change > 0 ? 'more' : 'fewer'}`,
        )
        .join('; '),
    calculating: 'Looking…',
    below: (limit: number) => `below the ${percent(limit)} asked for`,
  },

  seen: {
    fromPlace: (label: string) => `What place ${label} sees`,
    byPlayer: (name: string) => `What ${name} sees`,
    enlarge: 'Enlarge the picture',
    large: 'Picture of what the place or player sees',
    counted: 'Only what the percentages count',
    countedHelp:
      'Drawn as the percentages count: each player two upright bodies and a head, large things as boxes. Just what hides somebody here takes from his share.',
    figuresHelp:
      'Drawn with arms, legs and chairs, which the percentages leave out: here they may hide a little more. Of the room only its floor is known.',
  },

  seat: {
    short: (label: string, player: string, share: number) => `${label}: ${player} ${percent(share)}`,
    title: (label: string) => `From place ${label}`,
    close: 'Close',
    sees: (share: number) => `sees ${percent(share)}`,
    explained: 'How much of each player is seen from here, and what is in the way',
    face: (share: number) => `${percent(share)} of the face`,
    all: 'nothing in the way',
    cover: (name: string, share: number) => `${name} hides ${percent(share)}`,
    fetching: 'Looking from there…',
  },

  /** In the corner of the plan, about the rings round a player. */
  reachAt: (height: string) => `Rings: reach at ${height}; broken: with a lean`,
} as const;
