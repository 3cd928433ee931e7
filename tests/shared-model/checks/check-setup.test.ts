import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkSetup } from '#model/checks/check-setup.ts';
import type { Severity } from '#model/checks/finding.ts';
import { documentOf, setupsOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { readDocument } from '#model/file-format/read.ts';
import { aDocument, aPlatform, aPlayer, aStand, aTable, SETUP } from '../../helpers/build.ts';

const demo = (): Document => {
  const file = new URL('../../../assets/demo-concert.standlines', import.meta.url);
  const read = readDocument(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.problem.message);
  return read.document;
};

const CROWDED = aDocument(
  aPlatform({ openEdges: [0, 1] }),
  ...Array.from({ length: 12 }, (_, n) =>
    aPlayer({ id: `player-${n + 1}`, x: n * 300 - 1800, y: 300 + n * 90 }),
  ),
  aStand({ y: 400 }),
  aTable({ x: 100, y: 600 }),
);

describe('the report', () => {
  test('lists fails first, then cautions, then notes, and within them by family, code and subjects', () => {
    const { findings } = checkSetup(CROWDED, SETUP);
    const severities = findings.map(({ severity }) => severity);
    const rank: readonly Severity[] = ['fail', 'caution', 'note'];
    expect(severities).toEqual([...severities].sort((a, b) => rank.indexOf(a) - rank.indexOf(b)));
    const keys = findings.map(({ severity, code, subjects }) => [severity, code, ...subjects].join(' '));
    expect(new Set(keys).size).toBe(keys.length);
    expect(new Set(severities)).toContain('fail');
    expect(new Set(severities)).toContain('caution');
  });

  test('does not depend on the order in which the records were made', () => {
    const reversed = documentOf([...CROWDED.records.values()].reverse());
    expect(checkSetup(reversed, SETUP).findings).toEqual(checkSetup(CROWDED, SETUP).findings);
  });

  test('is the same twice, and leaves the document alone', () => {
    const before = JSON.stringify([...CROWDED.records]);
    expect(checkSetup(CROWDED, SETUP)).toEqual(checkSetup(CROWDED, SETUP));
    expect(JSON.stringify([...CROWDED.records])).toBe(before);
  });

  test('has a figure, a way out and the grips for every player of its own setup only', () => {
    const other = asId<'setup'>('setup-2');
    const document = aDocument(aPlayer(), aPlayer({ id: 'player-2', x: 1500, setup: other }));
    const report = checkSetup(document, SETUP);
    expect(report.setup).toBe(SETUP);
    expect(report.sight.figures.map(({ player }) => player)).toEqual(['player-1']);
    expect(report.routes.map(({ player }) => player)).toEqual(['player-1']);
  });

  test('of an empty platform finds nothing', () => {
    expect(checkSetup(aDocument(), SETUP).findings).toEqual([]);
  });
});

describe('the demo concert', () => {
  const document = demo();
  const fails = setupsOf(document).map(({ id }) =>
    checkSetup(document, id).findings.filter(({ severity }) => severity === 'fail'),
  );

  test('has three setups that are good and one, a variant, with real faults of several kinds', () => {
    expect(fails.map((found) => found.length > 0)).toEqual([false, true, false, false]);
    expect(new Set(fails[1]?.map(({ code }) => code)).size).toBeGreaterThanOrEqual(2);
  });
});
