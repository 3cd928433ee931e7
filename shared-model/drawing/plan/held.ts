/** Carried instruments from above, in the plain manner of a plan: where they are and which way they point. */

import type { InstrumentModel } from '../../catalogue/instruments.ts';
import { chain, mapPath, shift, turnAbout, type Affine } from '../affine.ts';
import { circle, ellipse, line, polygon, roundedRectangle, type Path } from '../outline.ts';
import type { Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { paint, pen, type PlanContext } from './context.ts';

/** In the player's frame (he looks along -y, +x is his left), put on the page by `map`. */
export function heldSymbol(context: PlanContext, map: Affine, model: InstrumentModel): Primitive[] {
  const { bodies, lines } = symbolOf(model);
  const { instrument, ink } = context.palette;
  return [
    ...lines.map((path) => paint(map, path, pen(instrument, WEIGHT.medium))),
    ...bodies.map((path) => paint(map, path, { fill: instrument, ...pen(ink, WEIGHT.hair) })),
  ];
}

interface Symbol {
  readonly bodies: readonly Path[];
  readonly lines: readonly Path[];
}

const NOTHING: Symbol = { bodies: [], lines: [] };

/** From the face of the player to before his chest. */
const FACE = 110;

function symbolOf(model: InstrumentModel): Symbol {
  switch (model.family) {
    case 'woodwind':
      return isTransverse(model) ? transverse(model) : straight(model);
    case 'brass':
      return model.held ? boxed(model) : flared(model);
    case 'bowed':
      return model.held ? onSpike(model) : onShoulder(model);
    case 'plucked':
      return fretted(model);
    case 'keyboard':
      return model.held ? boxed(model) : straight(model);
    case 'percussion':
      return { bodies: [circle({ x: 0, y: -300 }, 75)], lines: [] };
    case 'voice':
      return NOTHING;
  }
}

/** Flutes want far more room on the right than on the left. */
function isTransverse({ elbowRoom }: InstrumentModel): boolean {
  return elbowRoom.right >= elbowRoom.left + 100 && elbowRoom.right >= 250;
}

function transverse({ elbowRoom }: InstrumentModel): Symbol {
  return {
    bodies: [bar({ x: -elbowRoom.right - 180, y: -FACE - 24 }, { x: 110, y: -FACE - 24 }, 26)],
    lines: [],
  };
}

function straight({ ahead }: InstrumentModel): Symbol {
  return { bodies: [bar({ x: 0, y: -FACE }, { x: 0, y: -ahead }, 34)], lines: [] };
}

function flared({ ahead }: InstrumentModel): Symbol {
  const [narrow, wide, neck] = [16, 62, -ahead * 0.72];
  const bell = polygon([
    { x: -narrow, y: -FACE },
    { x: -narrow, y: neck },
    { x: -wide, y: -ahead },
    { x: wide, y: -ahead },
    { x: narrow, y: neck },
    { x: narrow, y: -FACE },
  ]);
  return { bodies: [bell], lines: [] };
}

/** Over the left collar bone, with the bow across it. */
function onShoulder({ ahead }: InstrumentModel): Symbol {
  const away = turnAbout(35, { x: 120, y: -60 });
  const body = ellipse({ x: 120, y: -0.42 * ahead }, 100, 0.3 * ahead);
  const neck = bar({ x: 120, y: -0.6 * ahead }, { x: 120, y: -ahead - 60 }, 24);
  return {
    bodies: [mapPath(away, body), mapPath(away, neck)],
    lines: [line({ x: -300, y: -0.62 * ahead }, { x: 330, y: -0.42 * ahead })],
  };
}

function onSpike({ held }: InstrumentModel): Symbol {
  if (!held) return NOTHING;
  const body = ellipse({ x: held.left, y: -held.ahead }, held.width / 2, held.depth / 2);
  const neck = bar({ x: held.left, y: -held.ahead }, { x: held.left + 60, y: -60 }, 40);
  return {
    bodies: [body, neck],
    lines: [line({ x: -420, y: -held.ahead - 40 }, { x: 280, y: -held.ahead - held.depth / 2 - 60 })],
  };
}

function fretted({ held, elbowRoom, ahead }: InstrumentModel): Symbol {
  const [width, depth] = [(held?.width ?? 400) * 0.6, held?.depth ?? 120];
  const at = { x: -60, y: -(held?.ahead ?? ahead * 0.7) };
  return {
    bodies: [
      bar({ x: at.x, y: at.y }, { x: 220 + elbowRoom.left, y: at.y - 60 }, 30),
      ellipse(at, width / 2, depth / 2),
    ],
    lines: [],
  };
}

function boxed({ held }: InstrumentModel): Symbol {
  if (!held) return NOTHING;
  const { left, ahead, width, depth } = held;
  return {
    bodies: [roundedRectangle({ x: left - width / 2, y: -ahead - depth / 2, width, height: depth }, 60)],
    lines: [],
  };
}

/** A straight thing from one point to another, `width` thick. */
export function bar(from: { x: number; y: number }, to: { x: number; y: number }, width: number): Path {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const angle = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  const home = roundedRectangle({ x: 0, y: -width / 2, width: length, height: width }, width / 3);
  return mapPath(chain(turnAbout(angle), shift(from.x, from.y)), home);
}
