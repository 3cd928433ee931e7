/** Remedies for `sight.house`: each is carried out and measured again from nothing, outside the code that found it. */

import { describe, expect, it } from 'vitest';
import { remedyOutcome } from '#model/checks/remedies/carry-out.ts';
import type { Finding, RemedyChange } from '#model/checks/finding.ts';
import { suggestRemedies } from '#model/checks/remedy.ts';
import { sightFindings } from '#model/checks/sight-findings.ts';
import { sightReport } from '#model/checks/sightlines/sight-report.ts';
import { applyDiff } from '#model/document/diff.ts';
import type { Document } from '#model/document/document.ts';
import { aDocument, aPlayer, aShape, aStand, SETUP } from '../../../helpers/build.ts';

function sightOf(document: Document, player = 'player-1'): Finding | undefined {
  return sightFindings(document, sightReport(document, SETUP)).find(({ subjects }) => subjects[0] === player);
}

function carried(document: Document, change: RemedyChange): Document {
  const outcome = remedyOutcome(document, change);
  if (!outcome.ok) throw new Error(outcome.reason);
  return applyDiff(document, outcome.diff);
}

function remediesFor(document: Document, player?: string) {
  const finding = sightOf(document, player);
  if (!finding) throw new Error('he is seen well already');
  return suggestRemedies(document, SETUP, finding);
}

describe('a desk right before a player', () => {
  const document = aDocument(aPlayer({ y: 2000 }), aStand({ y: 1500, lip: 1050, tilt: 70 }));

  it('is lowered by as little as makes the house see him, and no less', () => {
    const lower = remediesFor(document).find(({ kind }) => kind === 'lower');
    expect(lower).toMatchObject({ item: 'stand-1' });
    if (lower?.kind !== 'lower') throw new Error('nothing to lower');
    expect(lower.by % 5).toBe(0);
    expect(sightOf(carried(document, lower))).toBeUndefined();
    expect(sightOf(carried(document, { ...lower, by: lower.by - 5 }))).toBeDefined();
  });

  it('`after` is the figure of a full check', () => {
    for (const remedy of remediesFor(document)) {
      const { figures } = sightReport(carried(document, remedy), SETUP);
      expect(figures[0]?.seenWell).toBe(remedy.after);
    }
  });
});

it('a column of the building is not moved, and nothing else is pretended to help', () => {
  const document = aDocument(aPlayer({ y: 2000 }), aShape({ y: 1000, outline: wide(1200), fixed: true }));
  expect(sightOf(document)?.subjects).toEqual(['player-1', 'shape-1']);
  for (const remedy of remediesFor(document))
    expect(remedy).toMatchObject({ kind: 'move', item: 'player-1' });
});

function wide(half: number) {
  return [
    { x: -half, y: -150 },
    { x: half, y: -150 },
    { x: half, y: 150 },
    { x: -half, y: 150 },
  ];
}
