/** Plots for tests: a request with plain defaults, and a report made up of plain numbers. */

import type { Report } from '#model/checks/report.ts';
import { inSetup, type Document } from '#model/document/document.ts';
import { housePlaces } from '#model/document/seating.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { PlotSheetRequest, PlotSheetsByPart } from '#model/drawing/plot-sheet.ts';
import { plotSheets } from '#model/drawing/plot-sheet.ts';
import { SETUP } from '../../helpers/build.ts';
import { roughMeasure } from './drawings.ts';

export function plotRequest(document: Document, fields: Partial<PlotSheetRequest> = {}): PlotSheetRequest {
  return {
    document,
    setup: SETUP,
    report: null,
    explain: ({ code, subjects }) => ({
      headline: `${code} of ${subjects.join(' and ')}`,
      text: 'Measured 610, asked for 600.',
      advice: 'Lower the desk by 85 mm.',
    }),
    options: { paper: 'A4', orientation: 'auto', scale: null },
    measure: roughMeasure,
    units: 'metric',
    issued: '2027-02-20',
    palette: PALETTES.print,
    ...fields,
  };
}

export function sheetsOf(request: PlotSheetRequest): PlotSheetsByPart {
  const result = plotSheets(request);
  if (!result.ok) throw new Error(result.message);
  return result;
}

/** Invented shares, the same every time; not what the checks would say. */
export function inventedReport(document: Document): Report {
  const seats = housePlaces(document).map((place) => ({ ...place, z: place.eyeZ }));
  const targets = inSetup(document, SETUP, 'player').map(({ id, x, y }) => ({
    id,
    x,
    y,
    z0: 0,
    z1: 1300,
    width: 450,
    chin: 1080,
  }));
  const visible = Float64Array.from(
    { length: seats.length * targets.length },
    (_, index) => ((index * 37) % 101) / 100,
  );
  return {
    setup: SETUP,
    sight: {
      scene: { seats, targets, occluders: [] },
      visible,
      figures: targets.map(({ id }) => ({
        player: id,
        seenWell: 0.62,
        median: 0.8,
        worst: { seat: seats[0]?.id ?? '', share: 0.13 },
        bands: [1, 2, 3, 4, 5],
        coveredBy: [],
      })),
    },
    reach: targets.map(({ id }) => ({
      grip: { id: `${id}-grip`, player: id, item: 'stand-1', purpose: 'turnCorner', x: 0, y: 0, z: 900 },
      hand: 'left',
      distance: 690,
      armReach: 640,
      manner: 'lean',
      stoops: false,
      seconds: 1.1,
      secondsRange: [0.9, 1.4],
      freeTimeSource: 'typed',
      freeTimeAt: null,
      freeTime: 3,
    })),
    routes: [],
    reading: [],
    facing: { pairs: [], toHouse: [] },
    findings: (['note', 'caution', 'fail'] as const).map((severity) => ({
      code: 'room.edge',
      severity,
      subjects: ['stand-1'],
      measured: 300,
      required: 600,
      unit: 'mm',
      where: null,
      detail: {},
    })),
  };
}
