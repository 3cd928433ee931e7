/** What belongs to the building off the platform: it takes no scale away, and stands whole on the plot or not at all. */

import { afterEach, describe, expect, it } from 'vitest';
import { VENUE_MODELS } from '#model/catalogue/venues.ts';
import { outlineOf } from '#model/catalogue/outlines.ts';
import { changeoverPlanScale } from '#model/drawing/changeover/plan.ts';
import { allOf, documentOf, type Document } from '#model/document/document.ts';
import { boxContains, boxOfPoints } from '#model/drawing/bounds.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import { stageToPage } from '#model/drawing/plan/context.ts';
import { mapPoint } from '#model/drawing/affine.ts';
import type { PaperName } from '#model/drawing/papers.ts';
import { planLayout, type PlanLayout } from '#model/drawing/sheet/plan-layout.ts';
import { changeover } from '#model/programme/changeover.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { german } from '#model/words/german/index.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { createMeasure } from '../../../electron/services/fonts.ts';
import { aConcert, aDocument, aPlayer, aSetup, aShape, aStand, SETUP } from '../../helpers/build.ts';
import { groupsOf, roughMeasure, textsIn } from './drawings.ts';
import { plotRequest, sheetsOf } from './plot-request.ts';

const PAPERS: readonly PaperName[] = ['A4', 'A3', 'Letter'];
const UNITS = ['metric', 'imperial'] as const;

const houseOf = (model: (typeof VENUE_MODELS)[number], isWhole: boolean): Document =>
  documentOf([aConcert(), aSetup(), ...model.records().filter(({ kind }) => isWhole || kind !== 'shape')]);

const measure = createMeasure();

function requestOn(document: Document, paper: PaperName, units: (typeof UNITS)[number] = 'metric') {
  return plotRequest(document, { measure, units, options: { paper, orientation: 'auto', scale: null } });
}

function layoutOf(...asked: Parameters<typeof requestOn>): PlanLayout {
  const layout = planLayout(requestOn(...asked));
  if ('ok' in layout) throw new Error(layout.message);
  return layout;
}

const WITH_COLUMNS = VENUE_MODELS.filter((model) => model.records().some(({ kind }) => kind === 'shape'));

it('is about houses that have columns', () => {
  expect(WITH_COLUMNS.length).toBeGreaterThan(0);
});

describe.each(VENUE_MODELS.map((model) => [model.id, model] as const))('the plot of %s', (_, model) => {
  const whole = houseOf(model, true);

  it.each(PAPERS)('on %s is as large as the platform allows', (paper) => {
    for (const units of UNITS)
      expect(layoutOf(whole, paper, units).scale).toBe(layoutOf(houseOf(model, false), paper, units).scale);
  });
});

/** Notes and keys are longer in German; they must not take a scale from the plan. */
describe('a German plot', () => {
  afterEach(speakEnglish);

  it.each(VENUE_MODELS.map((model) => [model.id, model] as const))('of %s is as large', (_, model) => {
    const players = [-1, 1].flatMap((side) => [
      aPlayer({ id: `player-${side}`, x: side * 900, y: 1500 }),
      aStand({ id: `stand-${side}`, x: side * 500, y: 1200 }),
    ]);
    const document = documentOf([...houseOf(model, true).records.values(), ...players]);
    for (const units of UNITS) {
      for (const paper of PAPERS) {
        speakEnglish();
        const english = layoutOf(document, paper, units).scale;
        speakFrom('de', german);
        expect(layoutOf(document, paper, units).scale, `${paper} ${units}`).toBe(english);
      }
    }
  });
});

describe.each(WITH_COLUMNS.map((model) => [model.id, model] as const))('the plot of %s', (_, model) => {
  const whole = houseOf(model, true);

  it.each(PAPERS)('on %s shows what belongs to the building whole, or names it as not shown', (paper) => {
    const { scale, origin, area } = layoutOf(whole, paper);
    const [sheet] = sheetsOf(requestOn(whole, paper)).sheets;
    const texts = textsIn(sheet?.children ?? []).map(({ text }) => text);
    const shapes = allOf(whole, 'shape');
    const toPage = stageToPage(scale, origin);
    const shown = shapes.filter((shape) => {
      const box = boxOfPoints(outlineOf(shape).map((corner) => mapPoint(toPage, corner)));
      const isShown = groupsOf(sheet?.children ?? [], shape.id).length > 0;
      expect(isShown).toBe(box !== null && boxContains(area, box));
      return isShown;
    });
    const isSaid = texts.join(' ').includes('Down the house, not shown here');
    expect(isSaid).toBe(shown.length < shapes.length);
  });
});

describe('a fixed shape', () => {
  const column = (x: number, y: number) => aShape({ id: `shape-${x}-${y}`, x, y, fixed: true, setup: null });
  const scaleWith = (shape: ReturnType<typeof aShape>): number => layoutOf(aDocument(shape), 'A4').scale;

  it('down the house makes neither plot nor changeover smaller; near the platform it counts', () => {
    const bare = layoutOf(aDocument(), 'A4').scale;
    expect(scaleWith(column(0, -9000))).toBe(bare);
    expect(scaleWith(column(0, -40_000))).toBe(bare);
    expect(scaleWith({ ...column(0, -9000), fixed: false })).toBeGreaterThan(bare);
    expect(scaleWith({ ...column(0, -9000), setup: SETUP })).toBeGreaterThan(bare);
    const wall = column(0, 0);
    const outline = wall.outline.map(({ x, y }) => ({ x: x < 0 ? -9000 : 9000, y }));
    expect(scaleWith({ ...wall, outline })).toBeGreaterThan(bare);
  });

  it('down the house does not make the plan of a changeover smaller', () => {
    const scaleOf = (document: Document): number | null =>
      changeoverPlanScale(
        {
          document,
          units: 'metric',
          measure: roughMeasure,
          palette: PALETTES.print,
          change: changeover(document, null, SETUP),
        },
        { x: 0, y: 0, width: 250, height: 160 },
      );
    expect(scaleOf(aDocument(column(0, -40_000)))).toBe(scaleOf(aDocument()));
  });
});
