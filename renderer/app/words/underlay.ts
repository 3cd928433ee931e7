/** Drawings and pictures under the plan: adding them, setting them right, tracing the platform; and files for other programs. */

import { counted } from './counting.ts';

export const underlayWords = {
  underlay: {
    action: 'Put a drawing under the plan…',
    title: 'A drawing under the plan',
    explained:
      'The house’s own drawing or a photograph of it can lie under the plan, to place things by and to trace the platform from. It is never printed.',
    kinds: 'A picture (PNG, JPEG), a PDF or a DXF.',
    choose: 'Choose a file…',
    other: 'Another file…',
    reading: 'Reading…',
    page: (page: number) => `Page ${page}`,
    whichPage: (name: string, count: number) => `${name} has ${counted(count, 'page', 'pages')}. Which one?`,
    unitAsked: (name: string) =>
      `${name} does not say in what unit it is drawn. If you do not know either, take any: two points set it right afterwards.`,
    unit: 'One unit of the drawing is',
    units: {
      '1': 'a millimetre',
      '10': 'a centimetre',
      '1000': 'a metre',
      '25.4': 'an inch',
      '304.8': 'a foot',
    },
    extent: (width: string, depth: string) => `The drawing is then ${width} wide and ${depth} deep.`,
    put: 'Put it under the plan',
    smaller: (name: string, width: number, height: number) =>
      `${name} was made smaller, to ${width} x ${height} pixels: finer than that nobody traces.`,
    /** `things`: as they are called in a DXF, each with how many: "TEXT 12, HATCH 3". */
    leftOut: (name: string, things: string) =>
      `Of ${name} only lines and curves are shown. Left out: ${things}.`,
    added: (name: string) => `${name} lies under the plan.`,
    damaged: (name: string) => `“${name}” is damaged, or not what it says it is.`,
    locked: (name: string) => `“${name}” is locked with a password: save it without one and choose it again.`,
    tooLong: (name: string) =>
      `“${name}” takes too long to read: leave out what is not needed under the plan, or save it as a picture.`,
    noLines: (name: string) =>
      `“${name}” has no lines, arcs or circles that are shown, so there is nothing to put under the plan.`,
    tooManyLines: (name: string) =>
      `“${name}” has more than 50,000 lines: leave out layers that are not needed under the plan.`,
    tooFarApart: (name: string) =>
      `“${name}” has lines too far apart to be a drawing of a house: remove what lies astray.`,
    noPages: (name: string) => `“${name}” has no page that can be shown.`,

    from: (source: string) => `From ${source}`,
    shown: 'Shown',
    strength: 'Strength',
    loose: 'May be dragged on the plan',
    looseHelp: 'Otherwise it stays where it is, whatever is dragged over it',
    scaleTwo: 'Set its scale…',
    scaleHelp: 'Click two points of it, and say how far they are apart in truth',
    origin: 'Set its origin…',
    originHelp: 'Click the point of it where the centre line meets the front edge',
    trace: 'Trace the platform…',
    width: 'Width',
    depth: 'Depth',
    across: 'Lower left corner across',
    upDown: 'Lower left corner in depth',
    turn: 'Turned',
    turnHelp: 'Degrees anticlockwise',
    degrees: '°',
    percent: '%',
    strengthBad: 'Give a strength from 5 to 100.',
    sizeBad: 'Give a length that is more than nothing.',

    firstPoint: 'Click the first of two points whose distance you know',
    secondPoint: 'Click the second point',
    originPoint: 'Click the point that lies on the centre line at the front edge',
    tracing: (corners: number) =>
      corners === 0
        ? 'Click the corners of the platform, one after the other'
        : `${counted(corners, 'corner', 'corners')}. Enter or a double click ends, Backspace takes one back`,
    stop: 'Stop',
    caught: {
      close: 'the first corner',
      corner: 'corner of the drawing',
      line: 'line of the drawing',
      square: 'square',
      free: '',
    },
    tooFewCorners: 'A platform has at least three corners.',
    traced: (open: string, doors: number) =>
      `The platform is traced. Open edges: ${open || 'none'}.${doors > 0 ? ` ${counted(doors, 'door was', 'doors were')} put into the nearest edges.` : ''} Check them under Platform and house.`,

    distance: 'Distance',
    scaleTitle: 'How far are they apart?',
    scaleNow: (length: string) => `As the drawing lies now: ${length}.`,
    level: 'Turn the drawing so that the two points lie level',
    take: 'Take it',
    notALength: 'Give a length that is more than nothing.',
    removed: 'Remove',
  },

  exports: {
    action: 'For other programs',
    dxf: 'Plan of this setup as DXF…',
    marks: 'Marks of this setup as a table (CSV)…',
    inventory: 'Inventory of the concert as a table (CSV)…',
    fileOf: { dxf: 'plan', marks: 'marks', inventory: 'inventory' },
    saved: (name: string) => `Saved ${name}`,
  },
} as const;
