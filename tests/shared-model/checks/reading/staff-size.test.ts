import { describe, expect, it } from 'vitest';
import { judgeStaff } from '#model/checks/reading/staff-size.ts';
import { readingFindings } from '#model/checks/reading/findings.ts';
import { asId } from '#model/document/ids.ts';
import { documentOf } from '#model/document/document.ts';
import { aDocument, aPdf, aPlayer, aScore, aStand, SETUP, SIDE } from '../../../helpers/build.ts';

// Source: MOLA, Guidelines for Music Preparation, 2017 edition, p. 5, as quoted: 7.5 mm most readable; 7.0 mm may do
// for winds on their own stand, less so for a shared one; under 7.0 unacceptable; over 8.5 to be avoided.
describe('the librarians’ guideline', () => {
  it.each([
    [6.9, 'tooSmall', 'tooSmall'],
    [7.0, 'small', 'smallForTwo'],
    [7.49, 'small', 'smallForTwo'],
    [7.5, 'good', 'good'],
    [8.5, 'good', 'good'],
    [8.6, 'tooLarge', 'tooLarge'],
    [null, 'unknown', 'unknown'],
  ] as const)('%s mm: %s for one, %s for two', (size, alone, shared) => {
    expect(judgeStaff(size, false)).toBe(alone);
    expect(judgeStaff(size, true)).toBe(shared);
  });
});

describe('reading.staff', () => {
  const one = (staffSize: number | null) =>
    aDocument(
      aPlayer({ y: 2700 }),
      aStand({ lip: 1000, sides: [{ ...SIDE, staffSize, reader: asId('player-1') }] }),
    );
  const two = (staffSize: number) =>
    aDocument(
      aPlayer({ y: 2900 }),
      aPlayer({ id: 'player-2', y: 1100, facing: 180 }),
      aStand({
        facing: 180,
        form: 'backToBack',
        lip: 1000,
        sides: [
          { ...SIDE, staffSize, reader: asId('player-1') },
          { ...SIDE, staffSize, reader: asId('player-2') },
        ],
      }),
    );
  const staves = (document: ReturnType<typeof one>) =>
    readingFindings(document, SETUP).filter(({ code }) => code === 'reading.staff');

  it('goes by the printed part where the stand says nothing, and by the stand where it does', () => {
    const printed = { players: [asId<'player'>('player-1')], pdfs: [aPdf({ staffSize: 6.5 })] };
    const withPart = (staffSize: number | null) =>
      documentOf([...one(staffSize).records.values(), aScore(printed)]);
    expect(staves(withPart(null))).toMatchObject([{ severity: 'caution', measured: 6.5, required: 7 }]);
    expect(staves(withPart(7.5))).toEqual([]);
    expect(staves(one(null))).toEqual([]);
  });

  it('flags 6.9 mm, takes 7.0 mm from one reader and not from two, and remarks on 8.6 mm', () => {
    expect(staves(one(6.9))).toMatchObject([
      { severity: 'caution', measured: 6.9, required: 7, subjects: ['player-1', 'stand-1'] },
    ]);
    expect(staves(one(7))).toEqual([]);
    expect(staves(two(7))).toMatchObject([
      { severity: 'caution', measured: 7, required: 7.5, subjects: ['player-1', 'stand-1'] },
      { severity: 'caution', measured: 7, required: 7.5, subjects: ['player-2', 'stand-1'] },
    ]);
    expect(staves(two(7.5))).toEqual([]);
    expect(staves(one(7.5))).toEqual([]);
    expect(staves(one(8.6))).toMatchObject([{ severity: 'note', measured: 8.6, required: 8.5 }]);
    expect(staves(one(null))).toEqual([]);
  });
});
