/** What may be done against grips that are too far or too late. Nearer is advised only where nearer can help. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import type { Units } from '../../document/measures.ts';
import type { Seconds } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import type { Finding } from '../finding.ts';
import { atLeast, figure, subject, type Told } from '../sentence-parts.ts';
import { seconds } from './time-words.ts';

type Advice = Pick<Told, 'advice' | 'remark'>;

/** Moves on the plan are given in whole tens, mm. */
const STEP = 10;

export function farAdvice(finding: Finding, document: Document, setup: Id<'setup'>, units: Units): Advice {
  if (finding.severity === 'note') return { advice: '', remark: t`It fits the rest.` };
  const [player, thing] = [subject(finding, 0, document, setup), thingOf(finding, document, setup)];
  const by = figure(finding, 'nearer');
  if (by > 0) {
    const length = atLeast(units === 'metric' ? Math.ceil(by / STEP - 1e-9) * STEP : by, units);
    const advice = t`Bring ${thing} nearer by ${length}, straight towards the spot of ${player}.`;
    return isWithoutRest(finding) ? { advice, remark: t`Even so there is no rest for it.` } : { advice };
  }
  return 'nearestSeconds' in finding.detail
    ? { advice: t`Bring ${thing} nearer to a shoulder of ${player}.` }
    : { advice: t`Bring ${thing} to a height they reach.` };
}

export function lateAdvice(finding: Finding, document: Document, setup: Id<'setup'>): Advice {
  if (finding.severity !== 'fail')
    return { advice: '', remark: t`It fits at the usual pace; try it at the rehearsal.` };
  if (isWithoutRest(finding)) return { advice: withoutRest(finding) };
  const thing = thingOf(finding, document, setup);
  const least = figure(finding, 'nearestSeconds');
  const stoops = finding.detail['nearestStoops'] === 1;
  const stoopsNow = finding.detail['stoops'] === 1;
  if (least <= finding.required) {
    if (stoops)
      return {
        advice: t`Bring ${thing} nearer, raise ${thing}, so that nobody has to stoop for it, or find a longer rest.`,
      };
    return {
      advice: stoopsNow
        ? t`Bring ${thing} nearer or higher, so that nobody has to stoop for it, or find a longer rest.`
        : t`Bring ${thing} nearer, or find a longer rest.`,
    };
  }
  return { advice: stoops ? raiseWords(thing, least) : restOrOther(least) };
}

function raiseWords(thing: string, least: Seconds): string {
  return t`Raise ${thing}, so that nobody has to stoop for it, or find a longer rest: at its height it takes ${seconds(least)} however near it is.`;
}

/** Nothing is said of a height that nobody gets to from the place. */
function restOrOther(least: Seconds): string {
  return Number.isNaN(least)
    ? t`Find a longer rest, or let somebody else do it.`
    : t`Find a longer rest, or let somebody else do it: however near it is, it takes ${seconds(least)}.`;
}

function isWithoutRest({ detail }: Finding): boolean {
  return detail['restSeconds'] === 0;
}

function withoutRest({ detail }: Finding): string {
  return detail['purpose'] === 'pickUp'
    ? t`Change at an earlier rest, or give the passage to somebody else: there is no rest there.`
    : t`Give the turn to somebody else, print the page again, or set one more stand: there is no rest there.`;
}

/** What can be moved: the stand, or what the instrument waits on. */
function thingOf(finding: Finding, document: Document, setup: Id<'setup'>): string {
  const item = document.records.get(finding.subjects[1] ?? '');
  return item?.kind === 'instrument' && item.support !== null
    ? t`${labelOf(document, setup, item.support)} with ${subject(finding, 1, document, setup)}`
    : subject(finding, 1, document, setup);
}
