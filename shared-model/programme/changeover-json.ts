/** A changeover as plain data, named by record ids. */

import { concertOf, type Document } from '../document/document.ts';
import { changeoverNotes, enoughTime } from './changeover-words.ts';
import type { Changeover, Step } from './changeover.ts';
import { shortages, type StockCheck } from './stock-check.ts';
import { stepFrom, stepNotes, stepThing, stepTo, type Telling } from './step-words.ts';
import { thingName } from './thing.ts';
import type { Unit } from './units.ts';

export function changeoverJson(document: Document, change: Changeover): object {
  const { from, to, time, through, available, carried } = change;
  const telling: Telling = { document, from, to, units: concertOf(document).units };
  return {
    from,
    to,
    seconds: time.usual,
    secondsRange: [time.least, time.most],
    through,
    available,
    enough: enoughTime(change),
    /** What the assignment makes least, past nothing but what stays; `waysLength` is the sum of the ways of the steps. */
    carried,
    waysLength: change.steps.reduce((sum, { way }) => sum + way.length, 0),
    steps: change.steps.map((step) => stepJson(telling, step)),
    stays: change.stays.map((pair) => ({ from: pair.from.id, to: pair.to.id })),
    notes: changeoverNotes(change),
  };
}

function stepJson(telling: Telling, step: Step): object {
  const { number, hands, after, work, way, step: heavyStep, turn, adjustments, begins, ends } = step;
  return {
    number,
    hands,
    after,
    work,
    thing: stepThing(telling, step),
    from: endJson(step.from),
    to: endJson(step.to),
    fromWords: stepFrom(telling, step),
    toWords: stepTo(telling, step),
    storage: step.storage?.id ?? null,
    way,
    step: heavyStep,
    turn,
    adjustments,
    notes: stepNotes(telling, step),
    begins,
    ends,
  };
}

function endJson(unit: Unit | null): object | null {
  return (
    unit && {
      unit: unit.id,
      record: unit.record.id,
      item: unit.thing.item,
      model: unit.thing.model,
      ...unit.spot,
    }
  );
}

export function stockJson(check: StockCheck): object {
  return {
    lines: check.lines.map(({ thing, needs, most, owned, borrowed, short, waiting }) => ({
      ...{ item: thing.item, model: thing.model, name: thingName(thing), most, owned, borrowed },
      setups: check.setups.map(({ id }, index) => ({
        setup: id,
        needs: needs[index],
        short: short[index],
        waiting: waiting[index],
      })),
    })),
    ofAnyModel: check.ofAnyModel.map(({ item, count }) => ({ item, count })),
    shortages: shortages(check).map(({ thing, setup, needed, short }) => ({
      ...{ item: thing.item, model: thing.model, name: thingName(thing), setup: setup.id, needed, short },
    })),
  };
}
