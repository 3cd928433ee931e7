/** Steps of a changeover in words that a crew can work from. */

import { find, placedInSetup, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { labelOf } from '../document/labels.ts';
import { formatBare, formatLength, formatPosition, type Units } from '../document/measures.ts';
import { shortMarks } from '../document/short-marks.ts';
import type { Adjustment } from './changes.ts';
import type { Step } from './changeover.ts';
import { thingName } from './thing.ts';
import type { Unit } from './units.ts';

export const WORK_WORDS: Readonly<Record<Step['work'], string>> = {
  strike: 'Strike',
  set: 'Set',
  move: 'Move',
  turn: 'Turn',
  adjust: 'Adjust',
  aside: 'Put aside',
  bring: 'Bring back',
};

/** What a step is told with. */
export interface Telling {
  readonly document: Document;
  readonly from: Id<'setup'> | null;
  readonly to: Id<'setup'> | null;
  readonly units: Units;
}

/** "S3 Orchestral stand", "S1 Orchestral stand, front side", "Orchestra chair of Viola (P2)": by the marks of its setup's plot. */
export function unitWords({ document }: Pick<Telling, 'document'>, unit: Unit, setup: Id<'setup'>): string {
  const mark = unitMark(document, unit, setup);
  const name = thingName(unit.thing);
  const own = 'name' in unit.record ? unit.record.name.trim() : '';
  if (unit.record.kind === 'player') return own === '' ? `${name} of ${mark}` : `${name} of ${own} (${mark})`;
  const side = /\/(\d)$/.exec(unit.id)?.[1];
  const more = [
    ...(own === '' || name.toLowerCase().startsWith(own.toLowerCase()) ? [] : [own]),
    ...(side === undefined ? [] : [`${side === '1' ? 'front' : 'other'} side`]),
  ];
  return [`${mark} ${name}`, ...more].join(', ');
}

/** "S3": on the plot of its setup; empty when it does not stand there. */
export function unitMark(document: Document, { record }: Unit, setup: Id<'setup'>): string {
  return shortMarks(placedInSetup(document, setup)).get(record.id) ?? '';
}

/** The thing, as it is called where it stands; what is brought, as it will be called. */
export function stepThing(telling: Telling, { from, to }: Step): string {
  if (from && telling.from) return unitWords(telling, from, telling.from);
  if (to && telling.to) return unitWords(telling, to, telling.to);
  return '';
}

/** Where the thing comes from: a position, a storage place, or an opening. */
export function stepFrom(telling: Telling, step: Step): string {
  return step.from ? spotWords(telling, step.from) : awayWords(telling, step);
}

export function stepTo(telling: Telling, step: Step): string {
  if (step.work === 'turn' || step.work === 'adjust') return 'same spot';
  return step.to ? spotWords(telling, step.to) : awayWords(telling, step);
}

function spotWords({ units }: Telling, { spot }: Unit): string {
  const level = spot.level > 0 ? `, on +${formatBare(spot.level, units)}` : '';
  return `${formatPosition(spot, units)}${level}`;
}

function awayWords({ document }: Telling, { storage, way }: Step): string {
  const door = find(document, way.door);
  const through = door ? `through ${labelOf(document, anySetup(document), door.id)}` : '';
  if (storage) {
    const place = storage.name || labelOf(document, anySetup(document), storage.id);
    return through ? `${place}, ${through}` : place;
  }
  return through ? `off, ${through}` : 'off, at the nearest edge';
}

function anySetup(document: Document): Id<'setup'> {
  for (const record of document.records.values()) if (record.kind === 'setup') return record.id;
  throw new Error('a document without a setup');
}

/** "lip to 900, tilt to 70°, turn 55° to the left"; what it becomes is told as `Viola (stand 2)` of the next setup. */
export function stepNotes(telling: Telling, step: Step): string[] {
  const { from, to, turn, adjustments, way, after, step: heavyStep } = step;
  const becomes = from && to ? newName(telling, from, to) : [];
  const turned =
    turn === 0 ? [] : [`turn ${Math.round(Math.abs(turn))}° ${turn > 0 ? 'anticlockwise' : 'clockwise'}`];
  return [
    ...(after.length === 0 ? [] : [`after ${after.join(' and ')}`]),
    ...becomes,
    ...turned,
    ...adjustments.map((each) => adjustmentWords(each, telling)),
    ...cableNotes(step),
    ...wayNotes(way.ease),
    ...(heavyStep > 0 ? [`over a step of ${formatLength(heavyStep, telling.units)}`] : []),
  ];
}

/** Told only where the next setup calls it otherwise; which side of a pair a stand was matters no more once it is moved. */
function newName({ document, from, to }: Telling, before: Unit, after: Unit): string[] {
  if (!from || !to) return [];
  const called = (unit: Unit, setup: Id<'setup'>): string => {
    const own = 'name' in unit.record ? unit.record.name : '';
    return `${unitMark(document, unit, setup)} ${own}`;
  };
  return called(before, from) === called(after, to) ? [] : [`becomes ${unitMark(document, after, to)}`];
}

function adjustmentWords(adjustment: Adjustment, { units }: Telling): string {
  switch (adjustment.what) {
    case 'lip':
    case 'height':
      return `${adjustment.what} to ${formatBare(adjustment.to, units)}`;
    case 'tilt':
      return `tilt to ${Math.round(adjustment.to)}°`;
    case 'lid':
      return `lid ${adjustment.to === 'closed' ? 'closed' : `${adjustment.to} open`}`;
    case 'cable':
      return 'unplug, lay its cable anew, then plug in';
  }
}

/** What comes or goes with its cable; one that is laid anew is told as an adjustment. */
function cableNotes({ work, from, to }: Step): string[] {
  const isLaid = work === 'set' || work === 'bring';
  const record = (isLaid ? to : work === 'strike' || work === 'aside' ? from : null)?.record;
  if (record?.kind !== 'lamp' || record.cable.length === 0) return [];
  if (isLaid)
    return [record.cableCovered ? 'lay its cable, cover it, then plug in' : 'lay its cable, then plug in'];
  return [
    record.cableCovered ? 'unplug, then take up the cover and the cable' : 'unplug, then take up its cable',
  ];
}

function wayNotes(ease: Step['way']['ease']): string[] {
  if (ease === 'tight') return ['narrow way, or over a step'];
  return ease === 'none' ? ['no way found that it fits through'] : [];
}

/** "2:05". */
export function clock(seconds: number): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
