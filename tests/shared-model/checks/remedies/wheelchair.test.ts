import { describe, expect, it } from 'vitest';
import { leastRemedies } from '#model/checks/remedy.ts';
import { routeResults } from '#model/checks/room/routes.ts';
import { wheelchairFindings } from '#model/checks/room/wheelchair-findings.ts';
import type { Finding } from '#model/checks/finding.ts';
import type { Document } from '#model/document/document.ts';
import { aBox, aDocument, aDoor, aPlayer, aShape, aTable, SETUP } from '../../../helpers/build.ts';
import { carried, weaker } from './trials.ts';

const USER = aPlayer({ y: 1500, chair: { model: 'wheelchair', height: 485 }, mobility: 'wheelchair' });
const DOOR = aDoor({ offset: 3000, width: 2000 });

const findingsOf = (document: Document): Finding[] => wheelchairFindings(document, SETUP);

/** Tried again from nothing: the remedy clears, and one step less of it does not. */
function expectRemedy(document: Document, code: Finding['code']): void {
  const finding = findingsOf(document).find((found) => found.code === code);
  if (!finding) throw new Error(`no ${code}`);
  const [remedy] = leastRemedies(document, SETUP, finding);
  if (!remedy) throw new Error('no remedy');
  expect(findingsOf(carried(document, remedy))).toEqual([]);
  expect(remedy.after).toBeGreaterThanOrEqual(finding.required - 1);
  for (const less of weaker(remedy)) {
    expect(findingsOf(carried(document, less)).map((found) => found.code)).toContain(code);
  }
}

describe('what helps a wheelchair', () => {
  it('out by a way that a table makes narrow: the table moved as little as will do', () => {
    const gate = aBox('shape-1', [-4000, -400], [3000, 3100]);
    const document = aDocument(
      DOOR,
      USER,
      gate,
      aTable({ x: 740, y: 3050 }),
      aBox('shape-2', [1400, 4000], [3000, 3100]),
    );
    expectRemedy(document, 'room.wheelchairRoute');
  });

  it('to turn: what stands there moved out of the circle', () => {
    const walls = [aBox('shape-1', [-850, -750], [100, 2900]), aBox('shape-2', [750, 850], [100, 2900])];
    const hemmed = aDocument(DOOR, USER, ...walls);
    // Between walls of the building nothing helps.
    const [finding] = findingsOf(hemmed);
    if (!finding) throw new Error('room enough');
    expect(leastRemedies(hemmed, SETUP, finding)).toEqual([]);
    const [left] = walls;
    if (!left) throw new Error('no wall');
    const withCases = aDocument(DOOR, USER, left, aShape({ ...walls[1], id: 'shape-2', fixed: false }));
    expectRemedy(withCases, 'room.turning');
  });

  it('is nothing when the way is there', () => {
    expect(findingsOf(aDocument(DOOR, USER))).toEqual([]);
    expect(routeResults(aDocument(DOOR, USER), SETUP)[0]?.exit).toBe('door-1');
  });
});
