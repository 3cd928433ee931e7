/** The findings of the sight check in words. */

import { labelOf } from '../../document/labels.ts';
import type { Finding, FindingCode } from '../finding.ts';
import { figure, subject, type Sentence } from '../sentence-parts.ts';

type SightCode = Extract<FindingCode, `sight.${string}`>;

export const sightSentence: Readonly<Record<SightCode, Sentence>> = {
  'sight.house': (finding, document, setup) => {
    const player = subject(finding, 0, document, setup);
    const [, cover] = finding.subjects;
    const [lost, places] = [figure(finding, 'lost'), figure(finding, 'places')];
    const { worstSeat } = finding.detail;
    const most = cover
      ? ` ${capital(labelOf(document, setup, cover))} hides most: ${percent(figure(finding, 'loss'))} on average.`
      : '';
    return {
      headline: `${lost} of ${places} places do not see ${player} well`,
      text:
        `${percentBelow(finding.measured, finding.required)} of the places see ${player} well; you asked for ${percent(finding.required)}. ` +
        `${rowWords(finding)}${worstSeat} sees least, ${percent(figure(finding, 'worstShare'))}.${most}`,
      advice: adviceAbout(document.records.get(cover ?? '')?.kind, player),
    };
  },
};

/** What usually helps, for when no single tried change clears it. */
function adviceAbout(cover: string | undefined, player: string): string {
  if (cover === 'stand') return `Lower the desk, lay it flatter, or move it to the side of ${player}.`;
  if (cover === 'player') return `Set the two apart sideways, or raise ${player} on a riser.`;
  return `Move ${player} to the side or forward, or raise them on a riser.`;
}

function rowWords({ detail: { firstRow, lastRow, blocks } }: Finding): string {
  if (typeof blocks === 'string' && blocks !== '') return `They are in several blocks (${blocks}); `;
  if (firstRow === '') return '';
  return firstRow === lastRow
    ? `They are in row ${firstRow}; `
    : `They are in rows ${firstRow} to ${lastRow}; `;
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

/** A share that misses its limit is not rounded up to it: "74.9 %" and not "75 % against 75 %". */
function percentBelow(share: number, limit: number): string {
  return percent(share) === percent(limit)
    ? `${(Math.floor(share * 1000) / 10).toFixed(1)} %`
    : percent(share);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
