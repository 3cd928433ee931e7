/** Reads figures as people write them: "1200", "1 200", "1.200,5", "0.5"; in the manner of the language that is spoken. */

import { language } from '#model/words/catalogue.ts';

export interface Figure {
  readonly value: number;
  /** How much of the text it takes. */
  readonly length: number;
  /**
   * Set where three digits behind a point or comma may be thousands or thousandths: "1.200". `value` is then what the
   * spoken language says, and this is the other reading.
   */
  readonly otherwise: number | null;
}

/** Thousands parted by spaces (narrow and no-break ones too), or digits with points and commas between. */
const FIGURE = /^(?:\d{1,3}(?:[ \u00a0\u2009\u202f]\d{3})+(?:[.,]\d+)?|\d+(?:[.,]\d+)*|[.,]\d+)(?!\d)/;

const GROUPS = /^[1-9]\d{0,2}(?:([.,])\d{3})(?:\1\d{3})*$/;
const GROUPS_AND_DECIMALS = /^[1-9]\d{0,2}(?:\.\d{3})+,\d+$|^[1-9]\d{0,2}(?:,\d{3})+\.\d+$/;
const DECIMAL = /^\d*(?:[.,]\d+)?$/;

/** The figure with which the text begins; null: there is none, or nobody writes one so. */
export function figureAt(text: string): Figure | null {
  const raw = FIGURE.exec(text)?.[0];
  if (raw === undefined) return null;
  const plain = raw.replace(/\s/g, '');
  const { length } = raw;
  const mark = GROUPS.exec(plain)?.[1];
  if (mark !== undefined && plain === raw) return thousandsOr(plain, mark, length);
  if (GROUPS_AND_DECIMALS.test(plain)) {
    const decimals = Math.max(plain.lastIndexOf('.'), plain.lastIndexOf(','));
    const value = Number(`${digitsOf(plain.slice(0, decimals))}.${plain.slice(decimals + 1)}`);
    return { value, length, otherwise: null };
  }
  return DECIMAL.test(plain) ? { value: decimal(plain), length, otherwise: null } : null;
}

/** The whole text as one figure; null: it is none, or where three digits seem to be thousands they may be decimals. */
export function plainFigure(text: string): number | null {
  const figure = figureAt(text);
  if (!figure || figure.length < text.length) return null;
  return figure.otherwise === null || figure.otherwise > figure.value ? figure.value : null;
}

function thousandsOr(plain: string, mark: string, length: number): Figure {
  const thousands = Number(digitsOf(plain));
  // Two groups are thousands in every language: "1.200.000".
  if (plain.split(mark).length > 2) return { value: thousands, length, otherwise: null };
  return partsThousands(mark)
    ? { value: thousands, length, otherwise: decimal(plain) }
    : { value: decimal(plain), length, otherwise: thousands };
}

/** German parts thousands by a point, English by a comma. */
function partsThousands(mark: string): boolean {
  return mark === (language() === 'de' ? '.' : ',');
}

function digitsOf(text: string): string {
  return text.replace(/[.,]/g, '');
}

function decimal(plain: string): number {
  return Number(plain.replace(',', '.'));
}
