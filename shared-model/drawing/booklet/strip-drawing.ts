/** The flat strip as it lies on the table, small: where each panel is, which way it stands, what is taped and stiffened. */

import type { JointKind, Panel, Strip } from '../../pages/bindings/strip.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import { msgid, ngettext, t } from '../../words/say.ts';
import { hatching, line, polygon } from '../outline.ts';
import type { Box, Primitive } from '../primitives.ts';
import type { Block } from '../sheet/blocks.ts';
import { ASCENT, CAP_HEIGHT, DASH, LEADING, TEXT, WEIGHT } from '../style.ts';
import { fitted, textLine, wrapped, type Type } from '../text.ts';
import type { BookletOrder } from './order.ts';

const SMALL: Type = { size: TEXT.small, weight: 'regular' };
const BOLD: Type = { size: TEXT.body, weight: 'bold' };
const HIGHEST_PANEL = 9;
const LOWEST_PANEL = 5.2;
/** The drawing of a strip of many leaves goes no higher. */
const HIGHEST = 150;
const PANEL_WIDTH = 46;

/** One bar a panel, from the first sheet at the top; a concertina is drawn in the same way from left to right as a list. */
export function stripDrawing(order: BookletOrder, strip: Strip, width: number): Block {
  const { palette, measure } = order.tools;
  const caption = wrapped(captionOf(order, strip), width, SMALL, measure);
  const top = caption.length * SMALL.size * LEADING + 2;
  const count = strip.panels.length;
  const step = Math.max(LOWEST_PANEL, Math.min(HIGHEST_PANEL, HIGHEST / count));
  return {
    height: top + count * step + 2,
    draw: ({ x, y }) => {
      const lines = caption.map((words, index) =>
        textLine(
          words,
          { x, y: y + SMALL.size * (ASCENT + LEADING * index) },
          { ...SMALL, colour: palette.ink },
        ),
      );
      const bars = strip.panels.flatMap((panel, index) =>
        panelBar(order, panel, { x, y: y + top + index * step, width: PANEL_WIDTH, height: step }, width),
      );
      const joints = strip.joints.flatMap((joint, index) => {
        const level = y + top + (index + 1) * step;
        return jointLine(order, `${joint.label}  ${KINDS[joint.kind]()}`, joint.kind, {
          x,
          y: level,
          width: PANEL_WIDTH,
          height: 0,
        });
      });
      const ends = [0, count].map((row): Primitive => {
        const level = y + top + row * step;
        const path = line({ x, y: level }, { x: x + PANEL_WIDTH, y: level });
        return { kind: 'path', path, stroke: { colour: palette.ink, width: WEIGHT.fine } };
      });
      return [
        { kind: 'group', description: spoken(strip), children: [...lines, ...bars, ...ends, ...joints] },
      ];
    },
  };
}

const KINDS: Readonly<Record<JointKind, () => string>> = {
  ridge: () => t`ridge`,
  hem: () => t`hem`,
  inward: () => t`inward`,
  outward: () => t`outward`,
  both: () => t`both ways`,
  flat: () => t`stays flat`,
};

function captionOf({ binding }: BookletOrder, { joints }: Strip): string {
  if (binding.kind === 'ridge')
    return t`The strip on the table, printed side up, the first sheet at the top. An arrow points to the head of each panel; hatched: card behind it.`;
  const inOrder = t`The pages in their order, with what joins each to the next. Inward: printed sides lie on each other; outward: blank sides do.`;
  const bothWays = t`Both ways: scored on both sides, as it bends one way on the right and the other way on the left.`;
  return joints.some(({ kind }) => kind === 'both') ? `${inOrder} ${bothWays}` : inOrder;
}

function spoken({ panels, joints }: Strip): string {
  const [first, ...others] = panels.map(({ name }) => name);
  const order = others.reduce((before, name, index) => {
    const joint = joints[index];
    return joint ? t`${before}, joined by ${joint.label} (${KINDS[joint.kind]()}) to ${name}` : before;
  }, first ?? '');
  return t`Order of the panels: ${order}.`;
}

function panelBar(order: BookletOrder, panel: Panel, box: Box, width: number): Primitive[] {
  const { palette, measure } = order.tools;
  const level = box.y + box.height / 2 + (TEXT.body * CAP_HEIGHT) / 2;
  const stroke = { colour: palette.ink, width: WEIGHT.fine };
  const corners: [Vec2, Vec2, Vec2, Vec2] = [
    { x: box.x, y: box.y },
    { x: box.x + box.width, y: box.y },
    { x: box.x + box.width, y: box.y + box.height },
    { x: box.x, y: box.y + box.height },
  ];
  const words = fitted(beside(order, panel), width - box.width - JOINT_ROOM, SMALL, measure);
  return [
    { kind: 'path', path: line(corners[0], corners[3]), stroke },
    { kind: 'path', path: line(corners[1], corners[2]), stroke },
    ...(panel.card
      ? [
          {
            kind: 'path' as const,
            path: hatching(corners, 2, 45),
            stroke: { colour: palette.hairline, width: WEIGHT.thin },
          },
        ]
      : []),
    arrow(box, panel.upright, palette.ink),
    textLine(panel.name, { x: box.x + 12, y: level }, { ...BOLD, colour: palette.ink }),
    textLine(words, { x: box.x + box.width + JOINT_ROOM, y: level }, { ...SMALL, colour: palette.ink }),
  ];
}

/** Beside the bars, between them and the words: the letters of the joints. */
const JOINT_ROOM = 32;

function beside({ players }: BookletOrder, { side, pages, states }: Panel): string {
  const numbers = pages.map((page) => (page ? String(page.page) : t`blank`));
  const [list, shown] = [numbers.join(', '), states.map((state) => state + 1).join(', ')];
  const what = pages.every((page) => page === null)
    ? t`nothing printed`
    : ngettext(msgid`page ${list}`, `pages ${list}`, numbers.length);
  return players[side]
    ? t`for ${players[side]}: ${what} (view ${shown})`
    : t`for nobody: ${what} (view ${shown})`;
}

function arrow({ x, y, height }: Box, upright: boolean, fill: string): Primitive {
  const [middle, reach] = [y + height / 2, Math.min(1.8, height / 2 - 0.8)];
  const tip = upright ? -reach : reach;
  return {
    kind: 'path',
    path: polygon([
      { x: x + 6, y: middle + tip },
      { x: x + 7.6, y: middle - tip },
      { x: x + 4.4, y: middle - tip },
    ]),
    fill,
  };
}

const LINES: Readonly<Record<JointKind, { readonly dash?: readonly number[] }>> = {
  ridge: {},
  inward: {},
  hem: { dash: DASH.dashed },
  outward: { dash: DASH.dashed },
  both: { dash: DASH.chain },
  flat: { dash: DASH.dotted },
};

/** A ridge is a full line that sticks out, a hem a broken one. */
function jointLine(
  { tools: { palette } }: BookletOrder,
  words: string,
  kind: JointKind,
  { x, y, width }: Box,
): Primitive[] {
  return [
    {
      kind: 'path',
      path: [
        ['M', x, y],
        ['L', x + width + 4, y],
      ],
      stroke: { colour: palette.ink, width: WEIGHT.bold, ...LINES[kind] },
    },
    textLine(
      words,
      { x: x + width + 5.5, y: y + (TEXT.small * CAP_HEIGHT) / 2 },
      { ...SMALL, colour: palette.ink },
    ),
  ];
}
