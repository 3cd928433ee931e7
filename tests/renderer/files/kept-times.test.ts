import { afterEach, expect, it } from 'vitest';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { keptTimes, timeOfDay } from '../../../renderer/files/kept-times.ts';

afterEach(speakEnglish);

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

it('writes dates in the language of the window, whatever the system writes', () => {
  const kept = [at('2027-02-13T18:00:30')];
  speakFrom('de', {});
  expect(keptTimes(kept, 'en-GB')).toEqual(['13.02.2027, 18:00']);
  expect(keptTimes(kept, 'de-AT')).toEqual(['13.02.2027, 18:00']);
  speakEnglish();
  expect(keptTimes(kept, 'de-DE')).toEqual(['13 Feb 2027, 18:00']);
});

it('tells the time of day as it is told where the window is', () => {
  const save = new Date('2027-02-13T14:32:59');
  expect(timeOfDay(save, 'en-GB')).toBe('14:32');
  expect(timeOfDay(save, 'en-US')).toMatch(/^2:32\sPM$/);
  speakFrom('de', {});
  expect(timeOfDay(save, 'en-US')).toBe('14:32');
});
