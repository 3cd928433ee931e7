import { describe, expect, it } from 'vitest';
import {
  chosenEntries,
  countPack,
  entryPages,
  packEntries,
  packSheets,
  usualEntries,
  type CountedPack,
  type PackRequest,
} from '#model/drawing/pack/pack.ts';
import { PAPERS, paperNamed } from '#model/drawing/papers.ts';
import { overlappingTexts, roughMeasure, textsIn } from '../drawings.ts';
import { sixty } from '../sixty-items.ts';
import { EVENING, packOf } from './pack-request.ts';

function counted(request: PackRequest): CountedPack {
  const steps = countPack(request);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const sheetsOf = (request: PackRequest) => [...packSheets(request, counted(request))];

describe('packEntries', () => {
  it('names everything by kind and place in the programme, versions with a letter', () => {
    const names = packEntries(EVENING).map(({ name }) => name);
    expect(names).toEqual([
      ...['cover', 'changeover-1'],
      ...['plot-1', 'marks-1', 'floor-1', 'section-1', 'seats-1', 'seats-1-p1', 'seats-1-p2'],
      ...['view-1-1', 'figures-1', 'changeover-2', 'plot-2', 'marks-2', 'floor-2', 'section-2'],
      ...['seats-2', 'seats-2-p1', 'view-2-1', 'figures-2'],
      ...['plot-2b', 'marks-2b', 'floor-2b', 'section-2b', 'seats-2b', 'view-2b-1', 'figures-2b'],
      ...['changeover-end', 'inventory', 'cautions'],
    ]);
    expect(new Set(names).size).toBe(names.length);
  });

  it('leaves versions out of a pack unless they are chosen', () => {
    const usual = usualEntries(packEntries(EVENING)).map(({ name }) => name);
    expect(usual).not.toContain('plot-2b');
    expect(chosenEntries(EVENING, ['plot-2b'])).toMatchObject({ entries: [{ name: 'plot-2b' }] });
  });

  it('takes a kind for all of that kind, each once, in the order given', () => {
    const chosen = chosenEntries(EVENING, ['marks', 'plot-2', 'plot']);
    if ('unknown' in chosen) throw new Error(chosen.unknown);
    expect(chosen.entries.map(({ name }) => name)).toEqual(['marks-1', 'marks-2', 'plot-2', 'plot-1']);
    expect(chosenEntries(EVENING, ['plot', 'plots'])).toEqual({ unknown: 'plots' });
  });
});

describe('a pack', () => {
  it('has as many sheets as were counted, numbered one after the other', () => {
    const request = packOf(EVENING);
    const { sheets } = counted(request);
    const drawn = sheetsOf(request);
    expect(drawn.map(({ number }) => number)).toEqual(Array.from({ length: sheets }, (_, at) => at + 1));
    drawn.forEach(({ sheet, number }) => {
      const words = textsIn(sheet.children).map(({ text }) => text);
      expect(words).toContain(`${number} of ${sheets}`);
    });
  });

  it('says on every sheet what it is, of when, in which revision, scale, units and on which paper', () => {
    for (const { sheet, entry } of sheetsOf(packOf(EVENING))) {
      const words = textsIn(sheet.children).map(({ text }) => text);
      const piece = entry.setup === null ? 'Whole concert' : /-2/.test(entry.name) ? 'Second' : 'First';
      for (const said of ['Evening', piece, '14/03/2027', '20/02/2027', 'B', 'mm', 'A4'])
        expect(words, entry.name).toContain(said);
      expect(words.some((each) => /^SCALE 1:\d+$|^not to scale$/.test(each))).toBe(true);
      const isDrawing = ['plot', 'floor', 'section', 'seats'].includes(entry.kind);
      const hasBar = words.some((each) => each.startsWith('The whole bar must measure'));
      if (isDrawing && sheet.bookmark?.length !== 0) expect(hasBar, entry.name).toBe(true);
    }
  });

  it('lists every entry once under its piece', () => {
    const drawn = sheetsOf(packOf(EVENING));
    const marks = drawn.flatMap(({ sheet }) => (sheet.bookmark?.length ? [sheet.bookmark.join(' > ')] : []));
    expect(new Set(marks).size).toBe(marks.length);
    expect(marks).toContain('First > Stage plot');
    expect(marks).toContain('Inventory and power');
  });

  it('leads from the cover and the plot to the right sheets', () => {
    const request = packOf(EVENING);
    const first = new Map(counted(request).entries.map(({ entry, first: at }) => [entry.name, at]));
    const drawn = sheetsOf(request);
    const cover = textsIn(drawn[0]?.sheet.children ?? []).map(({ text }) => text);
    const at = cover.indexOf('Rehearsal floor');
    expect(cover[at - 1]).toBe(String(first.get('floor-1')));
    for (const said of ['A. Nowak', 'stage', '030 1234', 'First', 'Second']) expect(cover).toContain(said);
    const plot = drawn.find(({ entry }) => entry.name === 'plot-2');
    const words = textsIn(plot?.sheet.children ?? [])
      .map(({ text }) => text)
      .join(' ');
    expect(words).toContain(`All positions: sheet ${first.get('marks-2')}, Marks.`);
  });

  it('draws nothing before it is asked for', () => {
    let checks = 0;
    const request = packOf(EVENING, {
      checked: (setup) => {
        checks += 1;
        return packOf(EVENING).checked(setup);
      },
    });
    const [entry] = packEntries(EVENING).filter(({ name }) => name === 'seats-1-p1');
    if (!entry) throw new Error('there is such an entry');
    const pages = entryPages(request, entry);
    expect([pages.count, checks]).toEqual([1, 0]);
    pages.draw(0, { first: 1, sheets: 1, sheetOf: () => null });
    expect(checks).toBeGreaterThan(0);
  });

  it.each(PAPERS.map(({ name }) => name))(
    'on %s no text is under 7 pt and none lies on another',
    (paper) => {
      for (const document of [EVENING, sixty]) {
        for (const { sheet, entry } of sheetsOf(packOf(document, { paper }))) {
          const { width, height } = paperNamed(paper);
          expect([sheet.width, sheet.height].toSorted((a, b) => a - b)).toEqual([width, height]);
          for (const text of textsIn(sheet.children))
            expect(text.size * (72 / 25.4)).toBeGreaterThanOrEqual(7);
          expect(overlappingTexts(sheet.children, roughMeasure), entry.name).toEqual([]);
        }
      }
    },
    120_000,
  );

  it('says plainly what does not fit, and leaves it out', () => {
    const vast = packOf(EVENING, {
      document: {
        records: new Map(
          [...EVENING.records].map(([id, record]) => [
            id,
            record.kind === 'platform'
              ? { ...record, outline: record.outline.map(({ x, y }) => ({ x: x * 400, y: y * 400 })) }
              : record,
          ]),
        ),
      },
    });
    const { entries, notes } = counted(vast);
    expect(entries.some(({ entry }) => entry.kind === 'plot')).toBe(false);
    expect(notes.join(' ')).toContain('does not fit on A4');
  });
});
