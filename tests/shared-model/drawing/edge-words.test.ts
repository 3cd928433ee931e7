/** What warns of an edge is read whole, whatever stands at it. */

import { describe, expect, it } from 'vitest';
import { textBox } from '#model/drawing/bounds.ts';
import { aDocument, aPiano, aPlatform } from '../../helpers/build.ts';
import { boxOf, groupsOf, overlaps, roughMeasure, textsIn } from './drawings.ts';
import { plotRequest, sheetsOf } from './plot-request.ts';

describe('the words at an open edge', () => {
  it.each([-3000, -1800, -1000, 0, 1200])('lie clear of a piano over it, %s mm off centre', (x) => {
    const room = aDocument(aPlatform({ openEdges: [0] }), aPiano({ id: 'piano-1', x, y: 300 }));
    const [plot] = sheetsOf(plotRequest(room)).sheets;
    const words = textsIn(plot?.children ?? []).filter(({ text }) => text.startsWith('OPEN EDGE'));
    expect(words.length).toBeGreaterThan(0);
    const [symbol] = groupsOf(plot?.children ?? [], 'piano-1').filter(({ description }) => description);
    const piano = boxOf(symbol ? [symbol] : []);
    for (const text of words) expect(overlaps(textBox(text, roughMeasure), piano)).toBe(false);
  });
});
