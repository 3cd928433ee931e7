import { describe, expect, it } from 'vitest';
import { createMeasure, loadFaces, REPLACEMENT, runsOf } from '../../../electron/services/fonts.ts';

const faces = loadFaces();
const measure = createMeasure();

describe('runsOf', () => {
  const cut = (text: string) =>
    runsOf(faces, text, 'regular').runs.map(({ face, text: run }) => [face.name, run]);

  it('sets a text in the family as far as that goes, the rest in the wide face', () => {
    expect(cut('Clarinet in B♭')).toEqual([
      ['AtkinsonHyperlegibleNext-Regular', 'Clarinet in B'],
      ['DejaVuSans', '♭'],
    ]);
  });

  it('keeps a foreign name with its spaces in one run', () => {
    expect(cut('Анна К. Чайка')).toEqual([['DejaVuSans', 'Анна К. Чайка']]);
  });

  it('replaces visibly what no face has, and says so', () => {
    const { runs, missing } = runsOf(faces, '中é文', 'bold');
    expect(missing).toEqual(['中', '文']);
    expect(runs.map(({ text }) => text).join('')).toBe(`${REPLACEMENT}é${REPLACEMENT}`);
  });

  it('has every character of the texts that the drawings themselves print', () => {
    const own = 'ABCabc 0123456789 ’–×°…%☐·;:,.()/+"\'';
    for (const weight of ['regular', 'bold'] as const) expect(runsOf(faces, own, weight).missing).toEqual([]);
  });
});

describe('createMeasure', () => {
  it('measures by the advance widths in the font', () => {
    // Widths of A (626) and V (593) of 1000 units, kerned by -40: read from the file with fontkit by hand.
    expect(measure('AV', 10, 'regular')).toBeCloseTo(11.79, 9);
  });

  it('grows in step with the size, and adds up over runs', () => {
    expect(measure('Viola', 6, 'regular')).toBeCloseTo(2 * measure('Viola', 3, 'regular'), 9);
    expect(measure('B♭', 3, 'bold')).toBeCloseTo(measure('B', 3, 'bold') + measure('♭', 3, 'bold'), 9);
    expect(measure('', 3, 'regular')).toBe(0);
  });
});
