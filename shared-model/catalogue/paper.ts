/** Sizes of music paper, upright. */

import type { Millimetres } from '../document/records.ts';
import { t } from '../words/say.ts';
import { COMMON_PRACTICE, finder, type Model } from './sources.ts';

export interface PaperModel extends Model {
  readonly width: Millimetres;
  readonly height: Millimetres;
}

const ISO = 'ISO 216';
const JIS = 'JIS P 0138, from memory';
const ANSI = 'ANSI/ASME Y14.1, size in inches x 25.4';
const IN_USE = '9 x 12 and 10 x 13 in papers in use: music-preparation practitioner article';
const LIBRARIANS = 'least size asked for by the MOLA guidelines, 1993 edition: 9.5 x 12.5 in';
const INCH = 25.4;

const paper = (
  id: string,
  name: () => string,
  [width, height]: readonly [Millimetres, Millimetres],
  source: string,
): PaperModel => ({
  id,
  get name() {
    return name();
  },
  width,
  height,
  source,
});

const inches = (width: number, height: number): readonly [Millimetres, Millimetres] => [
  width * INCH,
  height * INCH,
];

export const PAPER_MODELS: readonly PaperModel[] = [
  paper('a4', () => 'A4', [210, 297], ISO),
  paper('a3', () => 'A3', [297, 420], ISO),
  paper('a5', () => 'A5', [148, 210], ISO),
  paper('b4', () => 'B4 (ISO)', [250, 353], ISO),
  paper('b4-jis', () => 'B4 (JIS)', [257, 364], JIS),
  paper('letter', () => 'Letter', inches(8.5, 11), ANSI),
  paper('tabloid', () => 'Tabloid', inches(11, 17), ANSI),
  paper('legal', () => 'Legal', inches(8.5, 14), COMMON_PRACTICE),
  paper('nine-by-twelve', () => t`9 x 12 in`, inches(9, 12), IN_USE),
  paper('ten-by-thirteen', () => t`10 x 13 in`, inches(10, 13), IN_USE),
  paper('orchestra-part', () => t`9.5 x 12.5 in`, inches(9.5, 12.5), LIBRARIANS),
];

export const paperModel = finder(PAPER_MODELS);
