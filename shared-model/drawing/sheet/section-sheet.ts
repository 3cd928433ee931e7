/** Sections on the centre line: to the edge of the platform, and where there is room to the player seen worst. */

import { EYE_TO_CROWN } from '../../checks/sightlines/rake-cuts.ts';
import { CLEARANCE_BANDS, type ClearanceLevel } from '../../checks/sightlines/rake-clearance.ts';
import { PLATFORM_EDGE, type RakeFocus } from '../../checks/sightlines/rake-focus.ts';
import { allOf, inSetup } from '../../document/document.ts';
import { asId } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import { t } from '../../words/say.ts';
import { line } from '../outline.ts';
import { SCALE_BAR_HEIGHT, scaleBar } from '../plan/scale-bar.ts';
import type { Box, GroupPrimitive, Primitive } from '../primitives.ts';
import { largestScale } from '../scales.ts';
import { sectionBox, sectionIn, sectionSource, type SectionSource } from '../section.ts';
import { cutMark, focusMark } from '../section/lines.ts';
import { clearanceWords } from '../section/clearance-words.ts';
import { bandMark, bandRim } from '../sight-bands.ts';
import { ASCENT, CAP_HEIGHT, DASH, LEADING, TEXT, WEIGHT } from '../style.ts';
import { fitted, textLine } from '../text.ts';
import { BODY_BOLD, grouped, heading, type Spot, type TextTools } from './blocks.ts';
import { headsInSections } from './heads.ts';
import { notes, notesHeight } from './legend.ts';
import type { PlotSheetRequest } from './request.ts';

export interface SectionSheet {
  readonly scale: number;
  readonly children: readonly Primitive[];
}

const LEVELS: readonly ClearanceLevel[] = [0, 1, 2, 3, 4];
const LEVEL_ROW = 4.4;
const SIGN_ROW = 4.8;
/** Where scale bar and notes begin, right of the key. */
const BAR_AT = 78;
const CAPTION = TEXT.body * LEADING + 1.5;
/** Between two drawings, and over the key. */
const GAP = 4;

/**
 * Null when the house has no rows, or fits at no standard scale. The document has to be the one that the checks know:
 * balconies are where they are.
 */
export function sectionSheet(request: PlotSheetRequest, body: Box): SectionSheet | null {
  const scale = sectionScale(request, body);
  if (scale === null) return null;
  const { title, keyHeight, area } = roomFor(request, body);
  const views = viewsOf(request);
  // The second drawing must not make the first one smaller.
  const shown = heightOf(views, scale, area) === null ? views.slice(0, 1) : views;
  const key = { x: body.x, y: body.y + body.height - keyHeight };
  return {
    scale,
    children: [
      ...title.draw(body),
      ...drawViews(shown, scale, area),
      ...drawKey(request, { scale, at: key, width: body.width }),
    ],
  };
}

/** The scale of that sheet, for which it need not be drawn and nothing need have been checked. */
export function sectionScale(request: PlotSheetRequest, body: Box): number | null {
  if (allOf(request.document, 'seatBlock').length === 0) return null;
  const { area } = roomFor(request, body);
  const edge = edgeView(request);
  return largestScale(request.units, (candidate) => heightOf(edge, candidate, area) !== null);
}

function roomFor(request: PlotSheetRequest, body: Box) {
  const title = heading(t`Sections on the centre line`, body.width, request);
  const parts = keyParts(request, body.width);
  const keyHeight = parts.top + parts.notes;
  const height = body.height - title.height - keyHeight - GAP;
  return { title, keyHeight, area: { ...body, y: body.y + title.height, height } };
}

interface View {
  readonly caption: string;
  readonly section: SectionSource;
}

function viewsOf(request: PlotSheetRequest): View[] {
  const edge = edgeView(request);
  const player = worstSeen(request);
  if (player === null) return edge;
  const name = labelOf(request.document, request.setup, player);
  const words = t`Lines of sight to the lowest point that should be seen of ${name}`;
  return [...edge, ...viewTo(request, words, { kind: 'player', player: asId<'player'>(player) })];
}

function edgeView(request: PlotSheetRequest): View[] {
  return viewTo(request, t`Lines of sight to the front edge of the platform`, PLATFORM_EDGE);
}

function viewTo(request: PlotSheetRequest, words: string, focus: RakeFocus): View[] {
  const { document, setup, palette, measure, units } = request;
  const caption = fitted(words, LONGEST_CAPTION, BODY_BOLD, measure);
  const cut = { through: 'centre' } as const;
  const section = sectionSource({ document, setup, cut, focus, palette, measure, units });
  return section ? [{ caption, section }] : [];
}

const LONGEST_CAPTION = 175;

/** Whom fewest places see well; without figures the first player; null: there is none. */
function worstSeen({ document, setup, report }: PlotSheetRequest): string | null {
  const [first, ...others] = report?.sight.figures ?? [];
  if (first)
    return others.reduce((worst, each) => (each.seenWell < worst.seenWell ? each : worst), first).player;
  return inSetup(document, setup, 'player')[0]?.id ?? null;
}

/** Of the drawings under each other, captions included; null when they do not fit the area. */
function heightOf(views: readonly View[], scale: number, area: Box): number | null {
  let height = (views.length - 1) * GAP;
  for (const { section } of views) {
    const box = sectionBox(section, scale);
    if (!box || box.width > area.width) return null;
    height += box.height + CAPTION;
  }
  return height <= area.height ? height : null;
}

/** Spread over the area, each under its caption. */
function drawViews(views: readonly View[], scale: number, area: Box): GroupPrimitive[] {
  const heights = views.map(({ section }) => sectionBox(section, scale)?.height ?? 0);
  const used = heights.reduce((sum, height) => sum + height + CAPTION, 0);
  const spare = (area.height - used) / views.length;
  let top = area.y;
  return views.map(({ caption, section }, index) => {
    const room = (heights[index] ?? 0) + CAPTION + spare;
    const box = { ...area, y: top + CAPTION, height: room - CAPTION };
    const { palette } = section;
    const words = textLine(
      caption,
      { x: area.x, y: top + TEXT.body * ASCENT },
      { ...BODY_BOLD, colour: palette.ink },
    );
    top += room;
    return {
      kind: 'group',
      description: t`Section at 1:${scale}, seen from stage right: the platform on the left, the house on the right. ${caption}`,
      children: [words, ...sectionIn(section, scale, box)],
    };
  });
}

function noteWords({ document, units }: PlotSheetRequest): string[] {
  const head = clearanceWords(EYE_TO_CROWN, units);
  const unit = units === 'metric' ? 'mm' : 'in';
  const least = `${clearanceWords(CLEARANCE_BANDS[1].from, units)} ${unit}`;
  return [
    headsInSections({ document }),
    t`C: how far the line of sight of a row passes above the eyes of the row before it. A head reaches ${head} ${unit} above its eyes (ANSUR II, median); a line that passes lower is drawn as cut.`,
    t`The words beside the discs are no rule for a concert hall. From ${least} on: ${CLEARANCE_BANDS[1].source}; below: ${CLEARANCE_BANDS[0].source}.`,
  ];
}

const LEVEL_KEY_HEIGHT = TEXT.small * LEADING + LEVELS.length * LEVEL_ROW;

/** Discs on the left, scale bar and signs beside them, notes below. */
function keyParts(
  request: PlotSheetRequest,
  width: number,
): { readonly top: number; readonly notes: number } {
  const signs = signRows(request, width - BAR_AT).length * SIGN_ROW;
  return {
    top: Math.max(LEVEL_KEY_HEIGHT, SCALE_BAR_HEIGHT + signs) + 1,
    notes: notesHeight(noteWords(request), width, request),
  };
}

interface KeyPlace {
  readonly scale: number;
  readonly at: Spot;
  readonly width: number;
}

function drawKey(request: PlotSheetRequest, { scale, at, width }: KeyPlace): Primitive[] {
  const { units, palette } = request;
  const parts = keyParts(request, width);
  const right = { x: at.x + BAR_AT, width: width - BAR_AT };
  return [
    ...levelKey(request, at),
    scaleBar({ scale, units, palette, ...right, y: at.y }),
    ...signKey({ x: right.x, y: at.y + SCALE_BAR_HEIGHT }, right.width, request),
    notes(noteWords(request), { ...at, y: at.y + parts.top, width, height: parts.notes }, request),
  ];
}

/** The discs under the figures, each with its least C and what is said of it. */
function levelKey({ units, palette }: PlotSheetRequest, { x, y }: Spot): Primitive[] {
  const unit = units === 'metric' ? 'mm' : 'in';
  const title = textLine(
    t`C over the head in line`,
    { x, y: y + TEXT.small * ASCENT },
    { ...SMALL_BOLD, colour: palette.ink },
  );
  const rows = LEVELS.map((level, row) => {
    const { from, words } = CLEARANCE_BANDS[level];
    const least = level === 0 ? CLEARANCE_BANDS[1].from : from;
    const limit = `${clearanceWords(least, units)} ${unit}`;
    const middle = y + TEXT.small * LEADING + (row + 0.5) * LEVEL_ROW;
    const disc = { x: x + 1.6, y: middle };
    const text = textLine(
      level === 0 ? t`under ${limit}: ${words}` : t`from ${limit}: ${words}`,
      { x: x + 5, y: middle + (CAP_HEIGHT * TEXT.small) / 2 },
      { ...SMALL, colour: palette.ink },
    );
    return grouped('paragraph', [
      { kind: 'path', path: bandMark(level, disc, 1.35), fill: palette.ink },
      { kind: 'path', path: bandRim(disc, 1.35), stroke: { colour: palette.ink, width: WEIGHT.thin } },
      text,
    ]);
  });
  return [title, ...rows];
}

const SMALL = { size: TEXT.small, weight: 'regular' } as const;
const SMALL_BOLD = { size: TEXT.small, weight: 'bold' } as const;

interface Sign {
  readonly words: string;
  /** Draws the sign in `SIGN_WIDTH`, about the height of `at`. */
  readonly draw: (at: Spot, tools: TextTools) => Primitive[];
}

const SIGN_WIDTH = 9;
const stroke = (at: Spot, from: number, to: number) =>
  line({ x: at.x + from, y: at.y }, { x: at.x + to, y: at.y });

const SIGNS: readonly Sign[] = [
  {
    get words() {
      return t`clear`;
    },
    draw: (at, { palette }) => [
      { kind: 'path', path: stroke(at, 0, 7.5), stroke: { colour: palette.reach, width: WEIGHT.thin } },
    ],
  },
  {
    get words() {
      return t`cut by a head in front`;
    },
    draw: (at, tools) => cutSign(at, tools, 'head'),
  },
  {
    get words() {
      return t`cut by a thing, a rail or the platform`;
    },
    draw: (at, tools) => cutSign(at, tools, 'thing'),
  },
  {
    get words() {
      return t`what is looked at`;
    },
    draw: (at, { palette }) => focusMark({ x: at.x + 6, y: at.y }, palette),
  },
  {
    get words() {
      return t`window of a player`;
    },
    draw: (at, { palette }) => [
      {
        kind: 'path',
        path: [
          ...line({ x: at.x + 5, y: at.y - 1.5 }, { x: at.x + 5, y: at.y + 1.5 }),
          ...stroke({ x: at.x, y: at.y - 1.5 }, 4.2, 5.8),
          ...stroke({ x: at.x, y: at.y + 1.5 }, 4.2, 5.8),
        ],
        stroke: { colour: palette.selection, width: WEIGHT.medium },
      },
    ],
  },
];

function cutSign(at: Spot, { palette }: TextTools, by: 'head' | 'thing'): Primitive[] {
  const colour = palette.warning;
  return [
    { kind: 'path', path: stroke(at, 4.5, 7.5), stroke: { colour, width: WEIGHT.thin } },
    { kind: 'path', path: stroke(at, 0, 4.5), stroke: { colour, width: WEIGHT.hair, dash: DASH.dashed } },
    ...cutMark(by, { x: at.x + 4.5, y: at.y }, palette),
  ];
}

/** The signs in as many rows as they need. */
function signRows(tools: TextTools, width: number): Sign[][] {
  const rows: Sign[][] = [];
  let used = Infinity;
  for (const sign of SIGNS) {
    if (used + signWidth(sign, tools) > width) {
      rows.push([]);
      used = 0;
    }
    rows.at(-1)?.push(sign);
    used += signWidth(sign, tools) + SIGN_GAP;
  }
  return rows;
}

function signWidth({ words }: Sign, { measure }: TextTools): number {
  return SIGN_WIDTH + measure(words, SMALL.size, SMALL.weight);
}

const SIGN_GAP = 5;

function signKey(at: Spot, width: number, tools: TextTools): Primitive[] {
  return signRows(tools, width).flatMap((signs, row) => {
    let x = at.x;
    return signs.map((sign) => {
      const spot = { x, y: at.y + (row + 0.5) * SIGN_ROW };
      x += signWidth(sign, tools) + SIGN_GAP;
      return drawSign(sign, spot, tools);
    });
  });
}

function drawSign({ words, draw }: Sign, at: Spot, tools: TextTools): Primitive {
  const spot = { x: at.x + SIGN_WIDTH, y: at.y + (CAP_HEIGHT * TEXT.small) / 2 };
  const text = textLine(words, spot, { ...SMALL, colour: tools.palette.ink });
  return grouped('paragraph', [...draw(at, tools), text]);
}
