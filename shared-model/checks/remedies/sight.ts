/** What helps against a player whom too small a share of the house sees well. */

import { standModel, USUAL_STAND } from '../../catalogue/stands.ts';
import { concertOf } from '../../document/document.ts';
import type { PlacedRecord, Stand } from '../../document/records.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import type { Remedy, RemedyChange } from '../finding.ts';
import { attemptsAt, smallestRemedy, type Attempt, type Task } from './attempt.ts';
import { createHarmCheck } from './harm.ts';
import type { Steps } from './search.ts';
import { createSightMeter } from './sight-meter.ts';
import { ofWeight, type Weight } from './weights.ts';

/** Of each weight so many things are tried, worst cover first. */
const MOST_COVERS = 3;

const TURNING: Steps = { coarse: 8, fine: 1, most: 48 };
/** How far things are moved for a view: music must stay before its reader, and a player at his stand. */
const MOVING: Readonly<Record<Weight, Steps>> = {
  light: { coarse: 80, fine: 10, most: 640 },
  person: { coarse: 80, fine: 10, most: 480 },
  bulky: { coarse: 80, fine: 10, most: 320 },
};

/**
 * The least lowering of a desk, move and turn of one thing that make the house see him, in this order; several desks
 * lowered together if no single thing does. What is bulky is moved only where nothing else helps.
 */
export function sightRemedies(task: Task): Remedy[] {
  const search = searchFor(task);
  const alone = [lowerOne(search), moveOne(search, 'light') ?? moveOne(search, 'person'), turnOne(search)];
  const found = alone.filter((remedy) => remedy !== null);
  if (found.length > 0) return found;
  const rest = lowerTogether(search) ?? moveOne(search, 'bulky');
  return rest ? [rest] : [];
}

interface Search {
  /** What covers him and may be moved, worst first, and himself among the persons. */
  readonly covers: (weight: Weight) => PlacedRecord[];
  /** False: even without these things he would not be seen, so nothing done to them can help. */
  readonly couldClear: (items: readonly PlacedRecord[]) => boolean;
  readonly attempt: Attempt;
}

function searchFor(task: Task): Search {
  const { document, setup, finding } = task;
  const player = finding.subjects[0] ?? '';
  const { houseShare } = concertOf(document).limits;
  const meter = createSightMeter(document, setup, player);
  const harms = createHarmCheck(task);
  const cleared = (share: number): number | null => (share >= houseShare ? share : null);
  return {
    covers: (weight) => ofWeight(document, [player, ...meter.covers], weight),
    couldClear: (items) =>
      items.some(({ id }) => id === player) ||
      cleared(meter.seenWellWithout(new Set(items.map(({ id }) => id)))) !== null,
    attempt: attemptsAt(task, { cleared: (changed) => cleared(meter.seenWell(changed)), harms }),
  };
}

function worthTrying({ covers, couldClear }: Search, weight: Weight): PlacedRecord[] {
  return covers(weight)
    .slice(0, MOST_COVERS)
    .filter((item) => couldClear([item]));
}

function lowerOne(search: Search): Remedy | null {
  const stands = worthTrying(search, 'light').filter(isStand);
  return smallestRemedy(stands, loweringOf(stands), lowered, search.attempt);
}

function lowerTogether({ covers, couldClear, attempt }: Search): Remedy | null {
  const stands = covers('light').filter(isStand);
  if (stands.length < 2 || !couldClear(stands)) return null;
  const together = (_: null, amount: number): RemedyChange => ({
    kind: 'lowerAll',
    items: stands
      .map((stand) => ({ item: stand.id, by: Math.min(amount, roomBelow(stand)) }))
      .filter(({ by }) => by > 0),
  });
  return smallestRemedy([null], loweringOf(stands), together, attempt);
}

const lowered = (stand: Stand, amount: number): RemedyChange => ({
  kind: 'lower',
  item: stand.id,
  by: Math.min(amount, roomBelow(stand)),
});

const LOWERING = { coarse: 40, fine: 5 };

function loweringOf(stands: readonly Stand[]): Steps {
  return { ...LOWERING, most: stands.reduce((most, stand) => Math.max(most, roomBelow(stand)), 0) };
}

/** How far a desk goes down as its model is made, in round steps. */
function roomBelow({ model, lip }: Stand): number {
  const { least } = (standModel(model) ?? USUAL_STAND).lip;
  return Math.max(0, Math.floor((lip - least) / LOWERING.fine) * LOWERING.fine);
}

/** Towards stage left and right, downstage and upstage. */
const WAYS: readonly Vec2[] = [
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0, y: -1 },
  { x: 0, y: 1 },
];

function moveOne(search: Search, weight: Weight): Remedy | null {
  const ways = worthTrying(search, weight).flatMap((item) => WAYS.map((way) => ({ item, way })));
  const moved = ({ item, way }: (typeof ways)[number], amount: number): RemedyChange => ({
    kind: 'move',
    item: item.id,
    dx: way.x * amount,
    dy: way.y * amount,
  });
  return smallestRemedy(ways, MOVING[weight], moved, search.attempt);
}

function turnOne(search: Search): Remedy | null {
  const stands = worthTrying(search, 'light').filter(isStand);
  const ways = stands.flatMap((stand) => [1, -1].map((sense) => ({ stand, sense })));
  return smallestRemedy(
    ways,
    TURNING,
    ({ stand, sense }, amount) => ({ kind: 'turn', item: stand.id, by: sense * amount }),
    search.attempt,
  );
}

function isStand(record: PlacedRecord): record is Stand {
  return record.kind === 'stand';
}
