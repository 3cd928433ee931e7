/** Packs for tests: a concert of two pieces in a house, and what a pack of it is asked with. */

import type { Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { packEntries, usualEntries, type PackRequest } from '#model/drawing/pack/pack.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import { aConcert, aDocument, aLamp, aPlayer, aSeatBlock, aSetup, aStand } from '../../../helpers/build.ts';
import { roughMeasure } from '../drawings.ts';
import { inventedReport } from '../plot-request.ts';

const SECOND = asId<'setup'>('setup-2');

export const EVENING: Document = aDocument(
  aConcert({
    name: 'Evening',
    date: '2027-03-14',
    revision: 'B',
    contacts: [{ name: 'A. Nowak', role: 'stage', reachedAt: '030 1234' }],
    views: ['seatBlock-1/B-3', 'gone-7'],
  }),
  aSetup({ name: 'First' }),
  aSetup({ id: 'setup-2', name: 'Second', order: 2 }),
  aSetup({ id: 'setup-3', name: 'Second, wide', order: 3, variantOf: SECOND }),
  aSeatBlock({ id: 'seatBlock-1' }),
  aPlayer({ id: 'player-1', name: 'Clarinet', x: -900 }),
  aPlayer({ id: 'player-2', name: 'Viola', x: 900 }),
  aStand({ id: 'stand-1', x: 820, y: 1450 }),
  aLamp({
    id: 'lamp-1',
    x: -1200,
    y: 2500,
    cable: [
      { x: -1200, y: 2500 },
      { x: -3000, y: 2500 },
    ],
  }),
  aPlayer({ id: 'player-3', name: 'Horn', x: 0, setup: SECOND }),
);

export function packOf(document: Document, fields: Partial<PackRequest> = {}): PackRequest {
  return {
    document,
    paper: 'A4',
    scale: null,
    entries: usualEntries(packEntries(document)),
    checked: () => ({
      report: inventedReport(document),
      explain: ({ code }) => ({ headline: code, text: 'Measured 610, asked for 600.', advice: '' }),
    }),
    measure: roughMeasure,
    units: 'metric',
    issued: '2027-02-20',
    palette: PALETTES.print,
    ...fields,
  };
}
