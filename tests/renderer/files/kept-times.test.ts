import { expect, it } from 'vitest';
import { keptTimes } from '../../../renderer/files/kept-times.ts';

const at = (savedAt: string) => ({ savedAt });

it('shows seconds only where two would read the same without them', () => {
  const kept = [at('2027-02-13T19:04:58'), at('2027-02-13T19:04:07'), at('2027-02-13T18:00:30')];
  expect(keptTimes(kept, 'en-GB')).toEqual([
    '13 Feb 2027, 19:04:58',
    '13 Feb 2027, 19:04:07',
    '13 Feb 2027, 18:00',
  ]);
  expect(keptTimes(kept.slice(1), 'en-GB')).toEqual(['13 Feb 2027, 19:04', '13 Feb 2027, 18:00']);
});
