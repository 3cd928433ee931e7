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
    const most = cover ? ` ${coverWords(finding, capital(labelOf(document, setup, cover)))}` : '';
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

const PARTS: Readonly<Record<string, string>> = {
  'lower third': 'the lower third',
  middle: 'the middle',
  'upper third': 'the upper third',
  'lower two thirds': 'the lower two thirds',
  'upper two thirds': 'the upper two thirds',
  whole: 'nearly everything',
  some: 'a part',
};

/** "Stand 3 hides most: the lower third from 41 places in rows B to D, 22 % on average over the house." */
function coverWords(finding: Finding, cover: string): string {
  const { part, hiddenFirstRow, hiddenLastRow, hiddenBlocks } = finding.detail;
  const loss = percent(figure(finding, 'loss'));
  if (typeof part !== 'string') return `${cover} hides most: ${loss} on average.`;
  const places = counted(figure(finding, 'hiddenFrom'));
  const rows = rowsInWords({ firstRow: hiddenFirstRow, lastRow: hiddenLastRow, blocks: hiddenBlocks });
  // As a rule they are the rows that were named just before.
  const where = rows === rowsInWords(finding.detail) ? '' : rows;
  return `${cover} hides most: ${PARTS[part] ?? 'a part'} from ${places}${where}, ${loss} on average over the house.`;
}

function counted(places: number): string {
  return places === 1 ? 'one place' : `${places} places`;
}

type RowNames = Readonly<Partial<Record<'firstRow' | 'lastRow' | 'blocks', number | string | undefined>>>;

function rowsInWords({ firstRow, lastRow, blocks }: RowNames): string {
  if (typeof blocks === 'string' && blocks !== '') return ` in several blocks (${blocks})`;
  if (typeof firstRow !== 'string' || firstRow === '') return '';
  return firstRow === lastRow ? ` in row ${firstRow}` : ` in rows ${firstRow} to ${lastRow}`;
}

function rowWords({ detail }: Finding): string {
  const where = rowsInWords(detail);
  return where === '' ? '' : `They are${where}; `;
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
