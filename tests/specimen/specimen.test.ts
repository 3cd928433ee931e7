/** The sheet of the look in `assets/` is as the program draws it. After a wanted change: vitest with `-u`, and look at it. */

import { expect, it } from 'vitest';
import { sheetToSvg } from '#model/drawing/to-svg.ts';
import { letteringOf } from '../../electron/services/svg-lettering.ts';
import { specimenSheet } from './specimen.ts';

it('shows every symbol, colour, line and letter as it is drawn now', async () => {
  const sheet = specimenSheet();
  const { lettering, missing } = letteringOf(sheet);
  expect([...missing]).toEqual([]);
  await expect(sheetToSvg(sheet, lettering)).toMatchFileSnapshot('../../assets/specimen.svg');
});
