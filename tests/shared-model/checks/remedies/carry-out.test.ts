/** Remedies as commands: what they change, and what they refuse. */

import { expect, it } from 'vitest';
import { remedyOutcome } from '#model/checks/remedies/carry-out.ts';
import { aDocument, aPlayer, aStand, recordOf } from '../../../helpers/build.ts';
import { carried } from './trials.ts';

const document = aDocument(aPlayer(), aStand({ lip: 900 }), aStand({ id: 'stand-2', x: 900, lip: 700 }));

it('a move, a turn and a lowering change that item and nothing else', () => {
  const moved = carried(document, { kind: 'move', item: 'stand-1', dx: -120, dy: 50 });
  expect(recordOf(moved, 'stand-1', 'stand')).toMatchObject({ x: -120, y: 2050, lip: 900 });
  const turned = carried(document, { kind: 'turn', item: 'stand-1', by: 15 });
  expect(recordOf(turned, 'stand-1', 'stand')).toMatchObject({ x: 0, y: 2000, facing: -165 });
  const low = carried(document, { kind: 'lower', item: 'stand-1', by: 85 });
  expect(recordOf(low, 'stand-1', 'stand')).toMatchObject({ x: 0, lip: 815 });
  for (const changed of [moved, turned, low]) expect(recordOf(changed, 'stand-2', 'stand').lip).toBe(700);
});

it('several desks go down in one step that is undone at once', () => {
  const items = [
    { item: 'stand-1', by: 200 },
    { item: 'stand-2', by: 50 },
  ];
  const outcome = remedyOutcome(document, { kind: 'lowerAll', items });
  if (!outcome.ok) throw new Error(outcome.reason);
  expect([...outcome.diff.keys()]).toEqual(['stand-1', 'stand-2']);
  expect(outcome.label).toBe('lower 2 stands');
});

it('what has no desk, or is gone, is refused in words', () => {
  expect(remedyOutcome(document, { kind: 'lower', item: 'player-1', by: 5 })).toMatchObject({
    ok: false,
    reason: 'player 1 has no desk to lower.',
  });
  expect(remedyOutcome(document, { kind: 'lower', item: 'stand-9', by: 5 })).toMatchObject({ ok: false });
  expect(remedyOutcome(document, { kind: 'move', item: 'door-1', dx: 10, dy: 0 })).toMatchObject({
    ok: false,
  });
});
