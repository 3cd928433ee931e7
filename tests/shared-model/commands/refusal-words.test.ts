import { placeAt } from '#model/commands/move.ts';
import { setFields } from '#model/commands/set-fields.ts';
import { asId } from '#model/document/ids.ts';
import { describe, expect, it } from 'vitest';
import { refusalWords } from '#model/commands/refusal-words.ts';
import { aDocument, aStand } from '../../helpers/build.ts';

const refused = (lip: number): string => {
  const outcome = setFields(aDocument(aStand()), { ids: [asId<'stand'>('stand-1')], fields: { lip } });
  if (outcome.ok) throw new Error('was not refused');
  return outcome.reason;
};

describe('a spot too far off', () => {
  it('is told with the limit in the units that are shown', () => {
    const outcome = placeAt(aDocument(aStand()), { id: 'stand-1', x: 999_999, y: 0 });
    const reason = outcome.ok ? '' : outcome.reason;
    expect(refusalWords(reason, 'metric')).toContain('more than 50000 mm from the platform');
    // 50 m are 164 ft 0.5 in (1 in = 25.4 mm).
    expect(refusalWords(reason, 'imperial')).toContain('more than about 164\'-0 1/2" from the platform');
  });
});

describe('a refused length', () => {
  it('is told in feet and inches where these are shown, without a millimetre', () => {
    const words = refusalWords(refused(9000), 'imperial');
    // 9000 mm are 29 ft 6.33 in (1 in = 25.4 mm).
    expect(words).toContain('29\'-6 1/4" is not allowed');
    expect(words).not.toMatch(/\bmm\b|9000/);
    expect(refusalWords(refused(-20.5), 'imperial')).not.toMatch(/\bmm\b|20\.5/);
  });

  it('stays in millimetres where these are shown', () => {
    expect(refusalWords(refused(9000), 'metric')).toBe(refused(9000));
  });

  it('stays in millimetres for the staves, which are typed so everywhere', () => {
    const staves = 'stand 3, sides[0].staffSize: 200 is not allowed; give a length from 1 to 100 mm.';
    expect(refusalWords(staves, 'imperial')).toBe(staves);
  });

  it('leaves other refusals as they are', () => {
    const other = 'The platform cannot be removed: every file has exactly one.';
    expect(refusalWords(other, 'imperial')).toBe(other);
  });
});
