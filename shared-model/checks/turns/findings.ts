/** A page plan that is kept, judged by the rules that the planner's plans keep. */

import { find, type Document } from '../../document/document.ts';
import { asId, type Id } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import type { Point } from '../../document/records.ts';
import { judgedPlan } from '../../pages/kept/judged.ts';
import type { Violation } from '../../pages/planner/judge.ts';
import { violationSubjects, violationWords } from '../../pages/planner/violation-words.ts';
import type { Finding } from '../finding.ts';

/**
 * One for the whole plan, with the number of rules that are broken; none where no plan is kept, or where the setup lacks what it
 * would be judged by. `detail.worst`: a sentence about the gravest.
 */
export function turnsFindings(document: Document, setup: Id<'setup'>): Finding[] {
  const kept = judgedPlan(document, setup);
  const violations = kept?.judgement.violations ?? [];
  const [first, ...others] = violations;
  if (!kept || !first) return [];
  const worst = others.reduce(graver, first);
  const subjects = violationSubjects(worst, kept).filter((id) => document.records.has(id));
  return [
    {
      code: 'turns.broken',
      severity: 'fail',
      subjects,
      measured: violations.length,
      required: 0,
      unit: 'count',
      where: subjects.map((id) => spotOf(document, id)).find((spot) => spot !== null) ?? null,
      detail: { worst: violationWords(worst, kept, (id) => labelOf(document, setup, id)) },
    },
  ];
}

/** Nothing is graver than music that nobody can read, the longer the worse; else what is told first. */
function graver(a: Violation, b: Violation): Violation {
  return unseen(b) > unseen(a) ? b : a;
}

function unseen(violation: Violation): number {
  return violation.code === 'page-not-in-view' ? violation.to - violation.from : 0;
}

function spotOf(document: Document, id: string): Point | null {
  const record = find(document, asId<'player'>(id)) ?? find(document, asId<'stand'>(id));
  return record ? { x: record.x, y: record.y } : null;
}
