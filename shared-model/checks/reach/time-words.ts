/** What a grip's time is made of, in words: what tables give, what is from memory or practice, and the allowance. */

import type { Document } from '../../document/document.ts';
import type { Seconds } from '../../document/records.ts';
import { fixed } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import type { Finding } from '../finding.ts';
import { figure } from '../sentence-parts.ts';
import { BEND_AND_RISE, STAND_AND_SIT, START, TMU } from './published.ts';

/**
 * "It takes 3.4 s: 1.2 s by the published tables, 2.2 s for stooping and rising (from memory); up to 5.1 s with an
 * allowance for care; the rest is 2.0 s.": the last are the words about the rest.
 */
export function timeWords(finding: Finding, document: Document, rest: string): string {
  const whole = figure(finding, 'seconds');
  const others = notByTables(finding, document);
  const byTables = whole - others.reduce((sum, [time]) => sum + time, 0);
  const parts = others.map(([time, words]) => words(seconds(time)));
  const made =
    parts.length === 0
      ? t`${seconds(whole)} by the published tables`
      : `${seconds(whole)}: ${[t`${seconds(byTables)} by the published tables`, ...parts].join(', ')}`;
  const most = seconds(figure(finding, 'secondsMost'));
  return finding.detail['manner'] === 'walk'
    ? t`It takes ${made}; up to ${most} at a slow walk and with an allowance for care; ${rest}.`
    : t`It takes ${made}; up to ${most} with an allowance for care; ${rest}.`;
}

type Part = [time: Seconds, words: (time: string) => string];

/** The parts whose figures have no published source: see published.ts. */
function notByTables({ subjects, detail }: Finding, document: Document): Part[] {
  const player = document.records.get(subjects[0] ?? '');
  const walks = detail['manner'] === 'walk';
  const parts: [boolean, ...Part][] = [
    [detail['stoops'] === 1, BEND_AND_RISE * TMU, (time) => t`${time} for stooping and rising (from memory)`],
    [
      walks && player?.kind === 'player' && player.chair !== null,
      STAND_AND_SIT * TMU,
      (time) => t`${time} for getting up and sitting down (from memory)`,
    ],
    [walks, 2 * START.usual, (time) => t`${time} for setting off there and back (common practice)`],
  ];
  return parts.flatMap(([applies, time, words]) => (applies ? [[time, words]] : []));
}

export function seconds(value: Seconds): string {
  return `${fixed(value, 1)} s`;
}
