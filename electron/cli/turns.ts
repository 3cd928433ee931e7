/** `standlines turns` */

import { concertOf, inSetup, type Document } from '#model/document/document.ts';
import { labelOf } from '#model/document/labels.ts';
import type { Setup } from '#model/document/records.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import { relabelled } from '#model/pages/instance/relabelled.ts';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import { planJson } from '#model/pages/planner/plan-json.ts';
import { planNow, type PlanResult } from '#model/pages/planner/planner.ts';
import { remediesFor, type Remedy } from '#model/pages/planner/remedies.ts';
import { wordsOf } from '#model/pages/planner/words.ts';
import { chooseSetup, readInput } from './input.ts';
import { givenScore } from './given-score.ts';
import { tellNotes, type Surroundings } from './surroundings.ts';
import { UsageError, type TurnsOrder } from './usage.ts';

/** Exit code 1: there is no plan. Throws `UsageError`. */
export async function turns(order: TurnsOrder, surroundings: Surroundings): Promise<number> {
  const input = await readInput(surroundings.fs, order.file);
  const setup = chooseSetup(input.document, order.setup);
  const document = await givenScore(input.document, setup, order, surroundings.fs);
  const asked = instanceOf(document, setup.id);
  if (!asked.ok) throw new UsageError(`${setup.name || setup.id}: ${asked.missing.join(' ')}`);
  const labels = labelsOf(document, setup);
  const instance = order.json ? asked.instance : relabelled(asked.instance, (id) => labels[id] ?? id);
  const result = planNow(instance);
  const remedies = result.status === 'none' ? allRemedies(instance) : [];
  tellNotes([...input.notes, ...asked.notes], surroundings);
  const told = { file: order.file, setup: setup.id, labels, notes: [...input.notes, ...asked.notes] };
  surroundings.print(
    order.json
      ? `${JSON.stringify({ ...told, ...(planJson(instance, result, remedies) as object) })}\n`
      : `${[heading(document, setup), ...wordsOf(instance, result, remedies)].join('\n')}\n`,
  );
  return exitCode(result);
}

function exitCode({ status }: PlanResult): number {
  return status === 'planned' ? 0 : 1;
}

function allRemedies(instance: PlanInstance): Remedy[] {
  const steps = remediesFor(instance);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

function heading(document: Document, { name, id }: Setup): string {
  return `${concertOf(document).name || 'Concert'}, ${name || id}: page turns`;
}

/** What people call the players and the stands. */
function labelsOf(document: Document, { id }: Setup): Readonly<Record<string, string>> {
  const records = [...inSetup(document, id, 'player'), ...inSetup(document, id, 'stand')];
  return Object.fromEntries(records.map((record) => [record.id, labelOf(document, id, record.id)]));
}
