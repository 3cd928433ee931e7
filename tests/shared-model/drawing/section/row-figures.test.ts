/** The rows as they are told beside the section: all of them, also where a drawing has no room for their figures. */

import { describe, expect, test } from 'vitest';
import { riserForC } from '#model/checks/sightlines/c-value.ts';
import { asId } from '#model/document/ids.ts';
import { sectionDrawing, sectionRows } from '#model/drawing/section.ts';
import { aDocument, aPlayer, aSeatBlock } from '../../../helpers/build.ts';
import { textsIn } from '../drawings.ts';
import { sectionOf } from './section-request.ts';

const stalls = aSeatBlock({ id: 'stalls', name: 'Stalls', rows: 4, y: -5000, riser: 100 });
const balcony = aSeatBlock({
  id: 'upper',
  name: 'Balcony',
  rows: 3,
  y: -8600,
  floor: 3300,
  riser: 350,
  firstRow: 'AA',
});
const box = aSeatBlock({ id: 'wing', name: 'Box', x: 7000, y: 1000, facing: 270, rows: 2, firstRow: 'X' });
const house = aDocument(stalls, balcony, box, aPlayer({ x: 0, y: 2000 }));

describe('rows told beside the section', () => {
  test('are all the rows of all blocks, those on the cut first', () => {
    const blocks = sectionRows(sectionOf(house), 'metric');
    expect(blocks.map(({ name, drawn, rows }) => [name, drawn, rows.map(({ row }) => row)])).toEqual([
      ['Stalls', true, ['A', 'B', 'C', 'D']],
      ['Balcony', true, ['AA', 'AB', 'AC']],
      ['Box', false, ['X', 'Y']],
    ]);
  });

  test('have the distance of their own eyes to the edge, and C as by hand', () => {
    const [{ rows } = { rows: [] }] = sectionRows(sectionOf(house), 'metric');
    // Rows 900 mm deep from 5 m on, eyes 1200 over floors that rise by 100; the edge is 600 over the house floor.
    expect(rows.map(({ away }) => away)).toEqual(['5000', '5900', '6800', '7700']);
    // C = D (N + R) / (D + T) − R with D 5000, N 100, R 600, T 900 (model of the sightline handbooks).
    const byHand = (5000 * (100 + 600)) / (5000 + 900) - 600;
    expect(rows[1]?.overNext).toBe(`−${Math.abs(Math.round(byHand))}`);
    expect(rows[1]?.needed[1]).toBe(
      String(Math.round(riserForC({ distance: 5000, height: 600, rowDepth: 900 }, 90))),
    );
    expect(rows[0]).toMatchObject({ overNext: '', needed: ['', '', ''], sees: 'nobody in front' });
  });

  test('follow what is looked at, and are none when he is not there', () => {
    const focus = { kind: 'player', player: asId<'player'>('player-1') } as const;
    const [first] = sectionRows(sectionOf(house, { focus }), 'metric');
    expect(first?.rows[0]?.away).toBe('7000');
    const gone = { kind: 'player', player: asId<'player'>('player-9') } as const;
    expect(sectionRows(sectionOf(house, { focus: gone }), 'metric')).toEqual([]);
  });

  test('blocks that one line stands for are told once', () => {
    const pair = aDocument(
      aSeatBlock({ id: 'stalls', name: 'Left', x: -4000 }),
      aSeatBlock({ id: 'upper', name: 'Right', x: 4000 }),
    );
    expect(sectionRows(sectionOf(pair), 'metric').map(({ name }) => name)).toEqual(['Left · Right']);
  });

  test('leave the drawing with the names of the rows alone', () => {
    const told = (figuresBeside: boolean): string[] =>
      textsIn(sectionDrawing(sectionOf(house, { figuresBeside }))).map(({ text }) => text);
    expect(told(false)).toContain('C, mm');
    expect(told(true)).not.toContain('C, mm');
    expect(told(true)).toEqual(expect.arrayContaining(['Stalls', 'A', 'D', 'Balcony', 'AA']));
  });
});
