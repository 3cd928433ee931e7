/** Single places of the house seen from above: a wheelchair, somebody standing, a camera on its legs. */

import type { Place, Point } from '../../document/records.ts';
import type { Affine } from '../affine.ts';
import { centredRectangle, ellipse, polygon, polyline, roundedRectangle, type Path } from '../outline.ts';
import type { Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { paint, pen } from './context.ts';

export interface PlaceLook {
  readonly fill: string;
  readonly line: string;
}

/** In the place's own frame: it looks along -y. */
export function placeSymbol(use: Place['use'], map: Affine, look: PlaceLook): Primitive[] {
  const { body, lines } = SYMBOLS[use];
  return [
    ...lines.map((path) => paint(map, path, pen(look.line, WEIGHT.fine))),
    paint(map, body, { fill: look.fill, ...pen(look.line, WEIGHT.thin) }),
  ];
}

/** Corners of a box round the symbol, in the place's own frame. */
export function placeOutline(use: Place['use']): Point[] {
  const { body, lines } = SYMBOLS[use];
  // Control points lie outside what they bend, so their box holds the whole symbol.
  return [body, ...lines].flat().flatMap((item): Point[] => {
    if (item[0] === 'Z') return [];
    if (item[0] !== 'C') return [{ x: item[1], y: item[2] }];
    return [
      { x: item[1], y: item[2] },
      { x: item[3], y: item[4] },
      { x: item[5], y: item[6] },
    ];
  });
}

interface Symbol {
  readonly body: Path;
  readonly lines: readonly Path[];
}

/** Footprint of an occupied wheelchair, about 700 x 1200 mm (common practice, no source). */
const WHEELCHAIR: Symbol = {
  body: roundedRectangle({ x: -230, y: -230, width: 460, height: 460 }, 60),
  lines: [
    roundedRectangle({ x: -350, y: -280, width: 70, height: 600 }, 35),
    roundedRectangle({ x: 280, y: -280, width: 70, height: 600 }, 35),
    polyline([
      { x: -160, y: -230 },
      { x: -160, y: -520 },
      { x: 160, y: -520 },
      { x: 160, y: -230 },
    ]),
    polyline([
      { x: -230, y: 230 },
      { x: -230, y: 400 },
    ]),
    polyline([
      { x: 230, y: 230 },
      { x: 230, y: 400 },
    ]),
  ],
};

const STANDING: Symbol = {
  body: ellipse({ x: 0, y: 0 }, 240, 150),
  // The rail or wall that he leans on is not known; a stroke before him says which way he looks.
  lines: [
    polyline([
      { x: -110, y: -260 },
      { x: 0, y: -330 },
      { x: 110, y: -260 },
    ]),
  ],
};

const CAMERA: Symbol = {
  body: polygon([
    { x: -130, y: 190 },
    { x: -130, y: -120 },
    { x: -60, y: -120 },
    { x: -130, y: -260 },
    { x: 130, y: -260 },
    { x: 60, y: -120 },
    { x: 130, y: -120 },
    { x: 130, y: 190 },
  ]),
  lines: [
    polyline([
      { x: 0, y: 0 },
      { x: 0, y: -420 },
    ]),
    polyline([
      { x: -380, y: 240 },
      { x: 0, y: 0 },
      { x: 380, y: 240 },
    ]),
    centredRectangle(120, 60, { x: 0, y: 220 }),
  ],
};

const SYMBOLS: Readonly<Record<Place['use'], Symbol>> = {
  wheelchair: WHEELCHAIR,
  standing: STANDING,
  camera: CAMERA,
};
