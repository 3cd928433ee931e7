/** Steps and ramps off an open edge are not called doors; a place says its block where its row is not the only one. */

import { expect, test } from 'vitest';
import { labelOf } from '#model/document/labels.ts';
import { openingKind } from '#model/document/openings.ts';
import { housePlaces } from '#model/document/seating.ts';
import { drawGround, planContext } from '#model/drawing/plan.ts';
import { aDocument, aDoor, aPlatform, aSeatBlock, SETUP } from '../../helpers/build.ts';
import { planRequest, textsIn } from '../drawing/drawings.ts';

const platform = aPlatform({ openEdges: [0] });

test.each([
  [aDoor({ edge: 0, stepFree: false }), 'steps'],
  [aDoor({ edge: 0, stepFree: true }), 'ramp'],
  [aDoor({ edge: 2, stepFree: false }), 'door'],
  [aDoor({ edge: 2, stepFree: true }), 'door'],
])('opening %#', (door, kind) => {
  expect(openingKind(platform, door)).toBe(kind);
  expect(openingKind({ ...platform, height: 0 }, door)).toBe('door');
  const document = aDocument(platform, { ...door, name: '', exit: false });
  expect(labelOf(document, SETUP, door.id)).toBe(`${kind} 1`);
  const words = textsIn(drawGround(planContext(planRequest(document)))).map(({ text }) => text);
  expect(words.some((text) => text.startsWith(`${kind.toUpperCase()}, `))).toBe(true);
});

const labels = (...blocks: Parameters<typeof aDocument>): string[] =>
  housePlaces(aDocument(...blocks)).map(({ label }) => label);

test('a place has its block’s name where two blocks have a row of that name', () => {
  const left = aSeatBlock({ id: 'stalls', name: 'Left', rows: 2, firstRow: 'A' });
  const right = aSeatBlock({ id: 'right', name: 'Right', rows: 2, firstRow: 'B' });
  const both = labels(left, right);
  expect(both).toContain('B 1 (Left)');
  expect(both).toContain('B 1 (Right)');
  expect(new Set(both).size).toBe(both.length);
  expect(labels(left, { ...right, name: '' })).toContain('B 1 (seat block 1)');
});

test('and goes by row and number where there is no other', () => {
  const stalls = aSeatBlock({ id: 'stalls', rows: 2, firstRow: 'A' });
  expect(labels(stalls, aSeatBlock({ id: 'rear', firstRow: 'AA' }))).toContain('A 1');
  expect(labels(stalls)).toContain('A 1');
});
