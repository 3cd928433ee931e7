/**
 * The picture and the figures say the same. What is painted over a player's window, sampled on a grid from the finished
 * primitives, is compared with the exact visible share of the sight check. The two have nothing in common but the scene:
 * one orders polygons and paints, the other computes areas of shadows.
 */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { buildScene } from '#model/checks/scene/build-scene.ts';
import type { Occluder } from '#model/checks/scene.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { allOf, documentOf, inSetup, setupsOf, type Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { Solid } from '#model/drawing/view/mesh.ts';
import { partOf } from '#model/drawing/view/solids/counted.ts';
import { solidsOf } from '#model/drawing/view/solids/solids.ts';
import { viewContext, type ViewRequest } from '#model/drawing/view/context.ts';
import { readDocument } from '#model/file-format/read.ts';
import { SETUP } from '../../../helpers/build.ts';
import { randomScene } from '../../../oracles/random-scenes.ts';
import { paintedShare, viewOfWindow, viewRequest } from './pictures.ts';

/** An occluder of the sight check as a solid. */
function solidOf(occluder: Occluder): Solid {
  return { subject: occluder.id, parts: [partOf(occluder, '#808080')] };
}

test('random scenes with all kinds of occluders: within the error of the grid', () => {
  const SIDE = 50;
  let worst = 0;
  let partly = 0;
  for (let seed = 1; seed <= 60; seed++) {
    const scene = randomScene(seed, {
      seats: 2,
      targets: 2,
      occluders: 8,
      kinds: ['quad', 'box', 'capsule'],
    });
    const shares = visibleShares(scene);
    scene.seats.forEach((seat, s) => {
      scene.targets.forEach((target, t) => {
        const share = shares[s * scene.targets.length + t] ?? NaN;
        const others = scene.occluders.filter(({ owner }) => owner !== target.id);
        const painted = paintedShare(others.map(solidOf), { seat, target, side: SIDE });
        if (share > 0.01 && share < 0.99) partly++;
        worst = Math.max(worst, Math.abs(share - painted));
        // One row of spots more or less along an edge across the window is 1 / 50.
        expect(Math.abs(share - painted), `seed ${seed}, ${seat.id}, ${target.id}`).toBeLessThan(0.02);
      });
    });
  }
  console.log(`worst difference ${percent(worst)}; ${partly} of 240 pairs partly hidden`);
  expect(partly).toBeGreaterThan(60);
});

describe('the demo', () => {
  const read = readDocument(readFileSync('assets/demo-concert.standlines', 'utf8'));
  if (!read.ok) throw new Error(read.problem.message);
  const demo = read.document;
  const [concert] = allOf(demo, 'concert');
  if (!concert) throw new Error('no concert');
  const withHeads = documentOf([...demo.records.values(), { ...concert, headsInFront: true }]);

  /** Spots along each side of a window's grid: one row of them is 1 %. */
  const SIDE = 100;

  test.each([
    ['without heads', demo],
    ['with the heads of the rows in front', withHeads],
  ])('as counted, %s: within a row of spots', (words, document) => {
    const found = setupsOf(document).flatMap(({ id }) =>
      differences(document, id, { show: 'counted', side: SIDE }),
    );
    const off = found.map(Math.abs);
    console.log(
      `${words}: ${found.length} pairs, ${percent(meanOf(off))} off on average, ${percent(most(off))} at worst`,
    );
    expect(found.length).toBeGreaterThan(60);
    expect(meanOf(off)).toBeLessThan(0.0025);
    expect(most(off)).toBeLessThan(0.01);
  });

  /**
   * Figures have arms, necks, legs and slender instruments where the check has two upright bodies, a round head and
   * boxes. So the picture may show a little more or less, and much less where somebody sits before another.
   */
  test('as figures: about what is counted', () => {
    const setup = setupsOf(demo).at(-1)?.id ?? SETUP;
    const found = differences(demo, setup, { show: 'figures', side: 40 });
    const less = percent(most(found.map((each) => -each)));
    console.log(
      `figures: ${found.length} pairs, ${percent(meanOf(found.map(Math.abs)))} off on average, at worst ${less} less, ${percent(most(found))} more`,
    );
    expect(meanOf(found.map(Math.abs))).toBeLessThan(0.03);
    expect(most(found)).toBeLessThan(0.15);
  });
});

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, each) => sum + each, 0) / values.length;
const most = (values: readonly number[]): number => values.reduce((max, each) => Math.max(max, each), -1);
const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;

/** Every so many places of the house are tried, and every fourth of the front rows, where most is hidden. */
const EVERY = 37;

interface Compared {
  readonly show: ViewRequest['show'];
  readonly side: number;
}

/** Painted minus exact share for each pair of a place and a player. */
function differences(document: Document, setup: Id<'setup'>, { show, side }: Compared): number[] {
  const scene = buildScene(document, setup);
  const shares = visibleShares(scene);
  const held = inSetup(document, setup, 'instrument').filter(({ support }) => support === null);
  return scene.seats.flatMap((seat, s) => {
    if (s % EVERY !== 0 && (seat.row !== 0 || s % 4 !== 0)) return [];
    return scene.targets.map((target, t) => {
      const view = viewOfWindow(seat, target);
      const context = viewContext({ ...viewRequest(document, setup), view, show });
      const mine = held.filter(({ player }) => player === target.id).map(({ id }) => id);
      const own = new Set<string>([target.id, ...mine]);
      const painted = paintedShare(solidsOf(context), { seat, target, side }, own);
      return painted - (shares[s * scene.targets.length + t] ?? NaN);
    });
  });
}
