import { describe, expect, it } from 'vitest';
import { textBox } from '#model/drawing/bounds.ts';
import { changeoverSheets } from '#model/drawing/changeover/sheets.ts';
import type { PlotSheets } from '#model/drawing/sheet/request.ts';
import type { ChangeoverSheetRequest } from '#model/drawing/changeover/request.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type {
  MeasureText,
  PathPrimitive,
  Primitive,
  Sheet,
  TextPrimitive,
} from '#model/drawing/primitives.ts';
import type { Document } from '#model/document/document.ts';
import type { Storage } from '#model/document/records.ts';
import { changeover } from '#model/programme/changeover.ts';
import { boundsOf } from '#model/geometry/polygon.ts';
import { changeoverPlan, changeoverPlanScale } from '#model/drawing/changeover/plan.ts';
import { runsOf } from '#model/drawing/changeover/runs.ts';
import { documentOf } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { partsOf } from '#model/programme/programme.ts';
import { demoConcert } from '../checks/remedies/demo.ts';
import { aDoor, aPiano, aStand, aTable, SETUP } from '../../helpers/build.ts';
import { boxOf, groupsOf, overlappingTexts, overlaps, roughMeasure, textsIn } from './drawings.ts';
import { SECOND, standsAt, twoSetups } from '../programme/programme-scenes.ts';

/** Every letter as wide as a usual one is at its widest. */
const measure: MeasureText = (text, size) => 0.6 * size * text.length;

const requestOf = (
  document: Document,
  fields: Partial<ChangeoverSheetRequest> = {},
): ChangeoverSheetRequest => ({
  document,
  from: SETUP,
  to: SECOND,
  options: { paper: 'A4', orientation: 'auto', scale: null },
  measure,
  units: 'metric',
  issued: '2027-01-02',
  palette: PALETTES.print,
  ...fields,
});

function drawn(request: ChangeoverSheetRequest): PlotSheets {
  const result = changeoverSheets(request);
  if (!result.ok) throw new Error(result.message);
  return result;
}

const sheetsOf = (request: ChangeoverSheetRequest): readonly Sheet[] => drawn(request).sheets;

function flat(primitives: readonly Primitive[]): Primitive[] {
  return primitives.flatMap((each) => (each.kind === 'group' ? flat(each.children) : [each]));
}

const textsOf = (sheet: Sheet | undefined) =>
  flat(sheet?.children ?? []).filter((each): each is TextPrimitive => each.kind === 'text');
const pathsOf = (sheet: Sheet | undefined) =>
  flat(sheet?.children ?? []).filter((each): each is PathPrimitive => each.kind === 'path');

const busy = twoSetups(
  aPiano({ id: 'piano-1', x: -1200, y: 3200 }),
  aStand({ id: 'stand-1', x: -900, y: 1200 }),
  aStand({ id: 'stand-2', x: 900, y: 1200 }),
  aTable({ id: 'table-1', x: 2500, y: 3000 }),
  aPiano({ id: 'piano-2', setup: SECOND, x: 1000, y: 3200 }),
  aStand({ id: 'stand-3', setup: SECOND, x: -1900, y: 1500 }),
  aStand({ id: 'stand-4', setup: SECOND, x: 900, y: 1200, lip: 1000 }),
  aStand({ id: 'stand-5', setup: SECOND, x: 2000, y: 1500 }),
);

describe('the sheets of a changeover', () => {
  it('number every step on the plan, and list it for whoever takes it', () => {
    const { steps } = changeover(busy, SETUP, SECOND);
    const [plan, ...lists] = sheetsOf(requestOf(busy));
    const marks = textsOf(plan).map(({ text }) => text);
    for (const { number, hands } of steps)
      expect(marks).toContain(`${number}${hands === 'both' ? 'AB' : hands}`);
    const boxes = lists.flatMap(textsOf).filter(({ text }) => text === '☐');
    // What both do is in both lists.
    expect(boxes).toHaveLength(steps.length + steps.filter(({ hands }) => hands === 'both').length);
    const words = lists
      .flatMap(textsOf)
      .map(({ text }) => text)
      .join(' ');
    expect(words).toMatch(/Person A.*Person B.*Before you carry.*Local codes/);
  });

  it('lets nothing that is written overlap, also with thirty arrows', () => {
    const at = (index: number, shift: number) => ({
      x: -2800 + 620 * (index % 10) + shift,
      y: 900 + 1000 * Math.floor(index / 10),
    });
    const many = standsAt(
      Array.from({ length: 30 }, (_, index) => at(index, 0)),
      Array.from({ length: 30 }, (_, index) => at(index, 260)),
    );
    for (const document of [busy, many]) {
      const boxes = textsOf(sheetsOf(requestOf(document))[0]).map((text) => ({
        text,
        box: textBox(text, measure),
      }));
      for (const [index, { text, box }] of boxes.entries()) {
        for (const other of boxes.slice(index + 1)) {
          const apart =
            box.x + box.width <= other.box.x + 0.01 ||
            other.box.x + other.box.width <= box.x + 0.01 ||
            box.y + box.height <= other.box.y + 0.01 ||
            other.box.y + other.box.height <= box.y + 0.01;
          expect(apart, `${text.text} / ${other.text.text}`).toBe(true);
        }
      }
    }
  });

  it('are to scale: from one old place to another as far as on the floor', () => {
    const document = standsAt(
      [
        { x: -1000, y: 1000 },
        { x: 1000, y: 1000 },
      ],
      [],
    );
    const result = changeoverSheets(requestOf(document, { to: null }));
    if (!result.ok) throw new Error(result.message);
    const dashed = pathsOf(result.sheets[0]).filter(({ stroke, fill }) => stroke?.dash && fill === undefined);
    const leftEnds = dashed
      .filter(({ path }) => path.length > 6)
      .map(({ path }) => Math.min(...path.flatMap((item) => (item[0] === 'Z' ? [] : [item[1]]))))
      .sort((a, b) => a - b);
    const [first = NaN, last = NaN] = [leftEnds[0], leftEnds.at(-1)];
    expect((last - first) * result.choice.scale).toBeCloseTo(2000, 3);
  });

  it('tell old places from new ones without colour, and nothing under 7 pt', () => {
    const { sheets, choice } = drawn(requestOf(busy));
    const [plan, ...lists] = sheets;
    const steps = changeover(busy, SETUP, SECOND).steps.filter(({ from, work }) => from && work !== 'adjust');
    const sizes = pathsOf(plan)
      .filter(({ stroke, fill }) => fill === undefined && stroke?.dash !== undefined)
      .map(({ path }) =>
        boundsOf(path.flatMap((item) => (item[0] === 'Z' ? [] : [{ x: item[1], y: item[2] }]))),
      )
      .map(({ minX, maxX, minY, maxY }) => [maxX - minX, maxY - minY].map((side) => side.toFixed(3)).join());
    for (const { from } of steps) {
      const { minX, maxX, minY, maxY } = boundsOf(from?.outline ?? []);
      expect(sizes).toContain(
        [maxX - minX, maxY - minY].map((side) => (side / choice.scale).toFixed(3)).join(),
      );
    }
    for (const { size } of [plan, ...lists].flatMap(textsOf))
      expect(size).toBeGreaterThanOrEqual((7 * 25.4) / 72);
  });

  it('name things by the marks of the plots, doors and where they lead, also where a store lies off the sheet', () => {
    const door = aDoor({ id: 'door-1', edge: 2, offset: 2000, width: 1600, name: 'Dock door' });
    const id = asId<'storage'>('storage-1');
    const store: Storage = { id, kind: 'storage', name: 'Far store', x: 0, y: 40_000, door: door.id };
    const document = documentOf([...busy.records.values(), door, store]);
    const [plan, ...lists] = sheetsOf(requestOf(document));
    const written = textsOf(plan).map(({ text }) => text);
    expect(written).toEqual(
      expect.arrayContaining(['Dock door: to Far store', 'PF1', 'S1', 'S3', 'was PF1']),
    );
    const told = lists.flatMap(textsOf).map(({ text }) => text);
    expect(told.join(' ')).toMatch(
      /PF1 Grand.*T1 Percussion table.*S3 Orchestral stand.*S1 Orchestral stand/,
    );
  });

  it('are several drawings where sixty things move, each with at most twelve arrows and every step in one of them', () => {
    const at = (index: number, shift: number) => ({
      x: -2800 + 600 * (index % 10) + shift,
      y: 700 + 650 * Math.floor(index / 10),
    });
    const sixty = standsAt(
      Array.from({ length: 60 }, (_, index) => at(index, 0)),
      Array.from({ length: 60 }, (_, index) => at(index, 250)),
    );
    const { steps } = changeover(sixty, SETUP, SECOND);
    const { sheets, choice, notes } = drawn(requestOf(sixty));
    const plans = sheets.filter(({ children }) =>
      JSON.stringify(children).includes(`SCALE 1:${choice.scale}`),
    );
    const numbers = plans.map((plan) => textsOf(plan).filter(({ text }) => /^\d+(A|B|AB)$/.test(text)));
    expect(steps.length).toBeGreaterThan(50);
    for (const own of numbers) expect(own.length).toBeLessThanOrEqual(12);
    expect(numbers.flat().map(({ text }) => parseInt(text, 10))).toEqual(
      expect.arrayContaining(steps.map(({ number }) => number)),
    );
    expect(numbers.flat()).toHaveLength(steps.length);
    expect(notes).toEqual([]);
  });

  it('show the demo’s platform at 1:50 on A4 as on Letter, with notes and bar beside a plan that leaves no room under it', () => {
    const demo = demoConcert();
    for (const { from, to } of partsOf(demo)) {
      for (const paper of ['A4', 'Letter'] as const) {
        const options = { paper, orientation: 'auto' as const, scale: null };
        const asked = requestOf(demo, { from: from?.id ?? null, to: to?.id ?? null, options });
        const { choice, sheets } = drawn({ ...asked, measure: roughMeasure });
        expect(choice.scale).toBe(50);
        const words = textsOf(sheets[0])
          .map(({ text }) => text)
          .join(' ');
        expect(words).toMatch(/Dashed: where a thing stood.*licensed practice come first/);
        expect(overlappingTexts(sheets[0]?.children ?? [], roughMeasure)).toEqual([]);
      }
    }
  });

  it('set the numbers of steps clear of the things', () => {
    const demo = demoConcert();
    for (const { from, to } of partsOf(demo)) {
      const change = changeover(demo, from?.id ?? null, to?.id ?? null);
      const drawing = { ...requestOf(demo), change };
      const body = { x: 0, y: 0, width: 260, height: 170 };
      const scale = changeoverPlanScale(drawing, body) ?? NaN;
      const [run] = runsOf(change);
      if (!run) throw new Error('a run was expected');
      const primitives = changeoverPlan(drawing, run, { body, scale }).children;
      const numbers = textsIn(primitives)
        .filter(({ text }) => /^\d+(A|B|AB)$/.test(text))
        .map((text) => textBox(text, measure));
      // The symbol comes first, its mark later; a lamp's has its cable with it, and a chair is drawn without a name.
      const symbols = change.steps.flatMap(({ to: unit }) =>
        unit && unit.record.kind !== 'lamp' && unit.record.kind !== 'player' ? [unit.record.id] : [],
      );
      const boxes = symbols.flatMap((id) =>
        groupsOf(primitives, id)
          .slice(0, 1)
          .map(({ children }) => boxOf(children)),
      );
      expect(numbers).toHaveLength(change.steps.length);
      for (const number of numbers) for (const box of boxes) expect(overlaps(number, box)).toBe(false);
    }
  });

  it('refuse a scale that is none, or does not fit, with what would do', () => {
    const odd = changeoverSheets(
      requestOf(busy, { options: { paper: 'A4', orientation: 'auto', scale: 37 } }),
    );
    expect(odd).toMatchObject({ ok: false, code: 'plot.unknownScale' });
    const large = changeoverSheets(
      requestOf(busy, { options: { paper: 'A4', orientation: 'auto', scale: 10 } }),
    );
    expect(large).toMatchObject({ ok: false, code: 'plot.doesNotFit' });
    expect(!large.ok && large.fits.length).toBeGreaterThan(0);
  });

  it('say when there is nothing to carry', () => {
    const words = sheetsOf(requestOf(twoSetups()))
      .flatMap(textsOf)
      .map(({ text }) => text)
      .join(' ');
    expect(words).toMatch(/Nothing to carry/);
  });
});
