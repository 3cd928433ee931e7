/** A result as plain data whose shape stays: numbers, words and null only, in a settled order. */

import type { PlanSight } from '../instance/placed-plan.ts';
import type { PlanInstance } from './instance.ts';
import { COST_ORDER, isProved, type Plan, type Turn } from './plan.ts';
import type { PlanResult } from './planner.ts';
import type { Remedy } from './remedies.ts';
import type { Blocked } from './ways-out.ts';

export type Plain = string | number | boolean | null | readonly Plain[] | { readonly [key: string]: Plain };

/** What is told beside a result. */
export interface Beside {
  readonly remedies?: readonly Remedy[];
  /** Who has no plan, with remedies of their own. */
  readonly blocked?: readonly Blocked[];
  /** What the house sees with each plan of the front, in its order; left out: not known. */
  readonly sights?: readonly (PlanSight | null)[];
}

/** `instance`, `status`, then `plan`, `cost`, `proof` and `front`, or `remedies` and `blocked`, or `faults`. Times to the microsecond. */
export function planJson(
  instance: PlanInstance,
  result: PlanResult,
  { remedies = [], blocked = [], sights }: Beside = {},
): Plain {
  const head = { instance: plain(instance), status: result.status };
  switch (result.status) {
    case 'faulty':
      return { ...head, faults: result.faults };
    case 'none':
      return { ...head, proved: result.proved, remedies: plain(remedies), blocked: plain(blocked) };
    case 'planned':
      return {
        ...head,
        plan: planPlain(result.plan),
        cost: plain(result.cost),
        proof: Object.fromEntries(
          COST_ORDER.map((figure) => [
            figure,
            { ...result.proof[figure], proved: isProved(result.proof[figure]) },
          ]),
        ),
        front: result.front.map(({ plan, cost, proved }, index) => ({
          plan: planPlain(plan),
          cost: plain(cost),
          proved,
          ...(sights ? { sight: plain(sights[index] ?? null) } : {}),
        })),
      };
  }
}

export function planPlain({ stations, turns }: Plan): Plain {
  return { stations: plain(stations), turns: turns.map((turn) => turnPlain(turn)) };
}

function turnPlain(turn: Turn): Plain {
  return plain({ ...turn, windowSeconds: turn.window.to - turn.window.from });
}

/** Endless times become null. */
export function plain(value: unknown): Plain {
  if (typeof value === 'number') return Number.isFinite(value) ? Math.round(value * 1e6) / 1e6 : null;
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(
      Object.entries(value).flatMap(([key, own]) => (own === undefined ? [] : [[key, plain(own)]])),
    );
  return typeof value === 'string' || typeof value === 'boolean' ? value : null;
}
