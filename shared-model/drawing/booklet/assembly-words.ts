/** The steps from the printer's tray to the stand, in plain words. Common practice, no source. */

import type { SideIndex } from '../../pages/bindings/binding.ts';
import type { JointKind, Strip } from '../../pages/bindings/strip.ts';
import { msgid, ngettext, t } from '../../words/say.ts';
import type { Layout } from './layout.ts';
import type { BookletOrder } from './order.ts';

/** Defers to those who answer for the place. */
export function cautionFor({ binding }: BookletOrder): string {
  const tipping =
    binding.kind === 'ridge'
      ? t`Two stands that carry a booklet are top-heavy: spread their feet, weigh them down or tie them together, and try every turn before there is an audience.`
      : t`Try it on the stand before there is an audience: paper that overhangs a desk makes it top-heavy.`;
  const others = t`What the venue and its crew say about stands, tape and lamps or candles near paper comes first.`;
  return `${tipping} ${others}`;
}

export function stepsFor(order: BookletOrder, strip: Strip, layout: Layout): string[] {
  const first = [printing(order), ...cutting(layout)];
  switch (order.binding.kind) {
    case 'ridge':
      return [...first, ...ridgeSteps(order, strip, layout)];
    case 'concertina':
      return [...first, ...concertinaSteps(order, strip)];
    case 'book':
      return [...first, t`Lay the leaves on each other in their order and bind them at the left edge.`];
    case 'loose':
      return [
        ...first,
        t`Set the pages side by side in the order of the sheets, the first on the left, on ${deskOf(order, 0)}.`,
      ];
  }
}

function printing({ binding, paper }: BookletOrder): string {
  return binding.kind === 'book'
    ? t`Print on ${paper.name} at 100 % (actual size, not fitted to the page), on both sides of the paper, turned at the long edge. Check the line below with a ruler.`
    : t`Print on ${paper.name} at 100 % (actual size, not fitted to the page), on one side of the paper only. Check the line below with a ruler.`;
}

function cutting({ sheet, box }: Layout): string[] {
  const spare = Math.max(sheet.width - box.width, sheet.height - box.height);
  return spare < 1 ? [] : [t`Cut every sheet out along its thin line.`];
}

function ridgeSteps(order: BookletOrder, strip: Strip, layout: Layout): string[] {
  const { binding } = order;
  const open = binding.stackSide === 0 ? 1 : 0;
  return [
    ...sideBySide(strip, layout),
    t`Lay the panels on a table, printed side up, each below the one before it, in the order of the sheets. Every other panel stands on its head. Where two edges meet they bear the same letter.`,
    t`Hold every joint with a small piece of tape: A to A, B to B and so on, edge against edge, not overlapping, with a gap of about 1 mm at the ridges, so that many layers can go over.`,
    t`Turn the whole row over and tape each joint on the blank side, from one end to the other. Then take the small pieces off the printed side.`,
    ...cards(strip),
    t`Fold the strip to and fro: at a ridge printed side on printed side, at a hem blank side on blank side. All ridges come to lie at one end, all hems at the other.`,
    t`Put two stands back to back so that the upper edges of their desks touch. Hang the ridges over these edges: all leaves to ${sideOf(order, binding.stackSide)}, the single panel F to ${sideOf(order, open)}.`,
    t`Fix panel F to ${deskOf(order, open)} and panel B to ${deskOf(order, binding.stackSide)}, each along its lower edge, with tape or clips that come off again.`,
    ...turning(order),
  ];
}

function sideBySide({ panels }: Strip, { perSheet }: Layout): string[] {
  const across = panels[0]?.pages.length ?? 1;
  if (perSheet === 'panel' || across === 1) return [];
  return [
    t`Each panel is ${across} sheets, in their order from left to right. Tape them side by side on the blank side, number to number.`,
  ];
}

function cards({ panels }: Strip): string[] {
  const names = panels.filter(({ card }) => card).map(({ name }) => name);
  if (names.length === 0) return [];
  return [
    ngettext(
      msgid`Stick a thin card on the blank side of panel ${inWords(names)}: from the hem to 15 mm below the ridge, and as wide as the panel. A leaf without card bends when it is lifted.`,
      `Stick a thin card on the blank side of panels ${inWords(names)}: from the hem to 15 mm below the ridge, and as wide as the panel. A leaf without card bends when it is lifted.`,
      names.length,
    ),
  ];
}

function turning({ binding, players }: BookletOrder): string[] {
  if (binding.leaves === 0) return [t`There is nothing to turn: both read from it as it hangs.`];
  const who = players[binding.stackSide] || t`whoever stands at the leaves`;
  const both = t`It is turned for both readers at once, so neither may be reading here.`;
  return [
    sentences([
      t`To turn, ${who} takes the uppermost leaf at its hem, lifts it up over the ridge and lays it down on the other side.`,
      ...(players.filter(Boolean).length > 1 ? [both] : []),
    ]),
    t`To begin again, lay the leaves back one by one, the last one first.`,
  ];
}

function concertinaSteps(order: BookletOrder, strip: Strip): string[] {
  const row = t`Lay the pages in a row from left to right, printed side up, in the order of the sheets, and tape each to the next, letter to letter; then the same on the blank side.`;
  if (order.binding.leaves === 0)
    return [row, t`Set it on ${deskOf(order, 0)}. Nothing is folded, and there is nothing to turn.`];
  const { pagesPerPanel: shown } = order.binding;
  const firstBehind = strip.joints[shown - 1]?.label ?? '';
  return [
    sentences([row, ...gapsIn(strip)]),
    sentences([t`Fold the row along the tapes: ${foldsOf(strip)}.`, ...bothWays(strip)]),
    t`Set it on ${deskOf(order, 0)} with the first ${shown} pages open and the rest folded to and fro behind the last of them: at ${firstBehind} blank side on blank side.`,
    shown === 2
      ? t`To turn, lay the two pages that are back to back on the right over to the left, as a leaf of a book.`
      : t`To turn, move the row to the left by two pages: two come out from behind on the right, and two are folded away behind the first page that is open then, the nearer joint blank side on blank side.`,
  ];
}

function lettersOf({ joints }: Strip, kind: JointKind): string {
  const labels = joints.filter((joint) => joint.kind === kind).map(({ label }) => label);
  return inWords(labels);
}

function gapsIn(strip: Strip): string[] {
  const letters = lettersOf(strip, 'both');
  return letters === '' ? [] : [t`Leave a gap of about 1 mm at ${letters}.`];
}

function foldsOf(strip: Strip): string {
  const ways: readonly [JointKind, (letters: string) => string][] = [
    ['inward', (letters) => t`at ${letters} printed side on printed side`],
    ['outward', (letters) => t`at ${letters} blank side on blank side`],
    ['both', (letters) => t`at ${letters} both ways`],
    ['flat', (letters) => t`not at ${letters}`],
  ];
  return ways
    .flatMap(([kind, words]) => {
      const letters = lettersOf(strip, kind);
      return letters === '' ? [] : [words(letters)];
    })
    .join(', ');
}

function bothWays(strip: Strip): string[] {
  const letters = lettersOf(strip, 'both');
  if (letters === '') return [];
  return [
    t`Score ${letters} on both sides: there the row bends one way while it lies behind the last open page, and the other way once it lies behind the first.`,
  ];
}

function inWords(labels: readonly string[]): string {
  return labels.length < 2
    ? labels.join('')
    : t`${labels.slice(0, -1).join(', ')} and ${labels.at(-1) ?? ''}`;
}

function sideOf({ players }: BookletOrder, side: SideIndex): string {
  return players[side] ? t`the side of ${players[side]}` : t`the side where nobody reads`;
}

function deskOf({ players }: BookletOrder, side: SideIndex): string {
  return players[side] ? t`the desk of ${players[side]}` : t`the empty desk`;
}

function sentences(each: readonly string[]): string {
  return each.join(' ');
}
