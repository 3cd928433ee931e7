/** A suggested change as the command that makes it. */

import type { Remedy } from '#model/checks/finding.ts';
import type { Outcome } from '#model/commands/command.ts';
import { refuse } from '#model/commands/command.ts';
import { move } from '#model/commands/move.ts';
import { setFields } from '#model/commands/set-fields.ts';
import { turnBy } from '#model/commands/turn.ts';
import type { Document } from '#model/document/document.ts';

export function remedyOutcome(document: Document, remedy: Remedy): Outcome {
  const ids = [remedy.item];
  switch (remedy.kind) {
    case 'move':
      return move(document, { ids, dx: remedy.dx, dy: remedy.dy });
    case 'turn':
      return turnBy(document, { ids, by: remedy.by, about: 'own' });
    case 'lower':
      return lowered(document, remedy.item, remedy.by);
  }
}

function lowered(document: Document, id: string, by: number): Outcome {
  const record = document.records.get(id);
  if (record?.kind === 'stand')
    return setFields(document, { ids: [record.id], fields: { lip: record.lip - by } });
  if (record?.kind === 'table')
    return setFields(document, { ids: [record.id], fields: { height: record.height - by } });
  return refuse('This cannot be lowered.');
}
