/** What a grip's time is made of, in words: what tables give, what is from memory or practice, and the allowance. */

import type { Document } from '../../document/document.ts';
import type { Seconds } from '../../document/records.ts';
import type { Finding } from '../finding.ts';
import { figure } from '../sentence-parts.ts';
import { BEND_AND_RISE, STAND_AND_SIT, START, TMU } from './published.ts';

/** "It takes 3.4 s: 1.2 s by the published tables, 2.2 s for stooping and rising (from memory); up to 5.1 s with ...". */
export function timeWords(finding: Finding, document: Document): string {
  const whole = figure(finding, 'seconds');
  const others = notByTables(finding, document);
  const byTables = whole - others.reduce((sum, [time]) => sum + time, 0);
  const parts = others.map(([time, words]) => `${seconds(time)} ${words}`);
  const made =
    parts.length === 0
      ? `${seconds(whole)} by the published tables`
      : `${seconds(whole)}: ${[`${seconds(byTables)} by the published tables`, ...parts].join(', ')}`;
  const slowly = finding.detail['manner'] === 'walk' ? 'at a slow walk and ' : '';
  return `It takes ${made}; up to ${seconds(figure(finding, 'secondsMost'))} ${slowly}with an allowance for care`;
}

/** The parts whose figures have no published source: see published.ts. */
function notByTables({ subjects, detail }: Finding, document: Document): [Seconds, string][] {
  const player = document.records.get(subjects[0] ?? '');
  const walks = detail['manner'] === 'walk';
  const parts: [boolean, Seconds, string][] = [
    [detail['stoops'] === 1, BEND_AND_RISE * TMU, 'for stooping and rising (from memory)'],
    [
      walks && player?.kind === 'player' && player.chair !== null,
      STAND_AND_SIT * TMU,
      'for getting up and sitting down (from memory)',
    ],
    [walks, 2 * START.usual, 'for setting off there and back (common practice)'],
  ];
  return parts.flatMap(([applies, time, words]) => (applies ? [[time, words]] : []));
}

export function seconds(value: Seconds): string {
  return `${value.toFixed(1)} s`;
}
