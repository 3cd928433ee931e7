/** A plan of page turns on the platform: with the stands that it uses and no others, and what the house sees then. */

import { concertOf, inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { AnyRecord, Stand, StandSide } from '../../document/records.ts';
import { sightReport } from '../../checks/sightlines/sight-report.ts';
import type { PlanInstance } from '../planner/instance.ts';
import type { Plan, StationPlan } from '../planner/plan.ts';

/**
 * Stands whose readers all have their pages elsewhere are away, and the others hold as many pages side by side as the plan puts
 * there. Stands at which nobody reads, or somebody without a part, stay as they are. Not to be saved: what names a stand
 * that is away still does.
 */
export function withPlanPlaced(
  document: Document,
  setup: Id<'setup'>,
  { players }: Pick<PlanInstance, 'players'>,
  { stations }: Plan,
): Document {
  const reads = new Set(players.map(({ id }) => id));
  const used = new Map(stations.map((own) => [own.station, own]));
  const records = new Map<string, AnyRecord>(document.records);
  for (const stand of inSetup(document, setup, 'stand')) {
    const own = used.get(stand.id);
    if (own) records.set(stand.id, withPages(stand, own));
    else if (onlyHoldsPaperOf(stand, reads)) records.delete(stand.id);
  }
  return { records };
}

function withPages(stand: Stand, { pagesAcross }: StationPlan): Stand {
  const [first, second] = stand.sides;
  const wide = (side: StandSide, index: number): StandSide => ({
    ...side,
    pagesAcross: pagesAcross[index] ?? side.pagesAcross,
  });
  return { ...stand, sides: second ? [wide(first, 0), wide(second, 1)] : [wide(first, 0)] };
}

function onlyHoldsPaperOf({ sides }: Stand, readers: ReadonlySet<string>): boolean {
  const somebody = sides.flatMap(({ reader }) => reader ?? []);
  return somebody.length > 0 && somebody.every((reader) => readers.has(reader));
}

/** Of the player whom the fewest places see well, and of the place that sees least of anybody. */
export interface PlanSight {
  readonly player: string;
  /** Share of the places that see at least `seesWell` of that player. */
  readonly seenWell: number;
  /** The concert's limit: 0.9 as a rule. */
  readonly seesWell: number;
  readonly worst: {
    readonly player: string;
    readonly seat: string;
    readonly label: string;
    readonly share: number;
  };
}

/** Null: there is no place in the house, or nobody on the platform. */
export function planSight(document: Document, setup: Id<'setup'>): PlanSight | null {
  const { scene, figures } = sightReport(document, setup);
  if (scene.seats.length === 0) return null;
  const [least] = figures.toSorted((a, b) => a.seenWell - b.seenWell);
  const [worst] = figures.toSorted((a, b) => a.worst.share - b.worst.share);
  if (!least || !worst) return null;
  const { seesWell } = concertOf(document).limits;
  const { player, seenWell } = least;
  const { seat, share } = worst.worst;
  const label = scene.seats.find(({ id }) => id === seat)?.label ?? seat;
  return { player, seenWell, seesWell, worst: { player: worst.player, seat, label, share } };
}

/** In the order of the plans. Plans that stand there alike are looked at once. */
export function planSights(
  document: Document,
  setup: Id<'setup'>,
  instance: PlanInstance,
  plans: readonly Plan[],
): (PlanSight | null)[] {
  const known = new Map<string, PlanSight | null>();
  return plans.map((plan) => {
    const key = JSON.stringify(
      plan.stations.map(({ station, pagesAcross }) => [station, pagesAcross]).toSorted(),
    );
    const before = known.get(key);
    if (before !== undefined) return before;
    const sight = planSight(withPlanPlaced(document, setup, instance, plan), setup);
    known.set(key, sight);
    return sight;
  });
}
