import { describe, expect, it } from 'vitest';
import { PALETTES } from '#model/drawing/palette.ts';
import { bandMark, bandOf, BANDS, SIGHT_BANDS } from '#model/drawing/sight-bands.ts';
import { contrast, DEFICIENCIES, difference, lab, lightness, linear, seenWith } from './colour-vision.ts';

describe('the yardstick itself', () => {
  it('gives the published CIELAB of sRGB red', () => {
    // From memory: L* 53.24, a* 80.09, b* 67.20 under D65.
    const [l, a, b] = lab(linear('#ff0000'));
    expect([l, a, b].map((value) => Math.round(value))).toEqual([53, 80, 67]);
  });

  it('gives 21 for black on white, as WCAG says', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  });
});

describe('the sight bands', () => {
  const pairs = SIGHT_BANDS.flatMap((a) => SIGHT_BANDS.filter((b) => b > a).map((b) => [a, b] as const));
  // A just noticeable difference is about 2.3 in CIE 1976 (from memory); seats are small, so ask for eight times that.
  const LEAST = 18;

  it.each(Object.entries(DEFICIENCIES))('can be told apart with %s', (_, matrix) => {
    for (const [a, b] of pairs) {
      const [p, q] = [seenWith(matrix, linear(BANDS[a].fill)), seenWith(matrix, linear(BANDS[b].fill))];
      expect(difference(p, q), `bands ${a} and ${b}`).toBeGreaterThan(LEAST);
    }
  });

  it('can be told apart in grey, in order', () => {
    const greys = BANDS.map(({ fill }) => lightness(linear(fill)));
    greys.slice(1).forEach((grey, index) => expect(grey - (greys[index] ?? 0)).toBeGreaterThan(14));
  });

  it('carry a mark of their own that stands out against the fill', () => {
    const marks = SIGHT_BANDS.map((band) => JSON.stringify(bandMark(band, { x: 0, y: 0 }, 1)));
    expect(new Set(marks).size).toBe(5);
    // WCAG 2.2, 1.4.11: 3:1 for graphics.
    for (const { fill, mark } of BANDS) expect(contrast(fill, mark)).toBeGreaterThan(3);
  });

  it('are cut at 25, 50, 75 and 90 %', () => {
    // A published sightline study of the auditorium of the India International Convention & Expo Centre: seats are bad
    // under 25 %, reduced to 50, acceptable to 75, good to 90, excellent over 89.99 % of the targets visible.
    expect([0, 0.2499, 0.25, 0.4999, 0.5, 0.7499, 0.75, 0.8999, 0.9, 1].map(bandOf)).toEqual([
      0, 0, 1, 1, 2, 2, 3, 3, 4, 4,
    ]);
  });
});

describe.each(Object.entries(PALETTES))('the %s palette', (_, palette) => {
  it.each(['ink', 'faint', 'warning', 'selection'] as const)(
    'prints %s readably on every ground',
    (colour) => {
      // WCAG 2.2, 1.4.3: 4.5:1 for text.
      for (const ground of [palette.paper, palette.platform, palette.riser]) {
        expect(contrast(palette[colour], ground), ground).toBeGreaterThan(4.5);
      }
    },
  );

  it.each(['houseSeatLine', 'metal', 'desk', 'playerHead', 'cable', 'building', 'reach', 'route'] as const)(
    'shows %s against paper and platform',
    (colour) => {
      // WCAG 2.2, 1.4.11: 3:1 for graphics.
      expect(contrast(palette[colour], palette.paper)).toBeGreaterThan(3);
      if (colour !== 'houseSeatLine') expect(contrast(palette[colour], palette.platform)).toBeGreaterThan(3);
    },
  );

  it('shows pages on desks, and ink on wood and players', () => {
    expect(contrast(palette.ink, palette.wood)).toBeGreaterThan(4.5);
    expect(contrast(palette.ink, palette.player)).toBeGreaterThan(4.5);
    expect(contrast(palette.playerHead, palette.player)).toBeGreaterThan(3);
    // The lip says on which side the reader is.
    expect(contrast(palette.ink, palette.page)).toBeGreaterThan(3);
    // On paper the platform is as white as the pages, which lie on a dark desk.
    if (palette !== PALETTES.print)
      expect(contrast(palette.page, palette.platform)).toBeGreaterThan(palette === PALETTES.dark ? 3 : 1);
  });
});
