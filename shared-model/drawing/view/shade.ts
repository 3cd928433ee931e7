/** Colours by orientation: a soft light from over the viewer's left shoulder, so that every picture is lit alike. */

import type { Vec3 } from '../../geometry/frame.ts';
import type { Palette } from '../palette.ts';
import type { Camera } from './camera.ts';

export interface Light {
  readonly towards: Vec3;
  /** What shadow turns colours to. */
  readonly shadow: string;
}

/** How much of the shadow's colour a face takes that looks straight away from the light. */
const DEEPEST = 0.42;

/** Steps of shade: coarse enough to stay calm. */
const STEPS = 24;

export function lightOf({ ahead, right }: Camera, palette: Palette): Light {
  const [left, back, up] = [0.42, 0.5, 0.76];
  return {
    towards: {
      x: -left * right.x - back * ahead.x,
      y: -left * right.y - back * ahead.y,
      z: up,
    },
    shadow: brightness(palette.paper) > brightness(palette.ink) ? palette.ink : palette.paper,
  };
}

/** The colour of a face whose normal, of length one, looks to the eye. */
export function lit(colour: string, normal: Vec3, { towards, shadow }: Light): string {
  const facing = normal.x * towards.x + normal.y * towards.y + normal.z * towards.z;
  const share = Math.round(((1 - facing) / 2) * STEPS) / STEPS;
  return mixed(colour, shadow, share * DEEPEST);
}

/** Colours are `#rrggbb`. */
export function mixed(from: string, to: string, share: number): string {
  const a = channelsOf(from);
  const b = channelsOf(to);
  const channel = (index: 0 | 1 | 2): string =>
    Math.round(a[index] + (b[index] - a[index]) * share)
      .toString(16)
      .padStart(2, '0');
  return `#${channel(0)}${channel(1)}${channel(2)}`;
}

/** From 0 to 765. */
export function brightness(colour: string): number {
  const [red, green, blue] = channelsOf(colour);
  return red + green + blue;
}

function channelsOf(colour: string): [number, number, number] {
  const value = Number.parseInt(colour.slice(1), 16);
  return [(value >> 16) & 255, (value >> 8) & 255, value & 255];
}
