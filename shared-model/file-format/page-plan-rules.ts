/**
 * What has to hold within a page plan so that it can be played through at all. Whether it is a good one (whether pages are
 * in view, hands free and leaves in reach) is judged, not refused: a plan in the making breaks rules of that kind.
 */

import type { KeptPin, KeptStation } from '../document/kept-plan.ts';
import type { PagePlanRecord } from '../document/records.ts';
import { notAllowed, type Complaint } from './complaint.ts';
import { t } from '../words/say.ts';

/** The first rule that is broken, or null. */
export function pagePlanBroken({ stations, turns, pins }: PagePlanRecord): Complaint | null {
  const ids = new Map(stations.map((station) => [station.station, station]));
  return (
    firstOf(stations, 'stations', (station, index) =>
      stations.findIndex((other) => other.station === station.station) < index
        ? notAllowed('station', station.station, t`name each stand once`)
        : viewsBroken(station),
    ) ??
    firstOf(turns, 'turns', ({ station, place }, index) =>
      ids.has(station) ? orderBroken(place, turns[index - 1]?.place ?? 0) : strange(station),
    ) ??
    firstOf(pins, 'pins', (pin) => pinBroken(pin, ids.get(pin.station)))
  );
}

function firstOf<T>(
  items: readonly T[],
  field: string,
  broken: (item: T, index: number) => Complaint | null,
): Complaint | null {
  for (const [index, item] of items.entries()) {
    const complaint = broken(item, index);
    if (complaint) return { ...complaint, field: `${field}[${index}].${complaint.field}` };
  }
  return null;
}

function strange(station: string): Complaint {
  return notAllowed('station', station, t`name a stand that the plan has paper on`);
}

function orderBroken(place: number, before: number): Complaint | null {
  return place < before ? notAllowed('place', place, t`give the turns in the order of their places`) : null;
}

function viewsBroken({ kind, leaves, pagesAcross, views }: KeptStation): Complaint | null {
  if (kind === 'loose' && leaves > 0)
    return notAllowed('leaves', leaves, t`loose pages have no leaves; give 0`);
  if (views.length !== pagesAcross.length)
    return complaint('views', oneForEachSide(views.length, pagesAcross.length));
  for (const [side, states] of views.entries()) {
    const field = `views[${side}]`;
    if (states.length !== leaves + 1) return complaint(field, oneForEachState(states.length, leaves + 1));
    const across = pagesAcross[side] ?? 0;
    const wrong = states.findIndex((view) => view.length !== across);
    if (wrong < 0) continue;
    return complaint(`${field}[${wrong}]`, oneForEachPage(states[wrong]?.length ?? 0, across));
  }
  return null;
}

function complaint(field: string, text: string): Complaint {
  return { field, text };
}

function oneForEachSide(there: number, wanted: number): string {
  return t` has ${there} entries; give ${wanted}, one for each side`;
}

function oneForEachState(there: number, wanted: number): string {
  return t` has ${there} entries; give ${wanted}, one for each state`;
}

function oneForEachPage(there: number, wanted: number): string {
  return t` has ${there} entries; give ${wanted}, one for each page across`;
}

/** Null: the plan has the place that the pin names. */
export function pinBroken(pin: KeptPin, station: KeptStation | undefined): Complaint | null {
  if (!station) return strange(pin.station);
  if (pin.kind === 'turn')
    return pin.from <= pin.to ? null : notAllowed('to', pin.to, t`give a place that is not before "from"`);
  const view = station.views[pin.side]?.[pin.state];
  if (!view) {
    const field = pin.side < station.views.length ? 'state' : 'side';
    return notAllowed(field, pin[field], t`the paper on ${pin.station} does not have it`);
  }
  if (pin.slot === null || pin.slot < view.length) return null;
  return notAllowed('slot', pin.slot, t`a view there has ${view.length} pages`);
}
