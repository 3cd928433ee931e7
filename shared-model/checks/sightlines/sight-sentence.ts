/** The findings of the sight check in words. */

import type { Document } from '../../document/document.ts';
import { labelOf } from '../../document/labels.ts';
import { fixed } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import type { Finding, FindingCode } from '../finding.ts';
import { capital, figure, subject, USUAL_LIMITS, wished, type Sentence } from '../sentence-parts.ts';
import { coverName, type CoverPart } from './cover-part.ts';

type SightCode = Extract<FindingCode, `sight.${string}`>;

export const sightSentence: Readonly<Record<SightCode, Sentence>> = {
  'sight.house': (finding, document, setup) => {
    const player = subject(finding, 0, document, setup);
    const [, cover] = finding.subjects;
    const [lost, places] = [figure(finding, 'lost'), figure(finding, 'places')];
    const most = cover ? ` ${coverWords(finding, labelOf(document, setup, cover), player)}` : '';
    return {
      headline: t`${lost} of ${places} places do not see ${player} well`,
      text: `${shareWords(finding, player)} ${rowWords(finding)}${most}`,
      advice: adviceAbout(finding, document, player),
    };
  },
};

function shareWords({ measured, required }: Finding, player: string): string {
  const limit = wished(percent(required), required === USUAL_LIMITS.houseShare, 'wanted');
  return t`${percentBelow(measured, required)} of the places see ${player} well; ${limit}.`;
}

/** What usually helps. Nobody in a wheelchair is sent up on a riser. */
function adviceAbout({ subjects }: Finding, document: Document, player: string): string {
  const [who, cover] = subjects.map((id) => document.records.get(id));
  const isWheeled = who?.kind === 'player' && who.mobility === 'wheelchair';
  if (cover?.kind === 'stand') return t`Lower the desk, lay it flatter, or move it to the side of ${player}.`;
  if (cover?.kind === 'player')
    return isWheeled
      ? t`Set the two apart sideways.`
      : t`Set the two apart sideways, or raise ${player} on a riser.`;
  return isWheeled
    ? t`Move ${player} to the side or forward.`
    : t`Move ${player} to the side or forward, or raise them on a riser.`;
}

const PARTS: Readonly<Record<string, () => string>> = {
  'lower third': () => t`the lower third`,
  middle: () => t`the middle`,
  'upper third': () => t`the upper third`,
  'lower two thirds': () => t`the lower two thirds`,
  'upper two thirds': () => t`the upper two thirds`,
  whole: () => t`nearly everything`,
};

/** "Stand 3 hides most: the lower third, from 41 places in rows B to D, 22 % on average over the house." */
function coverWords(finding: Finding, label: string, player: string): string {
  const { coverPart, part, hiddenFirstRow, hiddenLastRow, hiddenBlocks } = finding.detail;
  const cover = capital(coverName((coverPart ?? 'self') as CoverPart, label));
  const loss = percent(figure(finding, 'loss'));
  const hide = (what: string): string =>
    coverPart === 'heads' ? t`${cover} hide most: ${what}.` : t`${cover} hides most: ${what}.`;
  if (typeof part !== 'string') return hide(t`${loss} on average`);
  const places = counted(figure(finding, 'hiddenFrom'));
  const rows = rowsInWords({ firstRow: hiddenFirstRow, lastRow: hiddenLastRow, blocks: hiddenBlocks });
  // As a rule they are the rows that were named just before.
  const where = rows === rowsInWords(finding.detail) ? '' : rows;
  const hidden = PARTS[part]?.() ?? t`some of ${player}`;
  return hide(t`${hidden}, from ${places}${where}, ${loss} on average over the house`);
}

function counted(places: number): string {
  return places === 1 ? t`one place` : t`${places} places`;
}

type RowNames = Readonly<Partial<Record<'firstRow' | 'lastRow' | 'blocks', number | string | undefined>>>;

function rowsInWords({ firstRow, lastRow, blocks }: RowNames): string {
  if (typeof blocks === 'string' && blocks !== '') return t` in several blocks (${blocks})`;
  if (typeof firstRow !== 'string' || firstRow === '') return '';
  return firstRow === lastRow ? t` in row ${firstRow}` : t` in rows ${firstRow} to ${lastRow ?? ''}`;
}

function rowWords(finding: Finding): string {
  const where = rowsInWords(finding.detail);
  const seat = String(finding.detail['worstSeat']);
  const share = percent(figure(finding, 'worstShare'));
  return where === ''
    ? t`${seat} sees least, ${share}.`
    : t`Those that do not are${where}; ${seat} sees least, ${share}.`;
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

/** A share that misses its limit is not rounded up to it: "74.9 %" and not "75 % against 75 %". */
function percentBelow(share: number, limit: number): string {
  return percent(share) === percent(limit) ? `${fixed(Math.floor(share * 1000) / 10, 1)} %` : percent(share);
}
