/** When work was kept or saved, in words; those of several pieces tell them apart. */

import { language } from '#model/words/catalogue.ts';

/** One text each, in the order given: to the minute, and with seconds where two would read the same. */
export function keptTimes(kept: readonly { readonly savedAt: string }[], locale: string): string[] {
  const dates = kept.map(({ savedAt }) => new Date(savedAt));
  const written = (timeStyle: 'short' | 'medium') => {
    const format = new Intl.DateTimeFormat(spokenHere(locale), { dateStyle: 'medium', timeStyle });
    return dates.map((date) => format.format(date));
  };
  const exact = written('medium');
  return written('short').map((time, index, all) =>
    all.indexOf(time) === all.lastIndexOf(time) ? time : (exact[index] ?? time),
  );
}

/** "14:32", as it is written where the window is. */
export function timeOfDay(date: Date, locale: string): string {
  return new Intl.DateTimeFormat(spokenHere(locale), { timeStyle: 'short' }).format(date);
}

/** The system may be in another language than the window: the region of its locale stays. */
function spokenHere(locale: string): Intl.Locale {
  return new Intl.Locale(locale, { language: language() });
}
