import { PALETTES } from '#model/drawing/palette.ts';
import { bounds } from '#model/drawing/bounds.ts';
import type { MeasureText } from '#model/drawing/primitives.ts';
import { describe, expect, it } from 'vitest';
import {
  closer,
  isSameLook,
  planeAt,
  shifted,
  WHOLE,
  type SectionLook,
} from '../../../renderer/canvas/section-look.ts';
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
      const picture = sectionPicture(request, { size: pane, look: WHOLE, fit: null });
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
    ].map((pane) => sectionPicture(request, { size: pane, look: WHOLE, fit: null }));
    expect(narrow?.pagePixels).toBeLessThan(wide?.pagePixels ?? 0);
    expect(sectionPicture(request, { size: { width: 60, height: 30 }, look: WHOLE, fit: null })).toBe(null);
  });

  it('keeps the fit that it is given, and is nothing without the player it leads to', () => {
    const pane = { width: 840, height: 230 };
    const fit = { scale: 123, pagePixels: 4 };
    expect(sectionPicture(request, { size: pane, look: WHOLE, fit })).toMatchObject({ ...fit, fit });
    const gone = { ...request, focus: { kind: 'player', player: 'player-9' as never } } as const;
    expect(sectionPicture(gone, { size: pane, look: WHOLE, fit: null })).toBe(null);
  });
});

describe('looking closer at the section', () => {
  const pane = { width: 560, height: 200 };
  const shown = (look: SectionLook) => {
    const picture = sectionPicture(request, { size: pane, look, fit: null });
    if (!picture) throw new Error('nothing was drawn');
    return picture;
  };

  it('keeps what is under the pointer there, and letters as large as they are', () => {
    const whole = shown(WHOLE);
    for (const pixel of [
      { x: 280, y: 100 },
      { x: 120, y: 160 },
    ]) {
      const spot = planeAt(whole, pixel);
      const near = shown(closer(WHOLE, whole, { pane, pixel, factor: 3 }));
      expect(near.scale).toBeCloseTo(whole.scale / 3, 9);
      expect(near.pagePixels).toBe(whole.pagePixels);
      const there = planeAt(near, pixel);
      expect(there.x).toBeCloseTo(spot.x, 6);
      expect(there.y).toBeCloseTo(spot.y, 6);
    }
  });

  it('goes along with the hand, and not beyond what there is to see', () => {
    const middle = { x: 280, y: 100 };
    const close = closer(WHOLE, shown(WHOLE), { pane, pixel: middle, factor: 4 });
    const before = shown(close);
    const moved = shown(shifted(close, before, { x: 30, y: -20 }));
    const [from, to] = [planeAt(before, middle), planeAt(moved, { x: 310, y: 80 })];
    expect(to.x).toBeCloseTo(from.x, 6);
    expect(to.y).toBeCloseTo(from.y, 6);
    const lost = shown(shifted(close, before, { x: 1e6, y: 1e6 }));
    const box = bounds(lost.children, measure);
    if (!box) throw new Error('nothing was drawn');
    expect(box.x * lost.pagePixels).toBeLessThan(pane.width);
    expect((box.y + box.height) * lost.pagePixels).toBeGreaterThan(0);
    expect(isSameLook(shown(lost.look).look, lost.look)).toBe(true);
  });

  it('farther off it is the whole again, which cannot be moved', () => {
    const whole = shown(WHOLE);
    const close = closer(WHOLE, whole, { pane, pixel: { x: 10, y: 10 }, factor: 2 });
    expect(closer(close, shown(close), { pane, pixel: { x: 300, y: 10 }, factor: 0.4 })).toEqual(WHOLE);
    expect(shifted(WHOLE, whole, { x: 50, y: 50 })).toEqual(WHOLE);
    expect(closer(close, shown(close), { pane, pixel: { x: 0, y: 0 }, factor: 1000 }).zoom).toBe(16);
  });
});
