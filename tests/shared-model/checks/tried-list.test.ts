/** What is tried for a printed list: the same as in the window, and nothing where it would take too long. */

import { describe, expect, it } from 'vitest';
import { checkSetup } from '#model/checks/check-setup.ts';
import { isTried, suggestRemedies } from '#model/checks/remedy.ts';
import { triedList } from '#model/checks/tried-list.ts';
import { asId } from '#model/document/ids.ts';
import { aDocument, aPlayer, aSeatBlock, aStand, SETUP } from '../../helpers/build.ts';
import { demoConcert } from './remedies/demo.ts';

describe('a list', () => {
  it('tells of the demo’s trio what the window tells', () => {
    const document = demoConcert();
    const trio = asId<'setup'>('setup-2');
    const report = checkSetup(document, trio);
    const tried = triedList(document, trio, report);
    const told = report.findings.filter(({ code }) => isTried(code));
    expect(told.length).toBeGreaterThan(5);
    for (const finding of told) expect(tried(finding)).toEqual(suggestRemedies(document, trio, finding));
  });

  it('tries nothing before a house that is too large for its players', () => {
    const large = aDocument(
      aPlayer({ y: 300 }),
      aPlayer({ id: 'player-2', x: 1500 }),
      aSeatBlock({ rows: 34, seatsPerRow: 30 }),
    );
    const report = checkSetup(large, SETUP);
    expect(report.sight.scene.seats.length * report.sight.scene.targets.length).toBeGreaterThan(2000);
    const edge = report.findings.find(({ code }) => code === 'room.edge');
    expect(edge && triedList(large, SETUP, report)(edge)).toBeNull();
  });

  it('tries against the forty gravest and no more', () => {
    const stands = Array.from({ length: 45 }, (_, index) =>
      aStand({ id: `stand-${index + 1}`, x: -3900 + 175 * index, y: 300 }),
    );
    const document = aDocument(...stands);
    const report = checkSetup(document, SETUP);
    const fails = report.findings.filter(({ severity }) => severity === 'fail').length;
    const last = report.findings.filter(({ severity }) => severity !== 'fail').at(-1);
    expect(fails).toBeGreaterThan(0);
    expect(report.findings.length).toBeGreaterThan(40);
    expect(last && triedList(document, SETUP, report)(last)).toBeNull();
  });
});
