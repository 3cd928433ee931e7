/** Colours as others see them, for checking palettes. */

export type Rgb = readonly [number, number, number];
type Matrix = readonly [Rgb, Rgb, Rgb];

/**
 * Severity 1.0 in linear RGB: Machado, Oliveira, Fernandes, "A Physiologically-based Model for Simulation of Color
 * Vision Deficiency", IEEE TVCG 15 (2009) 1291-1298, as quoted in R's prismatic and Python's colour-science.
 */
export const DEFICIENCIES: Readonly<Record<'protanopia' | 'deuteranopia' | 'tritanopia', Matrix>> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** sRGB to linear light (IEC 61966-2-1). */
export function linear(hex: string): Rgb {
  const channel = (at: number): number => {
    const value = parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

export function seenWith(matrix: Matrix, [r, g, b]: Rgb): Rgb {
  const row = ([x, y, z]: Rgb): number => Math.min(1, Math.max(0, x * r + y * g + z * b));
  return [row(matrix[0]), row(matrix[1]), row(matrix[2])];
}

/** CIELAB under D65. */
export function lab([r, g, b]: Rgb): Rgb {
  const f = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : (24389 / 27) * (t / 116) + 16 / 116);
  const x = f((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047);
  const y = f(0.2126729 * r + 0.7151522 * g + 0.072175 * b);
  const z = f((0.0193339 * r + 0.119192 * g + 0.9503041 * b) / 1.08883);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** CIE 1976 colour difference. */
export function difference(a: Rgb, b: Rgb): number {
  const [p, q] = [lab(a), lab(b)];
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}

/** What a photocopier leaves: the lightness alone. */
export function lightness(colour: Rgb): number {
  return lab(colour)[0];
}

/** WCAG 2.2 contrast ratio. */
export function contrast(a: string, b: string): number {
  const luminance = (hex: string): number => {
    const [r, g, b] = linear(hex);
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [low, high] = [luminance(a), luminance(b)].sort((p, q) => p - q);
  return ((high ?? 0) + 0.05) / ((low ?? 0) + 0.05);
}
