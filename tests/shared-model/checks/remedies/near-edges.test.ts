/** Who is near an edge is got away from it, also with his stand, and at the price of a slightly farther glance. */

import { describe, expect, it } from 'vitest';
import type { Finding, Remedy } from '#model/checks/finding.ts';
import { leastRemedies } from '#model/checks/remedy.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { isPlaced } from '#model/document/records.ts';
import { demoConcert } from './demo.ts';
import { carried, findingsIn, isLeast, isThere, troubles } from './trials.ts';

const TRIO = asId<'setup'>('setup-2');
const FRONT = ['player-3', 'stand-2', 'player-4', 'stand-3'];

/** The demo's trio with the two who sit in front, and their stands, shifted together. */
function shifted(dx: number, dy: number): Document {
  return documentOf(
    [...demoConcert().records.values()].map((record) =>
      FRONT.includes(record.id) && isPlaced(record)
        ? { ...record, x: record.x + dx, y: record.y + dy }
        : record,
    ),
  );
}

interface Mended {
  readonly before: readonly Finding[];
  readonly after: readonly Finding[];
  readonly remedy: Remedy;
}

/** The only remedy for what is near the platform's edge: it clears that, and one step less does not do. */
function mended(document: Document, item: string): Mended {
  const before = findingsIn(document, TRIO);
  const finding = before.find(({ code, subjects }) => code === 'room.edge' && subjects[0] === item);
  if (!finding) throw new Error(`${item} is not near an edge`);
  const [remedy, ...others] = leastRemedies(document, TRIO, finding);
  if (!remedy) throw new Error('no remedy');
  expect(others).toEqual([]);
  const after = findingsIn(carried(document, remedy), TRIO);
  expect(isThere(after, finding)).toBe(false);
  expect(isLeast({ document, setup: TRIO, before, finding, remedy })).toBe(true);
  return { before, after, remedy };
}

function glancesFarther({ before, after }: Mended): number[] {
  const turns = (findings: readonly Finding[]) =>
    new Map(
      findings.flatMap(({ code, subjects, measured }) =>
        code === 'facing.turn' ? [[subjects.join(' '), measured] as const] : [],
      ),
    );
  const then = turns(before);
  return [...turns(after)].map(([pair, angle]) => angle - (then.get(pair) ?? 0));
}

describe('somebody near an edge', () => {
  it('comes away from it although his glance, already far, goes a little farther', () => {
    const one = mended(shifted(200, -50), 'player-4');
    expect(one.remedy).toMatchObject({ kind: 'move', item: 'player-4', dx: 0, dy: 100 });
    const farthest = Math.max(...glancesFarther(one));
    // More than is noticed, less than what safety may cost.
    expect(farthest).toBeGreaterThan(1);
    expect(farthest).toBeLessThan(5);
    // And nothing else has become worse.
    expect(troubles(one.before, one.after).filter((key) => !key.startsWith('facing.turn'))).toEqual([]);
  });

  it('takes his stand along where alone he would leave it', () => {
    const { remedy } = mended(shifted(0, -100), 'player-4');
    expect(remedy).toMatchObject({ kind: 'moveTogether', items: ['player-4', 'stand-3'], dx: 0, dy: 150 });
  });
});

it('a stand that cannot go to him takes its only reader along', () => {
  const { remedy } = mended(shifted(0, -100), 'stand-3');
  expect(remedy).toMatchObject({ kind: 'moveTogether', items: ['player-4', 'stand-3'], after: 600 });
});
