/** Why this window is one of a browser and not the program's own. */

import { t } from '#model/words/say.ts';

/** As `npm start` gives them, which finds out. */
const REASONS: Readonly<Record<string, (browser: string) => string>> = {
  asked: (browser) =>
    t`This window runs in ${browser}, because the loopback shell was asked for. Everything else is the same.`,
  root: (browser) =>
    t`This window runs in ${browser}, because Electron's sandbox does not work for root. Everything else is the same.`,
  missing: (browser) =>
    t`This window runs in ${browser}, because Electron's runtime is not on this machine and could not be fetched. Everything else is the same.`,
  failed: (browser) =>
    t`This window runs in ${browser}, because Electron did not run on this machine. Everything else is the same.`,
};

/** Null: there is nothing to say. Both are the words of the command line. */
export function whyBrowser(browser: string | undefined, reason: string | undefined): string | null {
  return browser === undefined || reason === undefined ? null : (REASONS[reason]?.(browser) ?? null);
}
