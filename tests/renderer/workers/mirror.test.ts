import { documentOf } from '#model/document/document.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changesBetween, touchesHouse, withChanges } from '../../../renderer/workers/mirror.ts';
import { aPlatform, aSeatBlock, aStand } from '../../helpers/build.ts';

const stands = fc.uniqueArray(fc.record({ n: fc.integer({ min: 1, max: 9 }), x: fc.integer() }), {
  selector: ({ n }) => n,
});

const recordsOf = (list: { n: number; x: number }[]) =>
  documentOf(list.map(({ n, x }) => aStand({ id: `stand-${n}`, x }))).records;

describe('mirror', () => {
  it('carries any document over to any other', () => {
    fc.assert(
      fc.property(stands, stands, (before, after) => {
        const [from, to] = [recordsOf(before), recordsOf(after)];
        const copied = withChanges(from, changesBetween(from, to));
        expect(new Map([...copied].sort())).toEqual(new Map([...to].sort()));
      }),
    );
  });

  it('sends nothing that is the very same record', () => {
    const records = recordsOf([{ n: 1, x: 0 }]);
    expect(changesBetween(records, new Map(records))).toEqual({ put: [], drop: [] });
  });

  it('knows when the house may have moved', () => {
    const { records } = documentOf([aPlatform(), aSeatBlock(), aStand()]);
    expect(touchesHouse(records, { put: [aStand({ x: 5 })], drop: [] })).toBe(false);
    expect(touchesHouse(records, { put: [aPlatform({ height: 900 })], drop: [] })).toBe(true);
    expect(touchesHouse(records, { put: [], drop: ['stalls'] })).toBe(true);
    expect(touchesHouse(records, { put: [], drop: ['stand-1'] })).toBe(false);
  });
});
