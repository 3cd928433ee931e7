/** What is said beside a finding of the changes that were tried against it. */

import type { Explained } from '#model/checks/sentence-parts.ts';
import type { Finding, Remedy } from '#model/checks/finding.ts';
import { isTried } from '#model/checks/remedy.ts';
import { noneHelps } from '#model/checks/remedy-words.ts';
import { text } from './text.ts';

/** An amount that nobody has tried is said only where nothing can be tried. */
export function adviceWords({ advice, remark }: Explained, { code }: Finding): string {
  return isTried(code) ? remark : advice;
}

/** Said of a finding with no remedy beside it; null: nothing, because nothing is tried, or something was found. */
export function noRemedyWords({ code }: Finding, remedies: readonly Remedy[] | undefined): string | null {
  if (!isTried(code)) return null;
  if (!remedies) return text.findings.looking;
  return remedies.length === 0 ? noneHelps() : null;
}
