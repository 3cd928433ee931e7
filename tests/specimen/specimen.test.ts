/** The sheet of the look in `assets/` is as the program draws it. After a wanted change: `SPECIMEN=new` writes it; look at it. */

import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { sheetToSvg } from '#model/drawing/to-svg.ts';
import { letteringOf } from '../../electron/services/svg-lettering.ts';
import { specimenSheet } from './specimen.ts';

const FILE = fileURLToPath(new URL('../../assets/specimen.svg', import.meta.url));

it('shows every symbol, colour, line and letter as it is drawn now', () => {
  const sheet = specimenSheet();
  const { lettering, missing } = letteringOf(sheet);
  expect([...missing]).toEqual([]);
  const drawn = sheetToSvg(sheet, lettering);
  if (process.env['SPECIMEN'] === 'new') writeFileSync(FILE, drawn);
  // Not by the matcher: nobody reads 300 kB of difference.
  const isSame = drawn === readFileSync(FILE, 'utf8');
  expect(isSame, 'assets/specimen.svg is what is drawn now').toBe(true);
});
