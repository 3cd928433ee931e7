/** What is in view when a concert is opened. Figures of the layout are this program's own; no outside source. */

import { describe, expect, it } from 'vitest';
import { housePlaces } from '#model/document/seating.ts';
import { toScreen, type ViewSize } from '../../../../renderer/canvas/camera.ts';
import { firstLook, stageLook, wholeLook } from '#model/drawing/screen/first-look.ts';
import { aDocument, aPlatform, aPlayer, aSeatBlock, SETUP } from '../../../helpers/build.ts';

const usual: ViewSize = { width: 850, height: 676 };
const rows = aSeatBlock({ rows: 12, seatsPerRow: 16 });
const concert = aDocument(aPlatform(), aPlayer(), rows);

/** Rows whose seats the view's lower edge runs through, each 600 mm deep. */
function cutRows(view: ViewSize): number[] {
  const camera = firstLook(concert, SETUP, view);
  const depths = new Set(housePlaces(concert).map(({ y }) => y));
  const down = (y: number) => toScreen(camera, view, { x: 0, y }).y;
  return [...depths].filter((y) => down(y + 280) < view.height && down(y - 280) > view.height);
}

describe('the first look', () => {
  it('ends between two rows of the house', () => {
    for (const height of [430, 500, 560, 620, 676, 760]) expect(cutRows({ ...usual, height })).toEqual([]);
  });

  it('shows the first row when that leaves the platform nearly as large', () => {
    const camera = firstLook(concert, SETUP, usual);
    const first = Math.max(...housePlaces(concert).map(({ y }) => y));
    expect(toScreen(camera, usual, { x: 0, y: first }).y).toBeLessThan(usual.height);
    expect(camera.scale).toBeGreaterThan(0.7 * stageLook(concert, SETUP, usual).scale);
  });

  it('leaves the words round the platform their room, in a low view too', () => {
    for (const view of [usual, { width: 604, height: 458 }, { width: 604, height: 240 }]) {
      const camera = firstLook(concert, SETUP, view);
      const back = Math.max(...aPlatform().outline.map(({ y }) => y));
      expect(toScreen(camera, view, { x: 0, y: back }).y, `${view.height}`).toBeGreaterThan(40);
    }
  });
});

describe('everything', () => {
  it('has the storage places too, and no more room above them than they need', () => {
    const storage = { id: 'storage-1', kind: 'storage', name: 'Green room', x: 0, y: 8000 } as const;
    const stored = aDocument(aPlatform(), aPlayer(), rows, storage as never);
    const camera = wholeLook(stored, usual);
    const top = toScreen(camera, usual, { x: 0, y: 8450 }).y;
    expect(top).toBeGreaterThanOrEqual(20);
    expect(top).toBeLessThan(80);
  });
});
