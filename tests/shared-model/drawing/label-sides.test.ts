/** Labels of whole ensembles: on their thing's side of the centre line, near it, and at one place whatever the language. */

import { afterAll, describe, expect, it } from 'vitest';
import { readEnsemble } from '#model/arrange/ensemble-text.ts';
import type { Shape } from '#model/arrange/shapes.ts';
import { venueModel } from '#model/catalogue/venues.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { applyDiff } from '#model/document/diff.ts';
import { leaderStart, type LabelPlaces, type PlacedLabel } from '#model/drawing/plan/label-places.ts';
import { drawAnnotations, drawGround, drawItems, planContext } from '#model/drawing/plan.ts';
import { planLayout } from '#model/drawing/sheet/plan-layout.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { german } from '#model/words/german/index.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { createMeasure } from '../../../electron/services/fonts.ts';
import { addEnsemble } from '../../../renderer/store/ensemble.ts';
import { aConcert, aSetup, SETUP } from '../../helpers/build.ts';
import { ALL_LAYERS, overlaps } from './drawings.ts';
import { plotRequest } from './plot-request.ts';

const ENSEMBLES: readonly (readonly [house: string, ensemble: string, shape: Shape])[] = [
  ['recital-room', '2 vl, va, vc, cl, perc', 'arc'],
  ['recital-room', '4 vl, 2 va, 2 vc', 'horseshoe'],
  ['church-chancel', '2 vl, va, vc, cl, perc', 'horseshoe'],
  ['studio', '2 fl, 2 ob, 2 cl, 2 hn, 2 bn', 'arc'],
  ['small-concert-hall', '4 vl, 2 va, 2 vc, db, piano', 'arc'],
  ['small-concert-hall', '4 vl, 3 va, 2 vc, db, fl, ob, cl, bn', 'horseshoe'],
];

const layers = { ...ALL_LAYERS, dimensions: 'coordinates' as const, reach: false, routes: false };

function ensembleIn(house: string, ensemble: string, shape: Shape): Document {
  const document = documentOf([aConcert(), aSetup(), ...(venueModel(house)?.records() ?? [])]);
  const order = { setup: SETUP, units: 'metric', shape, withStands: true, shared: false } as const;
  const set = addEnsemble(document, readEnsemble(ensemble).members, order);
  if (!set.ok) throw new Error(`${ensemble} in ${house}: ${set.reason}`);
  return applyDiff(document, set.diff);
}

/** In the typeface of the prints. */
const measure = createMeasure();

interface Labelled {
  readonly labels: LabelPlaces;
  /** The centre line on the page. */
  readonly centre: number;
}

function labelled(document: Document): Labelled {
  const request = plotRequest(document, { measure });
  const layout = planLayout(request);
  if ('ok' in layout) throw new Error(layout.message);
  const { scale, origin, area } = layout;
  const context = planContext({ ...request, scale, origin, area, layers });
  return {
    labels: drawAnnotations(context, [...drawGround(context), ...drawItems(context)]).labels,
    centre: origin.x,
  };
}

const documents = ENSEMBLES.map((order) => ensembleIn(...order));
const english = documents.map(labelled);
speakFrom('de', german);
const inGerman = documents.map(labelled);
speakEnglish();
afterAll(speakEnglish);

const placed = english.flatMap(({ labels }) => labels.placed);
const middle = ({ x, width }: { readonly x: number; readonly width: number }): number => x + width / 2;

function isBeyond({ box, request: { item } }: PlacedLabel, centre: number): boolean {
  const isAside = item.x > centre || item.x + item.width < centre;
  return isAside && Math.sign(middle(box) - centre) !== Math.sign(middle(item) - centre);
}

/** Which way from its thing a label stands. */
function wayOf({ box, request: { target } }: PlacedLabel): string {
  const [across, down] = [middle(box) - target.x, box.y + box.height / 2 - target.y];
  return Math.abs(across) > Math.abs(down) ? `across ${Math.sign(across)}` : `down ${Math.sign(down)}`;
}

describe('labels of ensembles of 6 to 14', () => {
  it('stand on their thing’s side of the centre line, but for one in a hundred', () => {
    const beyond = english.flatMap(({ labels, centre }) =>
      labels.placed.filter((label) => isBeyond(label, centre)),
    );
    expect(placed.length).toBeGreaterThan(100);
    expect(beyond.length).toBeLessThanOrEqual(placed.length / 100);
  });

  it('have leaders that add up to less than 3.5 mm a label: most need none', () => {
    const length = ({ box, request: { target } }: PlacedLabel): number => {
      const start = leaderStart(box, target);
      return Math.hypot(target.x - start.x, target.y - start.y);
    };
    const led = placed.filter(({ leader }) => leader);
    expect(led.length).toBeGreaterThan(10);
    expect(led.reduce((sum, label) => sum + length(label), 0) / placed.length).toBeLessThan(3.5);
  });

  it('overlap nowhere, and none is dropped', () => {
    for (const { labels } of english) {
      expect(labels.dropped).toEqual([]);
      for (const [index, { box }] of labels.placed.entries())
        for (const other of labels.placed.slice(index + 1)) expect(overlaps(box, other.box)).toBe(false);
    }
  });

  it('keep their figures, but for one in ten', () => {
    const without = english.flatMap(({ labels }) => labels.withoutFigures);
    expect(without.length).toBeLessThan(placed.length / 10);
  });

  it('stand where they stand in English on a German print, but for one in fifteen', () => {
    const moved = english.flatMap(({ labels }, index) => {
      const others = new Map(inGerman[index]?.labels.placed.map((label) => [label.request.subject, label]));
      return labels.placed.filter((label) => {
        const other = others.get(label.request.subject);
        return !other || wayOf(other) !== wayOf(label);
      });
    });
    expect(moved.length).toBeLessThanOrEqual(placed.length / 15);
  });
});
