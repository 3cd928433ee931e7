/** A platform with very many things on it, for the benchmarks of the window. */

import type { Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { aDocument, aPlatform, aSeat, aStand } from '../helpers/build.ts';

const COLUMNS = 50;
const PITCH = 1000;

/** Half of them chairs, half of them stands, in rows of fifty. */
export function manyItems(count: number): Document {
  const rows = Math.ceil(count / COLUMNS);
  const half = (COLUMNS * PITCH) / 2 + PITCH;
  const outline = [
    { x: -half, y: 0 },
    { x: half, y: 0 },
    { x: half, y: (rows + 1) * PITCH },
    { x: -half, y: (rows + 1) * PITCH },
  ];
  const items = Array.from({ length: count }, (_, index) => {
    const x = ((index % COLUMNS) - (COLUMNS - 1) / 2) * PITCH;
    const y = (Math.floor(index / COLUMNS) + 1) * PITCH;
    return index % 2 === 0
      ? aSeat({ id: asId(`seat-${index + 1}`), x, y })
      : aStand({ id: asId(`stand-${index + 1}`), x, y });
  });
  return aDocument(aPlatform({ outline }), ...items);
}
