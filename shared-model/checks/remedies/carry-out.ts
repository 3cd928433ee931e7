/** A remedy as the command that makes it: nothing is suggested that the user could not do himself. */

import type { Outcome } from '../../commands/command.ts';
import { refuse } from '../../commands/command.ts';
import { move } from '../../commands/move.ts';
import { propose } from '../../commands/propose.ts';
import { turnBy } from '../../commands/turn.ts';
import { nameOf, namesOf } from '../../commands/words.ts';
import { applyDiff, composeDiffs } from '../../document/diff.ts';
import type { Document } from '../../document/document.ts';
import type { Stand } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import type { ItemChange, RemedyChange } from '../finding.ts';

export function remedyOutcome(document: Document, change: RemedyChange): Outcome {
  switch (change.kind) {
    case 'move':
      return move(document, { ids: [change.item], dx: change.dx, dy: change.dy });
    case 'moveTogether':
      return move(document, { ids: change.items, dx: change.dx, dy: change.dy });
    case 'turn':
      return turnBy(document, { ids: [change.item], by: change.by, about: 'own' });
    case 'turnTogether':
      return turnBy(document, { ids: change.items, by: change.by, about: 'first' });
    case 'cover':
      return covered(document, change.item);
    case 'flatten':
      return flattened(document, change);
    case 'both':
      return bothOutcome(document, change.first, change.second);
    case 'lower':
      return lowered(document, [change]);
    case 'lowerAll':
      return lowered(document, change.items);
  }
}

/** The document with the change made; null where the command refuses. */
export function carriedOut(document: Document, change: RemedyChange): Document | null {
  const outcome = remedyOutcome(document, change);
  return outcome.ok ? applyDiff(document, outcome.diff) : null;
}

/** One step, so that one undo takes both back. */
function bothOutcome(document: Document, first: RemedyChange, second: RemedyChange): Outcome {
  const before = remedyOutcome(document, first);
  if (!before.ok) return before;
  const after = remedyOutcome(applyDiff(document, before.diff), second);
  if (!after.ok) return after;
  const label = t`${before.label}, ${after.label}`;
  return { ok: true, diff: composeDiffs(before.diff, after.diff), label };
}

function flattened(document: Document, { item, by }: ItemChange): Outcome {
  const stand = document.records.get(item);
  if (stand?.kind !== 'stand') return refuse(t`There is no "${item}" any more.`);
  const edits = new Map([[stand.id, { ...stand, tilt: stand.tilt - by }]]);
  return propose(document, edits, { label: t`lay ${nameOf(document, stand)} flatter` });
}

function covered(document: Document, item: string): Outcome {
  const lamp = document.records.get(item);
  if (lamp?.kind !== 'lamp') return refuse(t`There is no such cable any more.`);
  const edits = new Map([[lamp.id, { ...lamp, cableCovered: true }]]);
  return propose(document, edits, { label: t`cover the cable of ${nameOf(document, lamp)}` });
}

function lowered(document: Document, items: readonly ItemChange[]): Outcome {
  const desks: Stand[] = [];
  for (const { item, by } of items) {
    const stand = document.records.get(item);
    if (!stand) return refuse(t`There is no "${item}" any more.`);
    if (stand.kind !== 'stand') return refuse(t`${nameOf(document, stand)} has no desk to lower.`);
    desks.push({ ...stand, lip: stand.lip - by });
  }
  const edits = new Map(desks.map((stand) => [stand.id, stand]));
  return propose(document, edits, { label: t`lower ${namesOf(document, desks)}` });
}
