import { describe, expect, it } from 'vitest';
import { PALETTES } from '#model/drawing/palette.ts';
import { gap, heading, paragraph } from '#model/drawing/sheet/blocks.ts';
import { columnsOf, flow } from '#model/drawing/sheet/flow.ts';
import { tableBlocks } from '#model/drawing/sheet/table.ts';
import { boxOf, groupsIn, pathsIn, roughMeasure, textsIn } from './drawings.ts';

const tools = { palette: PALETTES.print, measure: roughMeasure };
const body = { x: 20, y: 10, width: 180, height: 100 };

const table = (rows: number, title = '') =>
  tableBlocks(
    {
      columns: [
        { title: 'Mark', parts: 1, bold: true },
        { title: 'What', parts: 3 },
      ],
      rows: Array.from({ length: rows }, (_, row) => [`S${row + 1}`, 'Orchestral stand']),
    },
    body.width,
    tools,
    title,
  );

describe('flow', () => {
  it('repeats the header of a table on every page it goes on on, and loses no row', () => {
    const pages = flow(table(60), body);
    expect(pages.length).toBeGreaterThan(2);
    for (const page of pages) {
      expect(textsIn(page).filter(({ text }) => text === 'Mark')).toHaveLength(1);
      expect(groupsIn(page).filter(({ role }) => role === 'table')).toHaveLength(1);
      const box = boxOf(page);
      expect(box.y + box.height).toBeLessThanOrEqual(body.y + body.height + 0.2);
    }
    const marks = pages
      .flatMap((page) => textsIn(page).map(({ text }) => text))
      .filter((text) => /^S\d/.test(text));
    expect(marks).toEqual(Array.from({ length: 60 }, (_, row) => `S${row + 1}`));
  });

  it('never leaves a heading alone at the foot of a page', () => {
    for (let above = 60; above < 100; above += 2) {
      const pages = flow([gap(above), heading('Marks', body.width, tools), ...table(5)], body);
      const page = pages.find((each) => textsIn(each).some(({ text }) => text === 'Marks'));
      expect(textsIn(page ?? []).map(({ text }) => text)).toContain('S1');
    }
  });

  it('keeps a table together that a page can hold', () => {
    for (let above = 0; above < 100; above += 3) {
      const pages = flow([gap(above), heading('Marks', body.width, tools), ...table(9)], body);
      const withRows = pages.filter((page) => textsIn(page).some(({ text }) => /^S\d/.test(text)));
      expect(withRows).toHaveLength(1);
      expect(textsIn(withRows[0] ?? []).map(({ text }) => text)).toContain('Marks');
    }
  });

  it('leaves at least three rows of a longer one on each page, under its title', () => {
    for (let rows = 16; rows < 60; rows++) {
      for (const above of [0, 30, 60, 80]) {
        const blocks = [paragraph('x', body.width, tools), gap(above), ...table(rows, 'Marks')];
        const pages = flow(blocks, body).map((page) => textsIn(page).map(({ text }) => text));
        const counts = pages.map((texts) => texts.filter((text) => /^S\d/.test(text)).length);
        expect(counts.reduce((sum, count) => sum + count, 0)).toBe(rows);
        const pieces = pages.filter((_, page) => counts[page] !== 0);
        expect(pieces.length).toBeGreaterThan(1);
        for (const count of counts.filter((each) => each > 0)) expect(count).toBeGreaterThanOrEqual(3);
        for (const texts of pieces.slice(1)) expect(texts[0]).toBe('Marks, continued');
      }
    }
  });

  it('opens no page for air alone', () => {
    expect(flow([...table(10), gap(80), gap(30)], body)).toHaveLength(1);
  });

  it('sets two columns side by side on a broad page, in reading order', () => {
    const broad = { ...body, width: 400 };
    const [left, right] = columnsOf(broad);
    if (!left || !right) throw new Error('400 mm carry two columns');
    const [first, second] = [paragraph('first', left.width, tools), paragraph('second', left.width, tools)];
    const [page] = flow([first, gap(92), second], broad);
    const [a, b] = textsIn(page ?? []);
    expect(a).toMatchObject({ text: 'first', x: left.x });
    expect(b).toMatchObject({ text: 'second', x: right.x });
  });

  it('paints nothing over the rules between rows where the tint is as white as the paper', () => {
    const [page] = flow(table(4), body);
    expect(PALETTES.print.tableTint).toBe(PALETTES.print.paper);
    expect(pathsIn(page ?? []).filter(({ fill }) => fill !== undefined)).toEqual([]);
  });

  it('fills the columns of a broad page alike rather than leave one empty', () => {
    const broad = { ...body, width: 400 };
    const [left, right] = columnsOf(broad);
    if (!left || !right) throw new Error('400 mm carry two columns');
    const pages = flow(table(14), broad);
    expect(pages).toHaveLength(1);
    const marks = textsIn(pages[0] ?? []).filter(({ text }) => /^S\d/.test(text));
    expect(marks.map(({ text }) => text)).toEqual(Array.from({ length: 14 }, (_, row) => `S${row + 1}`));
    const inRight = marks.filter(({ x }) => x >= right.x).length;
    expect(inRight).toBeGreaterThanOrEqual(5);
    expect(inRight).toBeLessThanOrEqual(8);
  });

  it('gives every figure a line of its own in a narrow column', () => {
    const figures = [`2'-11 1/4"`, `11'-10 3/4" SR`, '12000 US'];
    const narrow = tableBlocks(
      {
        columns: [
          { title: 'Lip', parts: 1 },
          { title: 'What', parts: 30 },
        ],
        rows: figures.map((figure) => [figure, 'Orchestral stand']),
      },
      100,
      tools,
    );
    const texts = textsIn(flow(narrow, body).flat()).map(({ text }) => text);
    for (const figure of figures) expect(texts).toContain(figure);
  });

  it('makes no table of nothing', () => {
    expect(table(0)).toEqual([]);
    expect(flow([], body)).toEqual([]);
  });
});
