/** `standlines turns` */

import { concertOf, inSetup, type Document } from '#model/document/document.ts';
import { labelOf } from '#model/document/labels.ts';
import type { Setup } from '#model/document/records.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import { planSights } from '#model/pages/instance/placed-plan.ts';
import { relabelled } from '#model/pages/instance/relabelled.ts';
import { judgedPlan, type JudgedPlan } from '#model/pages/kept/judged.ts';
import { keptJson, keptWords } from '#model/pages/kept/kept-words.ts';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import { planJson } from '#model/pages/planner/plan-json.ts';
import { planNow, type PlanResult } from '#model/pages/planner/planner.ts';
import { waysOutOf, type WaysOut } from '#model/pages/planner/ways-out.ts';
import { wordsOf } from '#model/pages/planner/words.ts';
import { chooseSetup, readInput } from './input.ts';
import { saveCards } from './cue-cards.ts';
import { givenScore } from './given-score.ts';
import { tellNotes, type Surroundings } from './surroundings.ts';
import { UsageError, type TurnsOrder } from './usage.ts';

/** Exit code 1: there is no plan. Throws `UsageError`. */
export async function turns(order: TurnsOrder, surroundings: Surroundings): Promise<number> {
  const input = await readInput(surroundings.fs, order.file);
  const setup = chooseSetup(input.document, order.setup);
  const given = await givenScore(input.document, setup, order, surroundings.fs);
  const { document } = given;
  const asked = instanceOf(document, setup.id);
  if (!asked.ok) throw new UsageError(`${setup.name || setup.id}: ${asked.missing.join(' ')}`);
  const labels = labelsOf(document, setup);
  const { instance } = asked;
  const nameOf = (id: string): string => labels[id] ?? id;
  const result = planned(instance, order.json ? null : nameOf);
  const ways = result.status === 'none' ? waysOut(instance) : {};
  const front = result.status === 'planned' ? result.front.map(({ plan }) => plan) : [];
  const sights = planSights(document, setup.id, instance, front);
  const kept = judgedPlan(document, setup.id);
  const shown = kept?.plan ?? (result.status === 'planned' ? result.plan : null);
  const printed = shown && { document, setup: setup.id, instance, plan: shown };
  const cards = await saveCards(order, printed, surroundings);
  const notes = [...input.notes, ...given.notes, ...asked.notes, ...cards];
  tellNotes(notes, surroundings);
  const json = () => ({
    ...{ file: order.file, setup: setup.id, labels, notes },
    ...(planJson(instance, result, { ...ways, sights }) as object),
    kept: keptJson(kept, nameOf),
  });
  const lines = () => [
    heading(document, setup),
    ...(kept ? beforeNewPlan(kept, nameOf) : []),
    ...wordsOf(instance, result, { ...ways, sights, nameOf }),
  ];
  surroundings.print(`${order.json ? JSON.stringify(json()) : lines().join('\n')}\n`);
  return exitCode(result);
}

/** What keeps it from being planned is found before anything is searched, so asking again in people's names costs nothing. */
function planned(instance: PlanInstance, nameOf: ((id: string) => string) | null): PlanResult {
  const result = planNow(instance);
  return result.status === 'faulty' && nameOf ? planNow(relabelled(instance, nameOf)) : result;
}

/** With two plans it has to be plain which is which: what is made from the file follows the one that is kept. */
function beforeNewPlan(kept: JudgedPlan, nameOf: (id: string) => string): string[] {
  return [
    'FILE keeps a plan: booklets and cue cards are made from it. It comes first, and then one that is searched anew.',
    '',
    ...keptWords(kept, nameOf),
    '',
    'Searched anew, with the pins of the kept plan; nothing is made from it:',
  ];
}

function exitCode({ status }: PlanResult): number {
  return status === 'planned' ? 0 : 1;
}

function waysOut(instance: PlanInstance): WaysOut {
  const steps = waysOutOf(instance);
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
