/** Lengths and positions in the words of the trade, metric or imperial. */

import type { Concert, Millimetres, Point } from './records.ts';

export type Units = Concert['units'];

const INCH = 25.4;

/** "820 mm" or `2'-8 1/4"`. */
export function formatLength(length: Millimetres, units: Units): string {
  return units === 'metric' ? `${Math.round(length)} mm` : feetAndInches(length);
}

/** The same without the unit in metric, for tables whose heading names it. */
export function formatBare(length: Millimetres, units: Units): string {
  return units === 'metric' ? String(Math.round(length) || 0) : feetAndInches(length);
}

/** "820 SL, 1450 US": from the centre line towards stage left or right, from the front edge up- or downstage. */
export function formatPosition(point: Point, units: Units): string {
  return `${formatAcross(point.x, units)}, ${formatDepth(point.y, units)}`;
}

export function formatAcross(x: Millimetres, units: Units): string {
  return isZero(x, units) ? 'on centre' : `${formatBare(Math.abs(x), units)} ${x > 0 ? 'SL' : 'SR'}`;
}

export function formatDepth(y: Millimetres, units: Units): string {
  return isZero(y, units) ? 'at edge' : `${formatBare(Math.abs(y), units)} ${y > 0 ? 'US' : 'DS'}`;
}

/** "straight at the house", "20° towards SR", "upstage". */
export function formatFacing(facing: number): string {
  const turn = Math.round(((facing % 360) + 540) % 360) - 180;
  if (turn === 0) return 'straight at the house';
  if (Math.abs(turn) === 180) return 'upstage';
  return `${Math.abs(turn)}° towards ${turn > 0 ? 'SL' : 'SR'}`;
}

function isZero(length: Millimetres, units: Units): boolean {
  return Math.abs(length) < (units === 'metric' ? 0.5 : INCH / 8);
}

/** To the nearest quarter of an inch. */
function feetAndInches(length: Millimetres): string {
  const quarters = Math.round((Math.abs(length) / INCH) * 4);
  const feet = Math.floor(quarters / 48);
  const inches = Math.floor((quarters % 48) / 4);
  const fraction = ['', ' 1/4', ' 1/2', ' 3/4'][quarters % 4] ?? '';
  const sign = length < 0 && quarters > 0 ? '-' : '';
  return `${sign}${feet}'-${inches}${fraction}"`;
}
