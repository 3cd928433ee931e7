/** Remedies for what is in the way, over an edge or near it; distances worked by hand from the outlines. */

import { describe, expect, it } from 'vitest';
import type { Finding, Remedy } from '#model/checks/finding.ts';
import { standModel } from '#model/catalogue/stands.ts';
import type { Document } from '#model/document/document.ts';
import { aDocument, aPiano, aPlayer, aRiser, aShape, aStand, aTable, SETUP } from '../../../helpers/build.ts';
import { carried, findingsIn, found, isLeast, isThere, remediesFor, troubles } from './trials.ts';

const FOOT = standModel('orchestral')?.baseRadius ?? NaN;

/** Cleared, nothing worse, and not cleared (or at the price of something else) by one step less. */
function expectGood(document: Document, finding: Finding, remedy: Remedy): void {
  const before = findingsIn(document);
  const after = findingsIn(carried(document, remedy));
  expect(isThere(after, finding)).toBe(false);
  expect(troubles(before, after)).toEqual([]);
  expect(isLeast({ document, setup: SETUP, before, finding, remedy })).toBe(true);
}

function only(document: Document, code: Finding['code'], ...subjects: string[]): Remedy {
  const remedies = remediesFor(document, code, ...subjects);
  const [remedy] = remedies;
  expect(remedies).toHaveLength(1);
  if (!remedy) throw new Error('none');
  expectGood(document, found(document, code, ...subjects), remedy);
  return remedy;
}

describe('distances', () => {
  it('a stand 300 mm from the front edge, its foot 250 mm of that, goes 550 mm upstage to keep 600', () => {
    const document = aDocument(aStand({ y: 300 }));
    expect(found(document, 'room.edge').measured).toBeCloseTo(300 - FOOT, 6);
    expect(only(document, 'room.edge')).toEqual({
      kind: 'move',
      item: 'stand-1',
      dx: 0,
      dy: 600 - (300 - FOOT),
      after: 600,
    });
  });

  it('a stand whose foot is 350 mm over the side comes back by that', () => {
    const document = aDocument(aStand({ x: 4100 }));
    expect(only(document, 'room.offPlatform')).toMatchObject({
      item: 'stand-1',
      dx: -100 - FOOT,
      dy: 0,
      after: 0,
    });
  });

  it('a table 300 mm before a door leaves a route of 915: 620 mm downstage in steps of 10', () => {
    const document = aDocument(aTable({ x: 3300, y: 4500 }));
    expect(found(document, 'room.door').measured).toBeCloseTo(300, 6);
    expect(only(document, 'room.door')).toEqual({
      kind: 'move',
      item: 'table-1',
      dx: 0,
      dy: -620,
      after: 920,
    });
  });

  it('two tables that overlap by 100 mm are parted by 100', () => {
    const document = aDocument(aTable({ y: 2000 }), aTable({ id: 'table-2', y: 2300 }));
    expect(found(document, 'room.overlap').measured).toBeCloseTo(-100, 6);
    const remedy = only(document, 'room.overlap');
    expect(remedy).toMatchObject({ dx: 0, after: 0 });
    expect(remedy.kind === 'move' && Math.abs(remedy.dy)).toBe(100);
  });

  it('elbows get all the room they want', () => {
    const document = aDocument(aPlayer({ x: 0 }), aPlayer({ id: 'player-2', x: 480 }));
    const remedy = only(document, 'room.elbow');
    expect(remedy.after).toBe(found(document, 'room.elbow').required);
  });
});

describe('what is moved', () => {
  const moved = (...records: Parameters<typeof aDocument>): string => {
    const remedy = only(aDocument(...records), 'room.overlap');
    return remedy.kind === 'move' ? remedy.item : remedy.kind;
  };

  it('the lighter of two things', () => {
    expect(moved(aPiano({ y: 3000 }), aTable({ y: 3000, x: 900 }))).toBe('table-1');
    expect(moved(aPlayer(), aTable({ x: 350 }))).toBe('table-1');
  });

  it('a piano only when the other is part of the building, and the building never', () => {
    expect(moved(aPiano({ y: 3000 }), aShape({ y: 3000, x: 850 }))).toBe('piano-1');
    const within = aDocument(aShape({ y: 3000 }), aPiano({ y: 3000 }));
    expect(remediesFor(within, 'room.overlap')).toEqual([]);
  });

  it('levels stay: they carry other things', () => {
    const document = aDocument(aRiser({ x: 3500 }));
    expect(remediesFor(document, 'room.offPlatform')).toEqual([]);
  });
});

it('the shortest way is not taken where something stands in it', () => {
  const bar = (y: number, id: string) =>
    aShape({
      id,
      y,
      x: 0,
      outline: [
        { x: -900, y: -50 },
        { x: 900, y: -50 },
        { x: 900, y: 50 },
        { x: -900, y: 50 },
      ],
    });
  const pair = [aTable({ y: 2000 }), aTable({ id: 'table-2', x: 300, y: 2300 })];
  const free = only(aDocument(...pair), 'room.overlap');
  expect(free).toMatchObject({ dx: 0 });
  const between = aDocument(...pair, bar(1700, 'shape-1'), bar(2600, 'shape-2'));
  const remedy = only(between, 'room.overlap');
  expect(remedy.kind === 'move' && Math.abs(remedy.dx)).toBeGreaterThanOrEqual(300);
});
