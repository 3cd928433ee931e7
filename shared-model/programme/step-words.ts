/** Steps of a changeover in words that a crew can work from. */

import { find, placedInSetup, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Piano } from '../document/records.ts';
import { labelOf } from '../document/labels.ts';
import { formatBare, formatLength, formatPosition, type Units } from '../document/measures.ts';
import { shortMarks } from '../document/short-marks.ts';
import { t } from '../words/say.ts';
import type { Adjustment } from './changes.ts';
import type { Step } from './changeover.ts';
import { thingName } from './thing.ts';
import type { Unit } from './units.ts';

const WORK_WORDS: Readonly<Record<Step['work'], () => string>> = {
  strike: () => t`Strike`,
  set: () => t`Set`,
  move: () => t`Move`,
  turn: () => t`Turn`,
  adjust: () => t`Adjust`,
  aside: () => t`Put aside`,
  bring: () => t`Bring back`,
};

/** "Strike", as the first word of a step. */
export function workWord(work: Step['work']): string {
  return WORK_WORDS[work]();
}

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
  if (unit.record.kind === 'player')
    return own === '' ? t`${name} of ${mark}` : t`${name} of ${own} (${mark})`;
  const side = /\/(\d)$/.exec(unit.id)?.[1];
  const more = [
    ...(own === '' || name.toLowerCase().startsWith(own.toLowerCase()) ? [] : [own]),
    ...(side === undefined ? [] : [side === '1' ? t`front side` : t`other side`]),
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
  if (step.work === 'turn' || step.work === 'adjust') return t`same spot`;
  return step.to ? spotWords(telling, step.to) : awayWords(telling, step);
}

function spotWords({ units }: Telling, { spot }: Unit): string {
  const position = formatPosition(spot, units);
  return spot.level > 0 ? t`${position}, on +${formatBare(spot.level, units)}` : position;
}

function awayWords({ document }: Telling, { storage, way }: Step): string {
  const door = find(document, way.door);
  const opening = door ? labelOf(document, anySetup(document), door.id) : '';
  if (storage) {
    const place = storage.name || labelOf(document, anySetup(document), storage.id);
    return opening ? t`${place}, through ${opening}` : place;
  }
  return opening ? t`off, through ${opening}` : t`off, at the nearest edge`;
}

function anySetup(document: Document): Id<'setup'> {
  for (const record of document.records.values()) if (record.kind === 'setup') return record.id;
  throw new Error('a document without a setup');
}

/** "lip to 900, tilt to 70°, turn 55° to the left"; what it becomes is told as `Viola (stand 2)` of the next setup. */
export function stepNotes(telling: Telling, step: Step): string[] {
  const { from, to, turn, adjustments, way, after, step: heavyStep } = step;
  const becomes = from && to ? newName(telling, from, to) : [];
  return [
    ...(after.length === 0 ? [] : [afterWords(after)]),
    ...becomes,
    ...(turn === 0 ? [] : [turnWords(turn)]),
    ...adjustments.map((each) => adjustmentWords(each, telling)),
    ...cableNotes(step),
    ...wayNotes(way.ease),
    ...(heavyStep > 0 ? [t`over a step of ${formatLength(heavyStep, telling.units)}`] : []),
  ];
}

function afterWords(steps: readonly number[]): string {
  const listed = steps.map(String).reduce((some, one) => t`${some} and ${one}`);
  return t`after ${listed}`;
}

function turnWords(turn: number): string {
  const angle = Math.round(Math.abs(turn));
  return turn > 0 ? t`turn ${angle}° anticlockwise` : t`turn ${angle}° clockwise`;
}

/** Told only where the next setup calls it otherwise; which side of a pair a stand was matters no more once it is moved. */
function newName({ document, from, to }: Telling, before: Unit, after: Unit): string[] {
  if (!from || !to) return [];
  const called = (unit: Unit, setup: Id<'setup'>): string => {
    const own = 'name' in unit.record ? unit.record.name : '';
    return `${unitMark(document, unit, setup)} ${own}`;
  };
  return called(before, from) === called(after, to) ? [] : [t`becomes ${unitMark(document, after, to)}`];
}

function adjustmentWords(adjustment: Adjustment, { units }: Telling): string {
  switch (adjustment.what) {
    case 'lip':
      return t`lip to ${formatBare(adjustment.to, units)}`;
    case 'height':
      return t`height to ${formatBare(adjustment.to, units)}`;
    case 'tilt':
      return t`tilt to ${Math.round(adjustment.to)}°`;
    case 'lid':
      return LID_WORDS[adjustment.to]();
    case 'cable':
      return t`unplug, lay its cable anew, then plug in`;
  }
}

const LID_WORDS: Readonly<Record<Piano['lid'], () => string>> = {
  closed: () => t`lid closed`,
  half: () => t`lid half open`,
  full: () => t`lid full open`,
};
/** What comes or goes with its cable; one that is laid anew is told as an adjustment. */
function cableNotes({ work, from, to }: Step): string[] {
  const isLaid = work === 'set' || work === 'bring';
  const record = (isLaid ? to : work === 'strike' || work === 'aside' ? from : null)?.record;
  if (record?.kind !== 'lamp' || record.cable.length === 0) return [];
  if (isLaid)
    return [record.cableCovered ? t`lay its cable, cover it, then plug in` : t`lay its cable, then plug in`];
  return [
    record.cableCovered ? t`unplug, then take up the cover and the cable` : t`unplug, then take up its cable`,
  ];
}

function wayNotes(ease: Step['way']['ease']): string[] {
  if (ease === 'tight') return [t`narrow way, or over a step`];
  return ease === 'none' ? [t`no way found that it fits through`] : [];
}

/** "2:05". */
export function clock(seconds: number): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
