import { formatFacing } from '#model/document/measures.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { facingWords, readFacing } from '../../../renderer/state/facing-input.ts';

const facingOf = (typed: string): number | string => {
  const reading = readFacing(typed);
  return reading.ok ? reading.facing : reading.problem;
};

describe('readFacing', () => {
  it.each([
    ['20', 20],
    ['-20', -20],
    ['\u221220°', -20],
    ['20 SR', -20],
    ['20° sl', 20],
    ['40° towards SL', 40],
    ['40 degrees to stage right', -40],
    ['7,5 SR', -7.5],
    ['0', 0],
    ['180', 180],
    ['house', 0],
    ['straight at the house', 0],
    ['Upstage', 180],
    ['towards stage left', 90],
    ['SR', -90],
  ])('reads %s', (typed, facing) => {
    expect(facingOf(typed)).toBeCloseTo(facing, 9);
  });

  it.each(['400', '-181', '200 SL', '99999999999'])('does not take %s for another direction', (typed) => {
    expect(facingOf(typed)).toBe('beyondHalfTurn');
  });

  it.each(['', 'twenty', '20 US', '-20 SR', '20 20', 'NaN', '1e2', '20 SL SR', '°', 'x'.repeat(1000)])(
    'does not guess at %s',
    (typed) => {
      expect(facingOf(typed)).toBe('unreadable');
    },
  );

  it('reads every direction that is shown', () => {
    fc.assert(
      fc.property(fc.integer({ min: -179, max: 180 }), (facing) => {
        expect(facingOf(facingWords(facing))).toBe(facing === 0 ? 0 : facing);
        expect(facingWords(facing)).toBe(formatFacing(facing));
      }),
    );
    expect(facingOf(facingWords(-12.5))).toBe(-12.5);
  });
});
