/**
 * Elbow room: what a player wants on either side of his axis while he plays, against what stands there at the height
 * of his arms. Wanted is half the shoulders' breadth with what the instrument asks for beyond it, and never less than half
 * the breadth over both elbows (forearm-forearm breadth, ANSUR II: Gordon et al., NATICK/TR-15/007, 2014).
 */

import { instrumentModel } from '../../catalogue/instruments.ts';
import { bodies, type Body } from '../../catalogue/people.ts';
import { BODY_DEPTH } from '../../catalogue/outlines.ts';
import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { edgeOf } from '../../document/openings.ts';
import type { Instrument, PlacedRecord, Platform, Player, Point } from '../../document/records.ts';
import { facingVector, placed, type Vec2 } from '../../geometry/frame.ts';
import { boundsOf, type Bounds, type Polygon } from '../../geometry/polygon.ts';
import type { Finding } from '../finding.ts';
import { heightsOf, planBetween } from './boards.ts';
import { BoxGrid } from './box-grid.ts';
import { polygonBetween } from './half-planes.ts';
import { roomOf, type Room, type Thing } from './room.ts';
import { floorUnder } from './solids.ts';

/** Elbows and forearms stay within so much before the axis. Common practice, no source. */
export const ELBOWS_AHEAD = 300;
const NOTICED = 1;

export type Side = 'left' | 'right';

/** Wanted to either side of the player's axis. */
export interface Elbows {
  readonly left: number;
  readonly right: number;
}

/**
 * `measured`: free width over the player's axis, from what stands on his left to what stands on his right, no more
 * than he wants on each side; `required`: what he wants. Subjects: player, what is in the way (another player, an
 * item, or the platform when it is a wall). Two players in each other's way are named once.
 */
export function elbowFindings(
  document: Document,
  setup: Id<'setup'>,
  room: Room = roomOf(document, setup),
): Finding[] {
  const players = room.things.flatMap((thing) => playingOf(thing, room));
  const grid = new BoxGrid(room.things.map(({ bounds }) => bounds));
  const zones = new BoxGrid(players.map(({ zone }) => boundsOf(zone)));
  const findings = players.flatMap((player) => {
    const bounds = boundsOf(player.zone);
    const things = grid.touching(bounds).flatMap((index) => room.things[index] ?? []);
    const others = zones.touching(bounds).flatMap((index) => players[index] ?? []);
    const nearest = nearestOf([
      ...others.flatMap((other) => neighbour(player, other)),
      ...things.flatMap((thing) => inTheWay(player, thing)),
      ...walls(player, room.platform),
    ]);
    return nearest ? [findingOf(player, nearest)] : [];
  });
  return eachPairOnce(findings);
}

/** What a player with these instruments wants; the most of what any of them wants. */
export function elbowsOf(body: Body, instruments: readonly Instrument[]): Elbows {
  const least = body.elbowBreadth / 2;
  const wanted = (side: Side): number =>
    instruments.reduce((most, { model }) => {
      const beyond = instrumentModel(model)?.elbowRoom[side] ?? 0;
      return Math.max(most, body.shoulderBreadth / 2 + beyond);
    }, least);
  return { left: wanted('left'), right: wanted('right') };
}

interface Playing {
  readonly player: Player;
  readonly elbows: Elbows;
  /** On plan, in the stage frame. */
  readonly zone: Polygon;
  /** Heights of the arms above the platform's floor. */
  readonly low: number;
  readonly high: number;
  readonly own: ReadonlySet<string>;
}

function playingOf({ record }: Thing, { instruments, things, risers }: Room): Playing[] {
  if (record.kind !== 'player') return [];
  const body = bodies(record.person, record.chair?.height ?? null).tall;
  const held = instruments.filter(({ player }) => player === record.id);
  const elbows = elbowsOf(body, held);
  const floor = floorUnder(record, risers);
  return [
    {
      player: record,
      elbows,
      zone: zoneOf(record, elbows),
      low: floor + body.waistHeight,
      high: floor + body.shoulderHeight,
      own: ownThings(record, held, things),
    },
  ];
}

/** What a player reads from, plays or takes things from is there because he wants it near. */
function ownThings(player: Player, held: readonly Instrument[], things: readonly Thing[]): Set<string> {
  const own = new Set<string>([player.id]);
  for (const { support } of held) if (support) own.add(support);
  for (const { record } of things) if (isOwn(record, player)) own.add(record.id);
  return own;
}

function isOwn(record: PlacedRecord, player: Player): boolean {
  if (record.kind === 'stand') return record.sides.some((side) => side.reader === player.id);
  return (record.kind === 'piano' || record.kind === 'largeInstrument') && record.player === player.id;
}

/** Local frame of an item: it looks along -y, +x is to the left of who looks that way. */
function zoneOf(player: Player, { left, right }: Elbows): Polygon {
  const corners = [
    { x: -right, y: -ELBOWS_AHEAD },
    { x: left, y: -ELBOWS_AHEAD },
    { x: left, y: BODY_DEPTH / 2 },
    { x: -right, y: BODY_DEPTH / 2 },
  ];
  return corners.map((corner) => placed(player, corner));
}

interface InTheWay {
  readonly other: string;
  readonly side: Side;
  /** Free from the axis to it. */
  readonly free: number;
  readonly missing: number;
}

function nearestOf(found: readonly InTheWay[]): InTheWay | null {
  return found.reduce<InTheWay | null>(
    (worst, next) => (next.missing > (worst?.missing ?? NOTICED) ? next : worst),
    null,
  );
}

/** Another player's elbows want their own room, so the two zones must not run into each other. */
function neighbour(player: Playing, other: Playing): InTheWay[] {
  const together = Math.min(player.high, other.high) - Math.max(player.low, other.low);
  if (other === player || together <= 0) return [];
  return sidesOf(player, other.zone, other.player.id);
}

function inTheWay(player: Playing, { record, solids, boards }: Thing): InTheWay[] {
  if (record.kind === 'player' || record.kind === 'lamp' || player.own.has(record.id)) return [];
  const plans = [
    ...solids.filter(({ low, high }) => low < player.high && high > player.low).map(({ outline }) => outline),
    ...boards
      .filter(({ corners }) => heightsOf(corners).low < player.high && heightsOf(corners).high > player.low)
      .map(({ corners }) => planBetween(corners, player.low, player.high)),
  ];
  return plans.flatMap((plan) => sidesOf(player, plan, record.id));
}

/** Edges that are not open are taken for walls. */
function walls(player: Playing, platform: Platform): InTheWay[] {
  return platform.outline.flatMap((_, edge) => {
    if (platform.openEdges.includes(edge)) return [];
    const { a, b } = edgeOf(platform, edge);
    return sidesOf(player, [a, b], platform.id);
  });
}

/** On which side an outline comes into the player's zone, and how near. Over the axis it takes the nearer side. */
function sidesOf(player: Playing, outline: Polygon, other: string): InTheWay[] {
  const { elbows } = player;
  const local = outline.map((corner) => localTo(player.player, corner));
  const zone: Bounds = { minX: -elbows.right, maxX: elbows.left, minY: -ELBOWS_AHEAD, maxY: BODY_DEPTH / 2 };
  const within = polygonBetween(local, zone);
  if (within.length === 0) return [];
  const { minX, maxX } = boundsOf(within);
  const side: Side = minX + maxX >= 0 ? 'left' : 'right';
  const free = Math.max(0, side === 'left' ? minX : -maxX);
  return [{ other, side, free, missing: elbows[side] - free }];
}

/** x to the player's left, y behind him. */
function localTo({ x, y, facing }: Player, point: Vec2): Vec2 {
  const ahead = facingVector(facing);
  const [dx, dy] = [point.x - x, point.y - y];
  return { x: -dx * ahead.y + dy * ahead.x, y: -dx * ahead.x - dy * ahead.y };
}

function findingOf({ player, elbows }: Playing, { other, side, missing, free }: InTheWay): Finding {
  const required = elbows.left + elbows.right;
  const where: Point = { x: player.x, y: player.y };
  return {
    code: 'room.elbow',
    severity: 'caution',
    subjects: [player.id, other],
    measured: required - missing,
    required,
    unit: 'mm',
    where,
    detail: { side, free, wanted: elbows[side] },
  };
}

/** Of two findings about the same two players the one in which more is missing. */
function eachPairOnce(findings: readonly Finding[]): Finding[] {
  const missing = (finding: Finding): number => finding.required - finding.measured;
  const worst = new Map<string, Finding>();
  for (const finding of findings) {
    const key = [...finding.subjects].sort().join(' ');
    const known = worst.get(key);
    if (!known || missing(finding) > missing(known)) worst.set(key, finding);
  }
  return [...worst.values()];
}
