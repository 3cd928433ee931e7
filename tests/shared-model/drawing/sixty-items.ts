/** A full stage. */

import type { Document } from '#model/document/document.ts';
import { aDocument, aPlatform, aPlayer, aRiser, aSeatBlock, aStand } from '../../helpers/build.ts';

/** Sixty items side by side, as on a full stage. */
export const sixty: Document = aDocument(
  aPlatform({
    outline: [
      { x: -7000, y: 0 },
      { x: 7000, y: 0 },
      { x: 7000, y: 9000 },
      { x: -7000, y: 9000 },
    ],
  }),
  aSeatBlock({ rows: 14, seatsPerRow: 22 }),
  aRiser({ x: 0, y: 7500, width: 9000, depth: 2000 }),
  ...Array.from({ length: 30 }, (_, index) => {
    const [x, y] = [((index % 10) - 4.5) * 1250, 1200 + Math.floor(index / 10) * 2400];
    return [
      aPlayer({
        id: `player-${index + 1}`,
        name: `Player with a name ${index + 1}`,
        x,
        y: y + 700,
        chair: { model: 'orchestra-chair', height: 450 },
      }),
      aStand({ id: `stand-${index + 1}`, x, y }),
    ];
  }).flat(),
);
