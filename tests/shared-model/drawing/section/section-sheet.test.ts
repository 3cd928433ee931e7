/** The sections in the plot: after the seat map, true to scale, with their key, and the table of the rows. */

import { describe, expect, test } from 'vitest';
import { rakeFigures } from '#model/checks/sightlines/rake.ts';
import type { Sheet } from '#model/drawing/primitives.ts';
import { rakeTable } from '#model/drawing/sheet/section-table.ts';
import { aDocument, aPlatform, aSeatBlock, SETUP } from '../../../helpers/build.ts';
import { boxOf, groupsIn, overlappingTexts, roughMeasure, textsIn } from '../drawings.ts';
import { inventedReport, plotRequest, sheetsOf } from '../plot-request.ts';
import { houseWithPlayers, PLAYERS } from './section-request.ts';

const typesOf = (sheets: readonly Sheet[]): string[] =>
  sheets.map(({ title }) => title.replace('Test concert: ', ''));

const words = ({ children }: Sheet): string =>
  textsIn(children)
    .map(({ text }) => text)
    .join(' ');

function sectionIn(sheets: readonly Sheet[]): Sheet {
  const found = sheets.find(({ title }) => title.endsWith('sections'));
  if (!found) throw new Error('no sections');
  return found;
}

const captions = (sheet: Sheet): string[] =>
  groupsIn(sheet.children).flatMap(({ description }) =>
    description?.startsWith('Section at') ? [description] : [],
  );

describe('in the plot', () => {
  const document = aDocument(...PLAYERS, aSeatBlock({ riser: 90, rows: 8 }));

  test('come after the seat map', () => {
    const { sheets, notes } = sheetsOf(plotRequest(document, { report: inventedReport(document) }));
    expect(typesOf(sheets).slice(0, 3)).toEqual(['stage plot', 'seat map', 'sections']);
    expect(notes.join()).not.toContain('section');
  });

  test('show the edge first, and below it the player whom fewest places see well', () => {
    const report = inventedReport(document);
    const figures = report.sight.figures.map((figure) =>
      figure.player === 'player-2' ? { ...figure, seenWell: 0.1 } : figure,
    );
    const asked = plotRequest(document, { report: { ...report, sight: { ...report.sight, figures } } });
    const shown = captions(sectionIn(sheetsOf(asked).sheets));
    expect(shown).toHaveLength(2);
    expect(shown[0]).toContain('to the front edge of the platform');
    expect(shown[1]).toContain('Cello (player 2)');
  });

  test('name their scale, and the sources of the words for C', () => {
    const sheet = sectionIn(sheetsOf(plotRequest(document)).sheets);
    expect(words(sheet)).toContain('SCALE 1:100');
    expect(words(sheet)).toMatch(/Shepherd.*University of Bath.*FIFA/);
    expect(words(sheet)).toContain('no rule for a concert hall');
  });

  test('a house without rows has none; one that fits nowhere is said to', () => {
    const rowless = {
      records: new Map([...document.records].filter(([, { kind }]) => kind !== 'seatBlock')),
    };
    const { sheets, notes } = sheetsOf(plotRequest(rowless));
    expect(typesOf(sheets)).not.toContain('sections');
    expect(notes).toEqual([]);
    const endless = aDocument(...PLAYERS, aSeatBlock({ y: -300_000 }));
    expect(sheetsOf(plotRequest(endless)).notes.join()).toContain('no section');
  });

  test.each(['A4', 'A3', 'Letter', 'Tabloid'] as const)(
    'on %s nothing lies over a text or outside the frame',
    (paper) => {
      for (const venue of ['small-concert-hall', 'church-chancel', 'school-hall', 'studio']) {
        const house = houseWithPlayers(venue);
        const asked = plotRequest(house, {
          report: inventedReport(house),
          options: { paper, orientation: 'auto', scale: null },
        });
        const sheet = sectionIn(sheetsOf(asked).sheets);
        expect(overlappingTexts(sheet.children, roughMeasure)).toEqual([]);
        const box = boxOf(sheet.children);
        // ISO 5457: borders of 20 mm on the left and 10 mm elsewhere, and half the frame's line.
        expect(box.x).toBeGreaterThan(19);
        expect(box.x + box.width).toBeLessThan(sheet.width - 9);
        expect(box.y + box.height).toBeLessThan(sheet.height - 9);
      }
    },
  );

  test('balconies are where they are, not moved behind the stalls as on the plan', () => {
    const hall = houseWithPlayers('small-concert-hall');
    const sheet = sectionIn(sheetsOf(plotRequest(hall)).sheets);
    expect(words(sheet)).toContain('Balcony');
    expect(words(sheet)).not.toContain('drawn behind');
    const [stalls, balcony] = ['stalls', 'balcony'].map((id) =>
      boxOf(
        groupsIn(sheet.children).filter(
          ({ subject, description }) => subject === id && description?.includes('from the side'),
        ),
      ),
    );
    // 4200 mm higher, and over the last rows.
    expect(balcony && stalls && balcony.y + balcony.height < stalls.y).toBe(true);
    expect(balcony && stalls && balcony.x < stalls.x + stalls.width).toBe(true);
  });

  test('the same request gives the same sheet', () => {
    const asked = plotRequest(document);
    expect(sectionIn(sheetsOf(asked).sheets)).toEqual(sectionIn(sheetsOf(asked).sheets));
  });
});

describe('the table of the rows', () => {
  test('has D, R, N, T and C of every row that looks over another', () => {
    // 8000, 620, 150, 900: C 72.135 over one row, 131.02 over two (exact arithmetic on the published formula).
    const document = aDocument(
      aPlatform({ height: 580 }),
      aSeatBlock({ y: -8000, rows: 3, riser: 150, rowDepth: 900, eyeHeight: 1200 }),
    );
    const { rows } = rakeTable(plotRequest(document));
    expect(rows.map((cells) => cells.slice(0, 8))).toEqual([
      ['B', '8000', '620', '150', '900', '72', 'A', '72'],
      ['C', '8900', '770', '150', '900', '66', 'B', '66'],
    ]);
    // N for C = (R + C)(D + T) / D - R with D 8000, R 620, T 900: 136.5, 169.875, 203.25.
    expect(rows[0]?.slice(8)).toEqual(['137', '170', '203', 'between the heads in front']);
  });

  test('names the blocks where there are several, and what the last step to a staggered row would have to be', () => {
    const document = aDocument(
      aSeatBlock({ staggered: true, riser: 100, rows: 3 }),
      aSeatBlock({ id: 'rear', name: 'Circle', firstRow: '1', y: -9000, rows: 2 }),
    );
    const { rows } = rakeTable(plotRequest(document));
    expect(rows.map(([row]) => row)).toEqual(['Circle 1', 'Circle 2', 'Stalls B', 'Stalls C']);
    const third = rakeFigures(document, SETUP, null).find(({ block }) => block === 'stalls')?.rows[2];
    // C stands over A, two steps of 100 before it; the first of them stays.
    expect(rows[3]?.[6]).toBe('A');
    expect(rows[3]?.[10]).toBe(String(Math.round((third?.inLine?.needed[2]?.riser ?? NaN) - 100)));
  });

  test('never contradicts itself: a step as high as asked for is a clearance as large, over the same head', () => {
    const document = aDocument(
      aSeatBlock({ staggered: true, rows: 5, riser: 20 }),
      aSeatBlock({ id: 'rear', name: 'Rear', firstRow: 'F', y: -9300, rows: 4, riser: 160, staggered: true }),
    );
    const { rows } = rakeTable(plotRequest(document));
    expect(rows).toHaveLength(8);
    for (const cells of rows.filter((row) => row[6] !== '')) {
      const [step, clearance] = [Number(cells[3]), Number(cells[7]?.replace('−', '-'))];
      [60, 90, 120].forEach((wanted, index) =>
        expect(`${cells[0]} ${step >= Number(cells[8 + index])}`).toBe(`${cells[0]} ${clearance >= wanted}`),
      );
    }
  });

  test('is printed', () => {
    const sheets = sheetsOf(plotRequest(aDocument(aSeatBlock({ riser: 100 })))).sheets;
    expect(sheets.map(words).join()).toContain('N for 120 mm');
  });
});
