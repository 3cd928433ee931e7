/** Every word of the window, in one place. `Catalogue` is what a second language has to fill. */

import type { Severity } from '#model/checks/finding.ts';
import type { Kind } from '#model/document/records.ts';
import type { GuideReason } from '../canvas/snapping.ts';
import type { Shelf } from '../store/things.ts';

const shelves: Readonly<Record<Shelf, string>> = {
  players: 'Players',
  stands: 'Music stands',
  seats: 'Chairs and stools',
  keyboards: 'Pianos',
  percussion: 'Percussion and large instruments',
  holders: 'Stands for instruments',
  tables: 'Tables',
  levels: 'Risers and lamps',
  house: 'Objects and columns',
};

const kinds: Readonly<Record<Kind, string>> = {
  concert: 'Concert',
  setup: 'Setup',
  platform: 'Platform',
  door: 'Door',
  seatBlock: 'Seats',
  place: 'Place in the house',
  player: 'Player',
  instrument: 'Instrument',
  stand: 'Music stand',
  instrumentStand: 'Instrument stand',
  table: 'Table',
  seat: 'Chair',
  piano: 'Piano',
  largeInstrument: 'Large instrument',
  lamp: 'Lamp',
  riser: 'Riser',
  shape: 'Object',
};

const kindsMany: Readonly<Record<Kind, string>> = {
  concert: 'Concert',
  setup: 'Setups',
  platform: 'Platform',
  door: 'Doors',
  seatBlock: 'Seats',
  place: 'Single places',
  player: 'Players',
  instrument: 'Instruments',
  stand: 'Music stands',
  instrumentStand: 'Instrument stands',
  table: 'Tables',
  seat: 'Chairs',
  piano: 'Pianos',
  largeInstrument: 'Large instruments',
  lamp: 'Lamps',
  riser: 'Risers',
  shape: 'Objects',
};

const severities: Readonly<Record<Severity, string>> = { fail: 'Fails', caution: 'Caution', note: 'Note' };

const guides: Readonly<Record<GuideReason, (others: string, distance: string) => string>> = {
  centreLine: () => 'on the centre line',
  frontEdge: () => 'at the front edge',
  edgeDistance: (_, distance) => `${distance} from the front edge`,
  inLine: (others) => (others ? `in line with ${others}` : 'in line'),
  mirrored: (others) => (others ? `opposite ${others}` : 'opposite'),
  midway: (others) => (others ? `half-way between ${others}` : 'half-way'),
};

/** "1 place", "2 places". */
const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

const points = (count: number): string => counted(Math.abs(count), 'point', 'points');
const places = (count: number): string => counted(count, 'place', 'places');

/** With a space that does not break. */
const percent = (share: number): string => `${Math.round(share * 100)}\u00a0%`;

const english = {
  product: 'Standlines',
  percent,
  copied: (count: number) => `Copied ${counted(count, 'thing', 'things')}`,
  did: (label: string) => `Done: ${label}`,
  removedAlong: (who: string, what: string) => `Deleted ${who}, and what came along: ${what}.`,
  undid: (label: string) => `Undone: ${label}`,
  redid: (label: string) => `Done again: ${label}`,
  kinds,
  kindsMany,
  shelves,
  guides,
  list: (names: readonly string[]) =>
    names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`,

  start: {
    opening: 'Opening…',
    failed: 'Standlines could not start',
    retry: 'Try again',
  },

  bar: {
    label: 'Concert and file',
    file: 'File',
    new: 'New…',
    open: 'Open…',
    recent: 'Open recent',
    noRecent: 'Nothing opened yet',
    forgetRecent: 'Clear this list',
    demo: 'Open the demo concert',
    save: 'Save',
    saveAs: 'Save as…',
    print: 'Print the plot…',
    printShort: 'Print',
    concert: 'Concert and limits…',
    edited: 'not saved yet',
    readOnly: 'read-only',
    undo: (name: string | null) => (name ? `Undo ${name}` : 'Nothing to undo'),
    redo: (name: string | null) => (name ? `Redo ${name}` : 'Nothing to redo'),
    commands: 'Find a command',
    view: 'View',
    theme: 'Light or dark',
    themes: { system: 'As the system', light: 'Light', dark: 'Dark' },
    singleKeys: 'Single letters as keys',
    units: 'Units',
    unitChoices: { document: 'As the concert says', metric: 'Metric', imperial: 'Feet and inches' },
    show: 'Show on the plan',
    names: 'Names',
    marks: 'Marks',
    grid: 'Grid',
    reach: 'Reach lines',
    routes: 'Ways to the exit',
    leftPanel: 'Store and list',
    rightPanel: 'Properties and findings',
  },

  setups: {
    label: 'Programme',
    add: 'Add a setup',
    addEmpty: 'New, empty',
    copyThis: 'Copy of this one',
    rename: 'Rename…',
    remove: 'Remove this setup',
    earlier: 'Move earlier',
    later: 'Move later',
    more: 'This setup',
    nameTitle: 'Name of the setup',
    copyOf: (name: string) => `${name}, copy`,
    unnamed: (order: number) => `Setup ${order}`,
  },

  store: {
    label: 'Things to place',
    search: 'Search: viola, stand, table…',
    withStand: 'Players come with a stand',
    nothing: (search: string) => `Nothing called “${search}”.`,
    how: 'Click one, then click on the plan. Enter puts it in the middle.',
    placing: (name: string) => `Click on the plan to set down: ${name}`,
    stop: 'Stop placing',
    count: (count: number) => counted(count, 'thing', 'things'),
  },

  outline: {
    label: 'On the platform',
    empty: 'Nothing stands here yet.',
    house: 'Platform and house',
    findings: (count: number) => counted(count, 'finding', 'findings'),
  },

  plan: {
    label: 'Plan of the platform and the house',
    help: (fine: string, coarse: string, brackets: boolean) =>
      `Arrow keys move what is selected by ${fine}, with Shift by ${coarse}.${brackets ? ' Square brackets turn it.' : ''} The list “On the platform” has every item with its position.`,
    summary: (setup: string, items: number, seats: number) =>
      `${setup}: ${counted(items, 'item', 'items')} on the platform, ${places(seats)} in the house.`,
    zoomIn: 'Larger',
    zoomOut: 'Smaller',
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
    face: (share: number) => `face ${percent(share)}`,
    all: 'nothing in the way',
    cover: (name: string, share: number) => `${name} covers ${percent(share)}`,
    fetching: 'Looking from there…',
  },

  /** In the corner of the plan, about the rings round a player. */
  reachAt: (height: string) => `Rings: reach at ${height}; broken: with a lean`,

  figures: {
    title: 'Reading and seeing each other',
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
    none: 'Nothing to complain about in this setup.',
    waiting: 'Checking…',
    failed: (message: string) => `The checks stopped with an error: ${message}. The figures may be old.`,
    severities,
    groups: { fail: 'Fails', caution: 'Cautions', note: 'Notes' },
    tryIt: 'Try it',
    tried: 'A change that was tried and helps',
    noRemedy: 'No single small move, turn or lowering was found that clears this.',
    looking: 'Looking for a remedy…',
    show: 'Show it on the plan',
    showAll: (count: number) => `Show all ${count}`,
    count: (fails: number, cautions: number) =>
      `${fails} failing, ${counted(cautions, 'caution', 'cautions')}`,
    disclaimer:
      'Edges, cables, routes and loads are cautions of this tool. Local codes, the venue and licensed practice decide.',
    remedy: {
      lower: (item: string, by: string) => `Lower ${item} by ${by}`,
      raise: (item: string, by: string) => `Raise ${item} by ${by}`,
      move: (item: string, way: string) => `Move ${item} by ${way}`,
      turn: (item: string, by: number, side: string) => `Turn ${item} by ${by}° towards ${side}`,
      sides: { left: 'stage left', right: 'stage right' },
      across: (distance: string, side: string) => `${distance} towards ${side}`,
      upstage: (distance: string) => `${distance} upstage`,
      downstage: (distance: string) => `${distance} downstage`,
    },
  },

  properties: {
    label: 'Properties',
    many: (count: number) => `${counted(count, 'thing', 'things')} selected`,
    nothing: 'Nothing selected',
    nothingHelp: 'Click something on the plan or in the list. Here are the platform and the house meanwhile.',
    name: 'Name',
    position: 'Position',
    across: 'From the centre line',
    depth: 'From the front edge',
    acrossHint: 'SL: towards stage left. SR: towards stage right.',
    depthHint: 'US: upstage of the front edge. DS: downstage of it.',
    facing: 'Faces',
    facingHint: '20 SR, 40 SL, house, upstage. Bare numbers are degrees, positive towards stage left.',
    deskFacing: 'Desk faces',
    faceHouse: 'Face the house',
    house: 'The house',
    turnTowards: 'Turn towards',
    choose: 'Choose…',
    wholeConcert: 'Stays for the whole concert',
    remove: 'Remove',
    duplicate: 'Duplicate',
    mirror: 'Mirror',
    alignAcross: 'Line up across',
    alignDepth: 'Line up in depth',
    spreadAcross: 'Spread across',
    spreadDepth: 'Spread in depth',
    width: 'Width',
    depthSize: 'Depth',
    height: 'Height',
    model: 'Model',
    bareNumbers: { metric: 'Bare numbers are millimetres.', imperial: 'Bare numbers are inches.' },
    notALength: {
      metric: 'Not a length. Write 820, 2.4 m or 7\' 6": bare numbers are millimetres.',
      imperial: 'Not a length. Write 7\' 6", 90 1/2" or 90: bare numbers are inches.',
    },
    notAFacing:
      'Not a direction. Write degrees with a side (20 SR, 40 SL), house, upstage, stage left or stage right.',
    beyondHalfTurn:
      'Write degrees from -180 to 180, or from 0 to 180 with a side: 20 SR, 40 SL. 0 is straight at the house.',
    wrongSide: (positive: string, negative: string) => `Write ${positive} or ${negative} here.`,
    notANumber: 'Not a number.',
    none: 'None',
    unknown: 'Not known',
  },

  player: {
    person: 'Person',
    size: 'Height',
    sizes: { percentile: 'Percentile', stature: 'Stature', anyone: 'Anyone' },
    anyoneHelp: 'Checked for the small and the tall end both (5th and 95th percentile).',
    percentile: 'Percentile',
    stature: 'Stature',
    population: 'Of',
    populations: { pooled: 'women and men', female: 'women', male: 'men' },
    shoes: 'Shoes',
    measured: 'Measured on the person',
    measuredHelp: 'Replaces what the survey predicts. Leave empty when not measured.',
    eyeHeight: 'Eyes above the floor',
    shoulderHeight: 'Shoulders above the floor',
    armLength: 'Shoulder to fingertip',
    predicted: (length: string) => `predicted ${length}`,
    seat: 'Sits on',
    stands: 'Stands',
    mobility: 'Comes',
    mobilities: { walks: 'on foot', wheelchair: 'in a wheelchair' },
    mobilityHelp: 'The way out is then looked for without steps, and with room to turn.',
    seatHeight: 'Seat height',
    instruments: 'Instruments',
    addInstrument: 'Add an instrument',
    held: 'in hand',
    waitsOn: 'Waits on',
    freeTime: 'Rest to pick it up',
    freeTimeHint: 'seconds; empty when not known',
    seconds: 's',
    eyeContact: 'Must see and be seen by',
    eyeContactHelp: 'In this setup. Take the tick away where two may do without seeing each other.',
    reads: 'Reads at',
    readsNowhere: 'Reads from no stand yet.',
    giveStand: 'Give a stand',
  },

  stand: {
    form: 'Form',
    forms: { single: 'One desk', backToBack: 'Two, back to back' },
    lip: 'Lip above the floor',
    tilt: 'Tilt of the desk',
    tiltHint: 'from flat; 90 is upright',
    deskWidth: 'Desk width',
    deskHeight: 'Desk height',
    side: (index: number) => (index === 0 ? 'This side' : 'Other side'),
    onlySide: 'Reading here',
    reader: 'Reader',
    pages: 'Pages side by side',
    paper: 'Paper',
    otherPaper: (width: string, height: string) => `${width} × ${height}`,
    staffSize: 'Staff height, printed',
    staffSizeHint: (least: number, good: number, most: number) =>
      `From the bottom to the top line of one staff, in millimetres; empty when not known. Least ${least}, best from ${good} to ${most} (MOLA guidelines, 2017).`,
    millimetres: 'mm',
    turned: 'Pages are turned here',
    freeTime: 'Rest to turn in',
  },

  things: {
    takeHeight: 'Hand takes it at',
    lid: 'Lid',
    lids: { closed: 'Closed', half: 'Half open', full: 'Fully open' },
    playedBy: 'Played by',
    cableTo: 'Cable to its socket',
    noCable: 'No cable',
    cableCovered: 'Cable is covered where people walk',
    addCable: 'Run a cable',
    removeCable: 'Take the cable away',
    socketAcross: 'Socket from the centre line',
    socketDepth: 'Socket from the front edge',
    fixed: 'Part of the building',
    waiting: 'Waiting here',
  },

  platform: {
    title: 'Platform',
    select: 'Edit the platform’s corners',
    height: 'Floor above the house floor',
    edges: 'Edges',
    edge: (index: number) => `Edge ${index + 1}`,
    open: 'open',
    openHelp: 'An open edge has an unguarded drop',
    corner: (index: number) => `Corner ${index + 1}`,
    addCorner: 'Divide',
    removeCorner: 'Remove corner',
    doors: 'Doors, steps and ramps',
    addDoor: 'Add a door',
    doorEdge: 'In edge',
    doorOffset: 'From its first corner',
    doorWidth: 'Width',
    exit: 'People may leave here',
    stepFree: 'Without steps',
    venue: 'House',
    otherHouse: 'Another house…',
    seats: places,
    blocks: 'Seats',
    addBlock: 'Add seats',
    places: 'Single places',
    addPlace: 'Add a place',
    fixed: 'Parts of the building',
  },

  block: {
    rows: 'Rows',
    seatsPerRow: 'Seats a row',
    seatsPerRowHint: 'one number, or one a row: 8, 9, 10',
    seatPitch: 'Seat to seat',
    rowDepth: 'Row to row',
    riser: 'Each row higher by',
    floor: 'Front row above the house floor',
    curve: 'Radius of the front row',
    curveHint: '0: straight rows',
    staggered: 'Every second row shifted by half a seat',
    aisles: 'Aisles',
    aislesHint: {
      metric: 'after seat : width, for instance 9 : 1100',
      imperial: 'after seat : width, for instance 9 : 3\' 6"',
    },
    rail: 'Rail before the front row',
    eyeHeight: 'Eyes above the row’s floor',
    firstRow: 'First row is called',
    use: 'Use',
    uses: { standing: 'Standing', wheelchair: 'Wheelchair', camera: 'Camera' },
    badAisles: 'Write seat : width, several with commas between.',
    badSeats: 'Write one whole number, or one for each row with commas between.',
  },

  concert: {
    title: 'Concert and limits',
    name: 'Name of the concert',
    venue: 'Venue',
    date: 'Date',
    revision: 'Revision',
    author: 'Drawn by',
    units: 'Units of this concert',
    heads: 'Heads of the rows in front count as obstacles',
    limits: 'What you ask for',
    limitsHelp: 'Your own limits. They are not the requirements of any code.',
    seesWell: 'A place sees a player well when it sees of him',
    houseShare: 'Places that shall see him well',
    edgeDistance: 'Distance from open edges',
    routeWidth: 'Width of ways to the exit',
    done: 'Done',
  },

  files: {
    saved: 'saved',
    savedAs: (name: string) => `Saved ${name}`,
    notKept: (name: string, message: string) =>
      `The unsaved work in “${name}” cannot be kept safe on the side; save it to a file soon. (${message})`,
    changed: (name: string) => `Another program has changed “${name}”. This window still shows it as it was.`,
    loadChanged: 'Load it as it is now',
    demoName: 'Demo concert',
    untitled: 'Untitled',
    opened: (name: string) => `Opened ${name}`,
  },

  lost: {
    title: 'The program behind this window does not answer.',
    kept: 'Your work is safe here as long as this window stays open; it keeps trying to reach it.',
    copy: 'Save a copy with the browser',
    back: 'The program answers again.',
  },

  banner: { dismiss: 'Put this away' },

  dialogs: {
    cancel: 'Cancel',
    close: 'Close',
    unsaved: {
      title: (name: string) => `Save the changes to “${name}”?`,
      words: 'They would be lost otherwise.',
      save: 'Save',
      discard: 'Let them go',
    },
    conflict: {
      title: 'The file has changed on disk',
      copy: 'Save mine as a copy…',
      copyHelp: 'Both versions stay.',
      theirs: 'Load theirs',
      theirsHelp: 'Your unsaved changes are lost.',
      overwrite: 'Overwrite it with mine',
      overwriteHelp: 'The other program’s changes are lost.',
    },
    notSaved: {
      title: 'Not saved',
      replace: 'Save it all the same',
      elsewhere: 'Save somewhere else…',
    },
    recovery: {
      title: 'Unsaved work was found',
      words: 'This was not saved before the window closed. Nothing is thrown away until you say so.',
      at: (when: string) => `kept ${when}`,
      never: 'never saved to a file',
      open: 'Open it',
      discard: 'Throw away',
      later: 'Decide later',
      sure: 'Really throw away?',
    },
    place: {
      openTitle: 'Open a concert',
      saveTitle: 'Save the concert',
      pdfTitle: 'Save the plot as PDF',
      up: 'Folder above',
      folder: 'Folder',
      name: 'File name',
      open: 'Open',
      save: 'Save here',
      replace: 'Replace it',
      exists: (name: string) => `“${name}” is already there.`,
      empty: 'No folders and no fitting files here.',
      noFolder: (name: string) => `There is no folder “${name}” there, or it is hidden.`,
      loading: 'Reading the folder…',
      files: 'Folders and files',
    },
    newConcert: {
      title: 'A new concert',
      words: 'Choose a house to begin with. Everything about it can be changed later.',
      begin: 'Begin',
    },
    otherHouse: {
      title: 'Another house',
      words: 'Platform, doors and seats are exchanged. What stands on the platform stays where it is.',
      take: 'Take this house',
    },
    print: {
      title: 'Print the plot',
      paper: 'Paper',
      orientation: 'Orientation',
      orientations: { auto: 'As it fits best', portrait: 'Upright', landscape: 'Sideways' },
      scale: 'Scale',
      bestScale: 'Largest that fits',
      ratio: (scale: number) => `1:${scale}`,
      setup: 'Setup',
      preview: 'Preview',
      sheet: (index: number, count: number) => `Sheet ${index} of ${count}`,
      save: 'Save as PDF…',
      saving: 'Writing…',
      saved: (name: string) => `The plot is in ${name}.`,
      drawing: 'Drawing the sheets…',
      exact: (scale: string) => `Printed at 100 % this is exactly ${scale}.`,
      earlier: 'Sheet before',
      later: 'Next sheet',
      failed: (message: string) => `The sheets cannot be drawn: ${message}`,
    },
    commands: {
      title: 'Find a command',
      search: 'What do you want to do?',
      nothing: 'No command fits these words.',
      list: 'Commands',
    },
    setupName: { keep: 'Keep' },
  },

  hints: {
    label: 'First steps',
    lengths: { metric: '820, 2.4 m and 7\' 6"', imperial: '7\' 6", 90 and 2.4 m' },
    count: (step: number, steps: number) => `Try this, ${step} of ${steps}`,
    next: 'Next',
    away: 'Put away',
    steps: (lengths: string) => [
      'Each seat is coloured and filled as far as it sees the player it sees worst. Choose another player below the plan.',
      'Setup 2 has real faults: click one in the list of findings and the plan goes there.',
      'Drag a music stand: seats and figures follow your hand. Escape puts it back.',
      `Type the place of what is selected: ${lengths} all work.`,
      'Click a seat to see what is in its way. Then print: the plot is exactly to scale.',
    ],
  },
} as const;

type Widened<T> = T extends string
  ? string
  : T extends (...args: infer A) => infer R
    ? (...args: A) => R
    : { readonly [K in keyof T]: Widened<T[K]> };

export type Catalogue = Widened<typeof english>;

export const text: Catalogue = english;
