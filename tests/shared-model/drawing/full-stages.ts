/** Thirty players at thirty stands, as orchestras sit. */

import type { Document } from '#model/document/document.ts';
import { facingTowards } from '#model/geometry/frame.ts';
import { aDocument, aPlatform, aPlayer, aStand } from '../../helpers/build.ts';

const outline = (half: number, depth: number) => [
  { x: -half, y: 0 },
  { x: half, y: 0 },
  { x: half, y: depth },
  { x: -half, y: depth },
];

const NAMES = ['Violin', 'Second violin', 'Viola', 'Cello'];

/** In four arcs of 6, 8, 8 and 8 about the conductor, on 14 by 9 m. */
export const arcs: Document = aDocument(
  aPlatform({ outline: outline(7000, 9000) }),
  ...[6, 8, 8, 8].flatMap((count, row) =>
    Array.from({ length: count }, (_, place) => {
      const angle = ((12 + (156 * place) / (count - 1)) * Math.PI) / 180;
      const radius = 2200 + 1350 * row;
      const at = (reach: number) => ({
        x: Math.round(reach * Math.cos(angle)),
        y: Math.round(1500 + reach * Math.sin(angle)),
      });
      const facing = facingTowards(at(radius), { x: 0, y: 1500 });
      const id = `${row}-${place}`;
      return [
        aPlayer({ id: `player-${id}`, ...at(radius), facing, name: `${NAMES[row] ?? ''} ${place + 1}` }),
        aStand({ id: `stand-${id}`, ...at(radius - 700), facing: facing + 180 }),
      ];
    }).flat(),
  ),
);

/** Six side by side in ten rows of players and stands in turn: hardly any floor is free. */
export const grid: Document = aDocument(
  aPlatform({ outline: outline(4000, 6000) }),
  ...Array.from({ length: 30 }, (_, index) => {
    const [x, y] = [((index % 6) - 2.5) * 1200, 750 + Math.floor(index / 6) * 1000];
    return [
      aPlayer({ id: `player-${index}`, x, y: y + 400, name: `Player ${index + 1}` }),
      aStand({ id: `stand-${index}`, x, y, facing: 180 }),
    ];
  }).flat(),
);
