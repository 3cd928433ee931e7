/** The page plan that a setup goes by: kept, and let go. */

import { inSetup, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { scoreOf } from '../document/parts.ts';
import type { PagePlanRecord } from '../document/records.ts';
import { pinBroken } from '../file-format/page-plan-rules.ts';
import { t } from '../words/say.ts';
import { refuse, type Command, type Outcome, type Refusal } from './command.ts';
import { freshId } from './fresh-id.ts';
import { editsOf, propose } from './propose.ts';
import { removalOf } from './remove.ts';
import { theRecord } from './targets.ts';
import { nameOf } from './words.ts';

export interface KeepPlan extends Pick<PagePlanRecord, 'stations' | 'turns'> {
  readonly setup: Id<'setup'>;
}

/** Takes the place of the plan that was kept before, whose pins stay as far as there is a place for them. Nothing at all is a plan, too. */
export const keepPlan: Command<KeepPlan> = (document, { setup, stations, turns }) => {
  const target = theRecord(document, setup, 'setup');
  if (!target.ok) return target;
  const score = scoreOf(document, setup);
  const of = nameOf(document, target.record);
  if (!score) return refuse(t`${of} has no music yet, and a page plan goes by its pages and bars.`);
  const known = inSetup(document, setup, 'pagePlan')[0];
  const plan: PagePlanRecord = {
    id: known?.id ?? freshId(document, 'pagePlan'),
    kind: 'pagePlan',
    name: known?.name ?? '',
    setup,
    score: score.id,
    stations,
    turns: inOrder(turns),
    pins: known?.pins ?? [],
  };
  return propose(document, editsOf([withFittingPins(plan)]), { label: t`keep a page plan for ${of}` });
};

export interface OfSetup {
  readonly setup: Id<'setup'>;
}

export const dropPlan: Command<OfSetup> = (document, { setup }) => {
  const found = thePlan(document, setup);
  if (!found.ok) return found;
  return propose(document, removalOf(document, [found.plan]), { label: t`let the kept page plan go` });
};

export function thePlan(
  document: Document,
  setup: Id<'setup'>,
): { readonly ok: true; readonly plan: PagePlanRecord } | Refusal {
  const target = theRecord(document, setup, 'setup');
  if (!target.ok) return target;
  const plan = inSetup(document, setup, 'pagePlan')[0];
  return plan ? { ok: true, plan } : refuse(t`No page plan is kept for this setup.`);
}

/** Changes the kept plan of a setup; `change` may refuse. */
export function changePlan(
  document: Document,
  setup: Id<'setup'>,
  label: string,
  change: (plan: PagePlanRecord) => PagePlanRecord | Refusal,
): Outcome {
  const found = thePlan(document, setup);
  if (!found.ok) return found;
  const changed = change(found.plan);
  return 'ok' in changed ? changed : propose(document, editsOf([withFittingPins(changed)]), { label });
}

/** Turns of one time stay in the order that they had. */
export function inOrder(turns: PagePlanRecord['turns']): PagePlanRecord['turns'] {
  return turns.toSorted((a, b) => a.place - b.place);
}

function withFittingPins(plan: PagePlanRecord): PagePlanRecord {
  const stations = new Map(plan.stations.map((station) => [station.station, station]));
  return { ...plan, pins: plan.pins.filter((pin) => !pinBroken(pin, stations.get(pin.station))) };
}
