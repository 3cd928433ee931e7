/**
 * What is painted last at a spot is what a ray through that spot meets first. The rays are cast by three-mesh-bvh 0.9.17
 * at meshes that three 0.187 makes of the raw scene; the picture is cut, ordered and painted by our own means.
 */

import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import * as THREE from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import { describe, expect, test } from 'vitest';
import { buildScene } from '#model/checks/scene/build-scene.ts';
import { inSetup, platformOf, setupsOf, type Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { housePlaces } from '#model/document/seating.ts';
import { cameraOf } from '#model/drawing/view/camera.ts';
import { subjectAt, viewDrawing, viewFromPlayer, viewFromSeat } from '#model/drawing/view/view-drawing.ts';
import type { View } from '#model/drawing/view/view.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { readDocument } from '#model/file-format/read.ts';
import { SETUP } from '../../../helpers/build.ts';
import { diceOf } from '../../../oracles/seeded.ts';
import { meshOf } from '../../../oracles/ray-caster.ts';
import { viewRequest } from './pictures.ts';
import { randomStage } from './random-stages.ts';

const WIDTH = 210;
const HEIGHT = 148;
/** What is nearer to the eye than this, along the view, is not drawn. */
const NEAR = 60;

interface Body {
  readonly subject: string;
  readonly tree: MeshBVH;
  readonly side: THREE.Side;
}

/** Facets of round bodies: within half a hundredth of the radius. */
const FINENESS = { around: 48, over: 8 };

/** Everything that the sight check counts, and the platform's floor. Who is inside a body looks out of it. */
function bodiesOf(document: Document, setup: Id<'setup'>): Body[] {
  const counted = buildScene(document, setup).occluders.flatMap((occluder): Body[] => {
    const tree = meshOf([occluder], FINENESS);
    const side = occluder.kind === 'quad' ? THREE.DoubleSide : THREE.FrontSide;
    return tree ? [{ subject: occluder.record, tree, side }] : [];
  });
  const { id, outline } = platformOf(document);
  const floor = new THREE.ShapeGeometry(new THREE.Shape(outline.map(({ x, y }) => new THREE.Vector2(x, y))));
  return [...counted, { subject: id, tree: new MeshBVH(floor), side: THREE.FrontSide }];
}

/** Without a player and what he holds. */
function bodiesFor(view: View, { document, setup, bodies }: Stage): Body[] {
  const own = new Set<string>([view.subject]);
  for (const { id, player, support } of inSetup(document, setup, 'instrument')) {
    if (player === view.subject && support === null) own.add(id);
  }
  return bodies.filter(({ subject }) => !own.has(subject));
}

interface Stage {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly bodies: readonly Body[];
}

const stageOf = (document: Document, setup: Id<'setup'>): Stage => ({
  document,
  setup,
  bodies: bodiesOf(document, setup),
});

/** Two things that a ray meets closer together than this, mm, lie in one plane: either may be painted. */
const TIE = 0.5;

/** The subject that a ray through a spot of the paper meets first; null: none, undefined: two at once. */
function firstMet(bodies: readonly Body[], view: View, spot: Vec2): string | null | undefined {
  const { eye, ahead, right, up, focal, middle } = cameraOf(view, WIDTH, HEIGHT);
  const [across, rise] = [(spot.x - middle.x) / focal, (middle.y - spot.y) / focal];
  const towards = new THREE.Vector3(
    ahead.x + across * right.x + rise * up.x,
    ahead.y + across * right.y + rise * up.y,
    ahead.z + across * right.z + rise * up.z,
  );
  const near = NEAR * towards.length();
  const ray = new THREE.Ray(new THREE.Vector3(eye.x, eye.y, eye.z), towards.normalize());
  let [nearest, subject]: [number, string | null | undefined] = [Infinity, null];
  for (const body of bodies) {
    const hit = body.tree.raycastFirst(ray, body.side, near, nearest + TIE);
    if (!hit) continue;
    const isTie: boolean = Math.abs(hit.distance - nearest) < TIE && subject !== body.subject;
    [nearest, subject] = [Math.min(hit.distance, nearest), isTie ? undefined : body.subject];
  }
  return subject;
}

/** Mm of paper: what changes within this is too near to an edge to be judged. */
const UNSURE = 0.35;

/** What is met at a spot and close round it; undefined where that differs. */
function surelyMet(bodies: readonly Body[], view: View, { x, y }: Vec2): string | null | undefined {
  const here = firstMet(bodies, view, { x, y });
  const corners = [
    { x: x + UNSURE, y: y + UNSURE },
    { x: x - UNSURE, y: y + UNSURE },
    { x: x - UNSURE, y: y - UNSURE },
    { x: x + UNSURE, y: y - UNSURE },
  ];
  return corners.every((corner) => firstMet(bodies, view, corner) === here) ? here : undefined;
}

interface Tally {
  asked: number;
  met: number;
  readonly wrong: string[];
}

const newTally = (): Tally => ({ asked: 0, met: 0, wrong: [] });

interface Spots {
  readonly spots: number;
  readonly seed: number;
}

function compare(stage: Stage, view: View, { spots, seed }: Spots, to: Tally): void {
  const { document, setup } = stage;
  const request = { ...viewRequest(document, setup), view, show: 'counted', names: false } as const;
  const picture = viewDrawing(request);
  const bodies = bodiesFor(view, stage);
  const house = new Set(housePlaces(document).map(({ record }) => record));
  const dice = diceOf(seed);
  for (let i = 0; i < spots; i++) {
    const spot = { x: dice.between(1, WIDTH - 1), y: dice.between(1, HEIGHT - 1) };
    const met = surelyMet(bodies, view, spot);
    if (met === undefined) continue;
    const painted = subjectAt(picture, spot);
    // For an eye on the stage people are painted in the house, which the sight check knows nothing of.
    const isPeople = view.from === 'player' && met === null && painted !== null && house.has(painted);
    if (isPeople) continue;
    to.asked++;
    if (met !== null) to.met++;
    if (painted !== met)
      to.wrong.push(`${view.label}: ${painted} painted, ${met} met at ${spot.x}, ${spot.y}`);
  }
}

describe('the demo', () => {
  const read = readDocument(readFileSync('assets/demo-concert.standlines', 'utf8'));
  if (!read.ok) throw new Error(read.problem.message);
  const demo = read.document;

  const stages = setupsOf(demo).map(({ id }) => stageOf(demo, id));

  test('from places all over the house', () => {
    const tally = newTally();
    for (const stage of stages) {
      housePlaces(demo).forEach((place, index) => {
        const view = index % 29 === 0 ? viewFromSeat(demo, stage.setup, place.id) : null;
        if (view) compare(stage, view, { spots: 60, seed: index + 1 }, tally);
      });
    }
    expect(tally.wrong).toEqual([]);
    expect(tally.met).toBeGreaterThan(200);
  });

  test('from each player', () => {
    const tally = newTally();
    for (const stage of stages) {
      for (const player of inSetup(demo, stage.setup, 'player')) {
        const view = viewFromPlayer(demo, stage.setup, player.id);
        if (view) compare(stage, view, { spots: 60, seed: 7 }, tally);
      }
    }
    expect(tally.wrong).toEqual([]);
    expect(tally.met).toBeGreaterThan(150);
  });
});

const seeds = fc.integer({ min: 1, max: 1_000_000 });

test('random stages, crowded until things run through one another, from seats anywhere and from players', () => {
  let [asked, met] = [0, 0];
  fc.assert(
    fc.property(seeds, fc.integer({ min: 1, max: 30 }), (seed, items) => {
      const { document, seats, players } = randomStage(seed, items);
      const stage = stageOf(document, SETUP);
      const views = [
        ...seats.map((id) => viewFromSeat(document, SETUP, id)),
        ...players.slice(0, 1).map((id) => viewFromPlayer(document, SETUP, id)),
      ];
      const tally = newTally();
      for (const view of views) if (view) compare(stage, view, { spots: 40, seed }, tally);
      expect(tally.wrong).toEqual([]);
      asked += tally.asked;
      met += tally.met;
    }),
    { numRuns: 40 },
  );
  console.log(`${asked} spots compared, something met at ${met}`);
  expect(met).toBeGreaterThan(1000);
});
