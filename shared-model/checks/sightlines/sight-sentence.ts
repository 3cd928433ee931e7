/** The findings of the sight check in words. */

import type { Document } from '../../document/document.ts';
import { labelOf } from '../../document/labels.ts';
import type { Finding, FindingCode } from '../finding.ts';
import { capital, figure, subject, USUAL_LIMITS, wished, type Sentence } from '../sentence-parts.ts';
import { coverName, type CoverPart } from './cover-part.ts';

type SightCode = Extract<FindingCode, `sight.${string}`>;

export const sightSentence: Readonly<Record<SightCode, Sentence>> = {
  'sight.house': (finding, document, setup) => {
    const player = subject(finding, 0, document, setup);
    const [, cover] = finding.subjects;
    const [lost, places] = [figure(finding, 'lost'), figure(finding, 'places')];
    const { worstSeat } = finding.detail;
    const most = cover ? ` ${coverWords(finding, labelOf(document, setup, cover), player)}` : '';
    return {
      headline: `${lost} of ${places} places do not see ${player} well`,
      text:
        `${percentBelow(finding.measured, finding.required)} of the places see ${player} well; ${wished(percent(finding.required), finding.required === USUAL_LIMITS.houseShare, 'wanted')}. ` +
        `${rowWords(finding)}${worstSeat} sees least, ${percent(figure(finding, 'worstShare'))}.${most}`,
      advice: adviceAbout(finding, document, player),
    };
  },
};

/** What usually helps. Nobody in a wheelchair is sent up on a riser. */
function adviceAbout({ subjects }: Finding, document: Document, player: string): string {
  const [who, cover] = subjects.map((id) => document.records.get(id));
  const isWheeled = who?.kind === 'player' && who.mobility === 'wheelchair';
  if (cover?.kind === 'stand') return `Lower the desk, lay it flatter, or move it to the side of ${player}.`;
  if (cover?.kind === 'player')
    return `Set the two apart sideways${isWheeled ? '' : `, or raise ${player} on a riser`}.`;
  return `Move ${player} to the side or forward${isWheeled ? '' : ', or raise them on a riser'}.`;
}

const PARTS: Readonly<Record<string, string>> = {
  'lower third': 'the lower third',
  middle: 'the middle',
  'upper third': 'the upper third',
  'lower two thirds': 'the lower two thirds',
  'upper two thirds': 'the upper two thirds',
  whole: 'nearly everything',
};

/** "Stand 3 hides most: the lower third, from 41 places in rows B to D, 22 % on average over the house." */
function coverWords(finding: Finding, label: string, player: string): string {
  const { coverPart, part, hiddenFirstRow, hiddenLastRow, hiddenBlocks } = finding.detail;
  const name = capital(coverName((coverPart ?? 'self') as CoverPart, label));
  const cover = `${name} ${coverPart === 'heads' ? 'hide' : 'hides'} most`;
  const loss = percent(figure(finding, 'loss'));
  if (typeof part !== 'string') return `${cover}: ${loss} on average.`;
  const places = counted(figure(finding, 'hiddenFrom'));
  const rows = rowsInWords({ firstRow: hiddenFirstRow, lastRow: hiddenLastRow, blocks: hiddenBlocks });
  // As a rule they are the rows that were named just before.
  const where = rows === rowsInWords(finding.detail) ? '' : rows;
  return `${cover}: ${PARTS[part] ?? `some of ${player}`}, from ${places}${where}, ${loss} on average over the house.`;
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
  return where === '' ? '' : `Those that do not are${where}; `;
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
