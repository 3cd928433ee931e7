/**
 * Folds a taped strip over the ridge of two desks, in space, and looks from both sides.
 *
 * Written from the paper alone: rigid panels, tapes as hinges, two sloping desks whose upper edges meet. The strip's first panel is
 * fixed to desk 0, its last to desk 1, everything between is fan-folded on the stack's desk. To turn is to take what lies
 * uppermost there by its lower edge and to lay it over the ridge. Shares nothing with the product but the strip.
 */

import {
  centre,
  cornersOf,
  edgeOf,
  HEIGHT,
  PAGE_WIDTH,
  panelAt,
  tapesAside,
  textRight,
  textUp,
  type Edge,
  type FlatStrip,
} from './flat-strip.ts';
import {
  add,
  cross,
  crosses,
  direction,
  distance,
  dot,
  minus,
  place,
  scale,
  turned,
  type Point,
  type Pose,
  type Segment,
  type Vector,
} from './space.ts';

export type Side = 0 | 1;

/** What a reader has before him: the pages from his left, or why he cannot read. */
export type Seen = readonly (string | null)[] | 'blank side' | 'on its head' | 'mirrored';

export interface Folding {
  /** Per state, what the readers at desk 0 and desk 1 see. */
  readonly seen: readonly (readonly [Seen, Seen])[];
  /** What cannot be, in words; empty: it folds. */
  readonly problems: readonly string[];
}

/** Where the paper is: per panel its desk, and per desk the panels from the desk outwards. */
interface Lie {
  readonly desks: readonly Side[];
  readonly stacks: readonly [readonly number[], readonly number[]];
}

/** Of the desks from the horizontal. */
const TILT = (67 * Math.PI) / 180;
const [C, S] = [Math.cos(TILT), Math.sin(TILT)];

interface Desk {
  /** Down the slope from the ridge, which is the x axis. */
  readonly down: Vector;
  /** Out of the desk, towards the reader. */
  readonly out: Vector;
  readonly readersRight: Vector;
}

const DESKS: readonly [Desk, Desk] = [
  { down: [0, -C, -S], out: [0, -S, C], readersRight: [1, 0, 0] },
  { down: [0, C, -S], out: [0, S, C], readersRight: [-1, 0, 0] },
];

const NEAR = 1e-6;

export function foldOverRidge(strip: FlatStrip, stack: Side, turns: number): Folding {
  const problems = tapesAside(strip).map((tape) => `tape ${tape} joins edges that do not touch`);
  problems.push(...untaped(strip));
  const seen: [Seen, Seen][] = [];
  let lie = putUp(strip, stack);
  for (let state = 0; problems.length === 0; state++) {
    const poses = posesOf(strip, lie);
    if (typeof poses === 'string') return { seen, problems: [`state ${state}: ${poses}`] };
    for (const found of [
      ...tornTapes(strip, poses),
      ...stretched(strip, poses),
      ...passingThrough(strip, lie),
    ])
      problems.push(`state ${state}: ${found}`);
    seen.push([look(strip, lie, poses, 0), look(strip, lie, poses, 1)]);
    if (state === turns) break;
    const taken = uppermost(strip, lie, poses, stack);
    if (typeof taken === 'string') return { seen, problems: [...problems, `turn ${state + 1}: ${taken}`] };
    for (const found of onTheWay(strip, lie, taken, stack)) problems.push(`turn ${state + 1}: ${found}`);
    lie = laidOver(lie, taken, stack);
  }
  return { seen, problems };
}

/** A strip hangs together: each panel is taped to the next. */
function untaped({ panels, tapes }: FlatStrip): string[] {
  return panels.slice(1).flatMap((_, index) => {
    const count = tapes.filter(
      ({ first, second }) =>
        Math.min(first.panel, second.panel) === index && Math.max(first.panel, second.panel) === index + 1,
    ).length;
    return count === 1 ? [] : [`panels ${index} and ${index + 1} are held by ${count} tapes`];
  });
}

function putUp({ panels }: FlatStrip, stack: Side): Lie {
  const all = panels.map((_, index) => index);
  const open = stack === 0 ? panels.length - 1 : 0;
  const stacked = all.filter((index) => index !== open);
  // Upwards from the panel on the desk.
  const pile = stack === 0 ? stacked : stacked.toReversed();
  return {
    desks: all.map((index) => (index === open ? (stack === 0 ? 1 : 0) : stack)),
    stacks: stack === 0 ? [pile, [open]] : [[open], pile],
  };
}

/** Chains the panels from the one on desk 0, each hinged at the tape; a sentence when one cannot lie where it should. */
function posesOf(strip: FlatStrip, { desks }: Lie): Pose[] | string {
  const poses: Pose[] = [firstPose()];
  for (let index = 1; index < strip.panels.length; index++) {
    const before = poses[index - 1] as Pose;
    const hinge = hingeOf(strip, index - 1);
    const [from, to] = [place(before, hinge[0]), place(before, hinge[1])];
    const axis = scale(minus(to, from), 1 / distance(from, to));
    const pose = [Math.PI, 2 * TILT, -2 * TILT]
      .map((angle) => turned(before, from, axis, angle))
      .find((candidate) => liesOn(strip, index, candidate, desks[index] ?? 0));
    if (!pose) return `panel ${index} cannot lie on desk ${desks[index]}`;
    poses.push(pose);
  }
  return poses;
}

/** Face out, its lower edge on the table at the ridge. */
function firstPose(): Pose {
  const { down, out } = DESKS[0];
  const [y, z] = [down, out];
  return { x: cross(y, z), y, z, origin: scale(down, HEIGHT / 2) };
}

function hingeOf(strip: FlatStrip, index: number): Edge {
  const tape = strip.tapes.find(
    ({ first, second }) => Math.min(first.panel, second.panel) === index && first.panel !== second.panel,
  );
  if (!tape) throw new Error(`panel ${index} is not taped`);
  return edgeOf(strip, tape.first.panel, tape.first.edge);
}

function liesOn(strip: FlatStrip, index: number, pose: Pose, desk: Side): boolean {
  const { down, out } = DESKS[desk];
  return cornersOf(strip, index).every((corner) => {
    const at = place(pose, corner);
    const depth = dot(at, down);
    return Math.abs(dot(at, out)) < NEAR && depth > -NEAR && depth < HEIGHT + NEAR;
  });
}

function tornTapes(strip: FlatStrip, poses: readonly Pose[]): string[] {
  return strip.tapes.flatMap(({ first, second }, index) => {
    const [a, b] = edgeOf(strip, first.panel, first.edge);
    const [p, q] = [poses[first.panel] as Pose, poses[second.panel] as Pose];
    const gap = Math.max(distance(place(p, a), place(q, a)), distance(place(p, b), place(q, b)));
    return gap < NEAR ? [] : [`tape ${index} is torn by ${gap.toFixed(1)} mm`];
  });
}

function stretched(strip: FlatStrip, poses: readonly Pose[]): string[] {
  return poses.flatMap((pose, index) => {
    const flat = cornersOf(strip, index);
    const inSpace = flat.map((corner) => place(pose, corner));
    const off = flat.flatMap((a, i) =>
      flat.map((b, j) => Math.abs(distance(a, b) - distance(inSpace[i] as Vector, inSpace[j] as Vector))),
    );
    return off.every((error) => error < NEAR) ? [] : [`panel ${index} is stretched`];
  });
}

/** What a hand takes that grips the uppermost panel of the stack by its lower edge; a sentence when it cannot be lifted. */
function uppermost(strip: FlatStrip, lie: Lie, poses: readonly Pose[], stack: Side): number[] | string {
  const pile = lie.stacks[stack];
  const top = pile.at(-1);
  if (top === undefined || pile.length < 2) return 'nothing is left to turn';
  const atHem = strip.tapes.flatMap(({ first, second }) => {
    if (first.panel !== top && second.panel !== top) return [];
    const other = first.panel === top ? second.panel : first.panel;
    const own = first.panel === top ? first : second;
    const [end] = edgeOf(strip, top, own.edge);
    const depth = dot(place(poses[top] as Pose, end), DESKS[stack].down);
    return depth > HEIGHT - NEAR ? [other] : [];
  });
  const [under] = atHem;
  if (under === undefined) return [top];
  if (under === 0 || under === strip.panels.length - 1) return 'the leaf is fixed to a desk';
  return [top, under];
}

/** Turned over, what was uppermost comes to lie undermost. */
function laidOver({ desks, stacks }: Lie, taken: readonly number[], stack: Side): Lie {
  const to: Side = stack === 0 ? 1 : 0;
  const left = stacks[stack].filter((panel) => !taken.includes(panel));
  const grown = [...stacks[to], ...taken];
  return {
    desks: desks.map((desk, panel) => (taken.includes(panel) ? to : desk)),
    stacks: stack === 0 ? [left, grown] : [grown, left],
  };
}

function look(strip: FlatStrip, lie: Lie, poses: readonly Pose[], side: Side): Seen {
  const top = lie.stacks[side].at(-1);
  if (top === undefined) return 'blank side';
  const [panel, pose, desk] = [panelAt(strip, top), poses[top] as Pose, DESKS[side]];
  if (dot(pose.z, desk.out) < 0) return 'blank side';
  if (dot(direction(pose, textUp(panel)), desk.down) > 0) return 'on its head';
  if (dot(direction(pose, textRight(panel)), desk.readersRight) < 0) return 'mirrored';
  const placed = panel.pages.map((page, slot) => {
    const aside = (slot - (panel.pages.length - 1) / 2) * PAGE_WIDTH;
    const at = add(centre(top), scale(textRight(panel), aside));
    return { page, at: dot(place(pose, at), desk.readersRight) };
  });
  return placed.toSorted((a, b) => a.at - b.at).map(({ page }) => page);
}

// The cross-section. All paper is as wide as its strip, so whether it passes through other paper shows in the plane
// square to the ridge: panels are spokes around a thin bar, laid a little apart, and tapes join their ends.

/** Angle between neighbouring layers, so that ten dozen of them stay clear of the other desk. */
const APART = 0.002;
/** Of the bar that the ridge is, mm. */
const BAR = 3;

/** Crossings of paper at rest, `lie` being how it is piled. Exported, so that an impossible pile can be tried. */
export function passingThrough(strip: FlatStrip, lie: Pick<Lie, 'stacks'>): string[] {
  return crossings(strip, spokesAtRest(lie));
}

/** Angle of every panel, from the desk of side 0 over the top to the desk of side 1. */
function spokesAtRest({ stacks }: Pick<Lie, 'stacks'>): Map<number, number> {
  const spokes = new Map<number, number>();
  stacks[0].forEach((panel, layer) => spokes.set(panel, (layer + 1) * APART));
  stacks[1].forEach((panel, layer) => spokes.set(panel, WHOLE - (layer + 1) * APART));
  return spokes;
}

const WHOLE = Math.PI + 2 * TILT;

const STEPS = 12;

/** Crossings while `taken` swings over the ridge, in steps. Exported, so that an impossible turn can be tried. */
export function onTheWay(
  strip: FlatStrip,
  lie: Pick<Lie, 'stacks'>,
  taken: readonly number[],
  stack: Side,
): string[] {
  const found = new Set<string>();
  for (let step = 1; step < STEPS; step++) {
    const spokes = spokesAtRest(lie);
    const share = step / STEPS;
    const middle = WHOLE * (stack === 0 ? share : 1 - share);
    const ahead = stack === 0 ? APART : -APART;
    // The panel that was uppermost goes ahead of the one under it.
    taken.forEach((panel, index) => spokes.set(panel, middle + ahead * (index === 0 ? 1 : 0)));
    for (const crossing of crossings(strip, spokes)) found.add(crossing);
  }
  return [...found];
}

function crossings(strip: FlatStrip, spokes: ReadonlyMap<number, number>): string[] {
  const paper = [...spokes].map(([panel, angle]) => ({ name: `panel ${panel}`, segment: spoke(angle) }));
  const tape = strip.tapes.map(({ first, second }, index) => ({
    name: `tape ${index}`,
    segment: joined(strip, spokes, first, second),
  }));
  const all = [...paper, ...tape];
  return all.flatMap((a, index) =>
    all
      .slice(index + 1)
      .filter((b) => crosses(a.segment, b.segment))
      .map((b) => `${a.name} passes through ${b.name}`),
  );
}

function on(angle: number, radius: number): Point {
  const from = Math.PI + TILT;
  return [radius * Math.cos(from - angle), radius * Math.sin(from - angle)];
}

function spoke(angle: number): Segment {
  return [on(angle, BAR), on(angle, BAR + HEIGHT)];
}

type Held = FlatStrip['tapes'][number]['first'];

/** Between the inner ends when the tape is at the heads, between the outer ones when it is at the feet. */
function joined(strip: FlatStrip, spokes: ReadonlyMap<number, number>, first: Held, second: Held): Segment {
  const [a, b] = [first, second].map(({ panel, edge }) => {
    const radius = isAtRidge(strip, panel, edge) ? BAR : BAR + HEIGHT;
    return on(spokes.get(panel) ?? 0, radius);
  }) as [Point, Point];
  return [a, b];
}

/** Panels hang from the ridge alternately by their far and near edge on the table, as the strip is folded zig-zag. */
function isAtRidge(strip: FlatStrip, panel: number, edge: Held['edge']): boolean {
  const [[, y]] = edgeOf(strip, panel, edge);
  const isNear = y < centre(panel)[1];
  return isNear === (panel % 2 === 0);
}
