/** Pins of a kept page plan: what another planning has to keep. */

import type { KeptPin } from '../document/kept-plan.ts';
import { t } from '../words/say.ts';
import { refuse, type Command } from './command.ts';
import { changePlan, type OfSetup } from './page-plan.ts';

export interface AddPin extends OfSetup {
  readonly pin: KeptPin;
}

/** Refused when the plan does not have that place. */
export const addPin: Command<AddPin> = (document, { setup, pin }) => {
  const label = pin.kind === 'page' ? t`pin page ${pin.page}` : t`pin a page turn`;
  return changePlan(document, setup, label, (plan) => {
    const paper = plan.stations.find(({ station }) => station === pin.station);
    if (!paper) return refuse(t`Put paper on that stand first.`);
    if (pin.kind === 'page' && !paper.views[pin.side]?.[pin.state])
      return refuse(t`That stand has no such place for a page.`);
    return { ...plan, pins: [...plan.pins, pin] };
  });
};

export interface RemovePins extends OfSetup {
  /** Indices of the pins. */
  readonly pins: readonly number[];
}

export const removePins: Command<RemovePins> = (document, { setup, pins }) =>
  changePlan(document, setup, t`take a pin out`, (plan) => ({
    ...plan,
    pins: plan.pins.filter((_, index) => !pins.includes(index)),
  }));
