/** What is said beside a finding of the changes that were tried against it. */

import type { Explained } from '#model/checks/sentence-parts.ts';
import type { Finding, Remedy } from '#model/checks/finding.ts';
import { isTried } from '#model/checks/remedy.ts';
import { NONE_HELPS } from '#model/checks/remedy-words.ts';
import { text } from './text.ts';

/** What nobody has tried is said only where nothing that was tried helps, or nothing is tried. */
export function adviceWords(
  { advice, remark }: Explained,
  { code }: Finding,
  remedies: readonly Remedy[] | undefined,
): string {
  const isUntriedAll = !isTried(code) || remedies?.length === 0;
  return isUntriedAll ? advice : remark;
}

/** Said of a finding with no remedy beside it; null: nothing, because nothing is tried, or something was found. */
export function noRemedyWords({ code }: Finding, remedies: readonly Remedy[] | undefined): string | null {
  if (!isTried(code)) return null;
  if (!remedies) return text.findings.looking;
  return remedies.length === 0 ? NONE_HELPS : null;
}
