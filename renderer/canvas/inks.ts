/**
 * How the drawing's printed colours look on the screen. By day the screen shows the very colours of the paper; by
 * night their lightness is mirrored (in OKLab, so hue and colourfulness stay) between the night sheet and chalk.
 */

export type InkMapping = (colour: string) => string;

export const dayInks: InkMapping = (colour) => colour;

/** Lightness of the night sheet (paper white becomes this) and of chalk (black becomes this). */
const NIGHT_SHEET = 0.235;
const CHALK = 0.93;

const known = new Map<string, string>();

export const nightInks: InkMapping = (colour) => {
  const before = known.get(colour);
  if (before !== undefined) return before;
  const mirrored = mirrorLightness(colour);
  known.set(colour, mirrored);
  return mirrored;
};

type Three = readonly [number, number, number];

function mirrorLightness(colour: string): string {
  const channels = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(colour);
  if (!channels) return colour;
  const [, red = '0', green = '0', blue = '0'] = channels;
  const linear: Three = [linearOf(red), linearOf(green), linearOf(blue)];
  const [lightness, a, b] = toLab(linear);
  const mirrored = CHALK - lightness * (CHALK - NIGHT_SHEET);
  // Strong colours lose some strength, or they would glow on the dark sheet.
  return hexOf(toLinear([mirrored, a * 0.85, b * 0.85]));
}

function linearOf(pair: string): number {
  const value = parseInt(pair, 16) / 255;
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
}

/** OKLab of linear sRGB, with the matrices its author published (B. Ottosson, 2020). */
function toLab([r, g, b]: Three): Three {
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

function toLinear([lightness, a, b]: Three): Three {
  const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  return [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ];
}

function hexOf(linear: Three): string {
  return `#${linear.map(pairOf).join('')}`;
}

function pairOf(linear: number): string {
  const clipped = Math.min(1, Math.max(0, linear));
  const value = clipped <= 0.0031308 ? clipped * 12.92 : 1.055 * clipped ** (1 / 2.4) - 0.055;
  return Math.round(value * 255)
    .toString(16)
    .padStart(2, '0');
}
