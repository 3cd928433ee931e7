import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayInks, nightInks } from '../../../renderer/canvas/inks.ts';

/** Relative luminance of WCAG 2.2, success criterion 1.4.3. */
function luminance(colour: string): number {
  const channel = (from: number): number => {
    const value = parseInt(colour.slice(from, from + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

const contrast = (a: string, b: string): number => {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
};

const grey = (value: number): string => `#${Math.round(value).toString(16).padStart(2, '0').repeat(3)}`;

describe('inks', () => {
  it('shows the paper as it is by day', () => {
    expect(dayInks('#123456')).toBe('#123456');
  });

  it('mirrors lightness by night: the darker ink becomes the lighter', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 255 }), fc.integer({ min: 0, max: 255 }), (a, b) => {
        if (Math.abs(a - b) < 4) return;
        const order = Math.sign(luminance(grey(a)) - luminance(grey(b)));
        expect(Math.sign(luminance(nightInks(grey(a))) - luminance(nightInks(grey(b))))).toBe(-order);
      }),
    );
  });

  it('keeps black on white readable', () => {
    // WCAG 2.2, success criterion 1.4.6: 7 to 1 for enhanced contrast.
    expect(contrast(nightInks('#000000'), nightInks('#ffffff'))).toBeGreaterThan(7);
  });

  it('gives a colour for every colour', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffff }), (value) => {
        expect(nightInks(`#${value.toString(16).padStart(6, '0')}`)).toMatch(/^#[0-9a-f]{6}$/);
      }),
    );
  });
});
