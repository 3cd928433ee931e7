import { PALETTES } from '#model/drawing/palette.ts';
import { bounds } from '#model/drawing/bounds.ts';
import type { MeasureText } from '#model/drawing/primitives.ts';
import { describe, expect, it } from 'vitest';
import { largestFitting, sectionPicture } from '../../../renderer/canvas/section-picture.ts';
import { aDocument, aPlayer, SETUP } from '../../helpers/build.ts';

const measure: MeasureText = (text, size) => text.length * size * 0.5;

const request = {
  document: aDocument(aPlayer()),
  setup: SETUP,
  cut: { through: 'centre' },
  focus: { kind: 'edge' },
  palette: PALETTES.light,
  measure,
  units: 'metric',
} as const;

describe('the largest scale that fits', () => {
  it('is the plain quotient where everything shrinks with it', () => {
    expect(
      largestFitting((scale) => ({ width: 20_000 / scale, height: 10 }), { width: 100, height: 50 }),
    ).toBe(200);
  });

  it('gives room to letters that do not shrink', () => {
    const boxAt = (scale: number) => ({ width: 20_000 / scale + 30, height: 10 });
    const scale = largestFitting(boxAt, { width: 100, height: 50 }) ?? 0;
    expect(boxAt(scale).width).toBeLessThanOrEqual(100);
    expect(boxAt(scale / 1.07).width).toBeGreaterThan(100);
  });

  it('is none where there is nothing to draw or letters alone take more', () => {
    expect(largestFitting(() => null, { width: 100, height: 50 })).toBe(null);
    expect(largestFitting(() => ({ width: 120, height: 10 }), { width: 100, height: 50 })).toBe(null);
    expect(largestFitting(() => ({ width: 1, height: 1 }), { width: 0, height: 0 })).toBe(null);
  });
});

describe('the section on the screen', () => {
  it('stays within its pane', () => {
    for (const pane of [
      { width: 840, height: 230 },
      { width: 600, height: 170 },
    ]) {
      const picture = sectionPicture(request, pane, null);
      const box = bounds(picture?.children ?? [], measure);
      if (!picture || !box) throw new Error('nothing was drawn');
      const { pagePixels } = picture;
      expect(box.x).toBeGreaterThanOrEqual(0);
      expect(box.y).toBeGreaterThanOrEqual(0);
      expect((box.x + box.width) * pagePixels).toBeLessThanOrEqual(pane.width);
      expect((box.y + box.height) * pagePixels).toBeLessThanOrEqual(pane.height);
    }
  });

  it('has smaller letters where room is short, and is nothing where there is none', () => {
    const [wide, narrow] = [
      { width: 840, height: 230 },
      { width: 300, height: 110 },
    ].map((pane) => sectionPicture(request, pane, null));
    expect(narrow?.pagePixels).toBeLessThan(wide?.pagePixels ?? 0);
    expect(sectionPicture(request, { width: 60, height: 30 }, null)).toBe(null);
  });

  it('keeps the fit that it is given, and is nothing without the player it leads to', () => {
    const pane = { width: 840, height: 230 };
    const fit = { scale: 123, pagePixels: 4 };
    expect(sectionPicture(request, pane, fit)).toMatchObject(fit);
    const gone = { ...request, focus: { kind: 'player', player: 'player-9' as never } } as const;
    expect(sectionPicture(gone, pane, null)).toBe(null);
  });
});
