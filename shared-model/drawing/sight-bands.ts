/**
 * The five bands of visible share as they look. Lightness runs from dark (hidden) to pale (seen), so the order
 * survives a photocopier and every colour vision; each band also has a mark of its own, a disc filled as far as the
 * window is seen, so that colour never stands alone.
 */

import type { SightBand } from '../checks/report.ts';
import type { Vec2 } from '../geometry/frame.ts';
import { t } from '../words/say.ts';
import { circle, slice, type Path } from './outline.ts';

export interface BandStyle {
  readonly fill: string;
  /** Of the mark: dark on pale, pale on dark. */
  readonly mark: string;
  readonly words: string;
  /** How much of the mark's disc is filled, in quarters. */
  readonly quarters: number;
}

export const BANDS: readonly [BandStyle, BandStyle, BandStyle, BandStyle, BandStyle] = [
  {
    fill: '#1d2c57',
    mark: '#ffffff',
    get words() {
      return t`under 25 % seen`;
    },
    quarters: 0,
  },
  {
    fill: '#4a6292',
    mark: '#ffffff',
    get words() {
      return t`25 to 50 %`;
    },
    quarters: 1,
  },
  {
    fill: '#8e9190',
    mark: '#14181c',
    get words() {
      return t`50 to 75 %`;
    },
    quarters: 2,
  },
  {
    fill: '#cdb65f',
    mark: '#14181c',
    get words() {
      return t`75 to 90 %`;
    },
    quarters: 3,
  },
  {
    fill: '#f6ecc0',
    mark: '#14181c',
    get words() {
      return t`over 90 % seen`;
    },
    quarters: 4,
  },
];

export const SIGHT_BANDS: readonly SightBand[] = [0, 1, 2, 3, 4];

/** The band of a visible share (0..1). A share on a limit belongs to the better band. */
export function bandOf(share: number): SightBand {
  if (share < 0.25) return 0;
  if (share < 0.5) return 1;
  if (share < 0.75) return 2;
  return share < 0.9 ? 3 : 4;
}

/** The filled part of a band's mark: a disc cut like a cake, clockwise from the top of the page. */
export function bandMark(band: SightBand, at: Vec2, radius: number): Path {
  const quarters = BANDS[band].quarters;
  if (quarters === 0) return [];
  return quarters === 4 ? circle(at, radius) : slice(at, radius, -90, -90 + 90 * quarters);
}

/** The rim of the mark. */
export function bandRim(at: Vec2, radius: number): Path {
  return circle(at, radius);
}
