/**
 * The planner against HiGHS (https://highs.dev), a general solver for mixed-integer programmes, on the same instances in the same
 * run. HiGHS finds the fewest turns with all stations in use. The planner is timed until it has the fewest turns for every number of
 * stations, with proof, and again until it has all five figures and the front. The first of these is compared.
 */

import loadHighs from 'highs';
import { planning, planNow } from '#model/pages/planner/planner.ts';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import { orchestraLike, type Size } from '../oracles/plan-instances.ts';
import { programmesOf } from '../oracles/plan-milp.ts';

/** The largest, which HiGHS never ends, with fewer seeds. */
const CASES: readonly (readonly [Size, readonly number[]])[] = [
  [{ pages: 8, players: 2, stations: 2 }, [1, 2, 3]],
  [{ pages: 12, players: 2, stations: 2 }, [1, 2, 3]],
  [{ pages: 20, players: 3, stations: 4 }, [1, 2]],
  [{ pages: 40, players: 4, stations: 6 }, [1]],
];
/** What HiGHS is given for one instance. */
const SECONDS = 15;
/** The planner runs often enough to be measured. */
const RUNS = 5;

const highs = await loadHighs();
const ratios: number[] = [];
let isRight = true;

console.log('planner against HiGHS: pages x players x stations, seed, fewest turns, proved, milliseconds');
for (const [size, seeds] of CASES) for (const seed of seeds) measure(size, seed);
const median = middleOf(ratios);
console.log(`median ratio ${median.toFixed(0)} (a time that HiGHS did not end in counts as if it had)`);
if (!isRight || median < 50) process.exitCode = 1;

function measure(size: Size, seed: number): void {
  const instance = orchestraLike(seed, size);
  const planner = middleOf(
    Array.from({ length: RUNS }, () => timed(() => fewestTurnsProved(instance)).milliseconds),
  );
  const whole = timed(() => planNow(instance)).milliseconds;
  const result = planNow(instance);
  const general = timed(() =>
    programmesOf(instance).map((text) => highs.solve(text, { time_limit: SECONDS })),
  );
  const isDone = general.value.every(({ Status }) => Status === 'Optimal');
  const expected = general.value.reduce(
    (least, { ObjectiveValue }) => Math.min(least, Math.round(ObjectiveValue)),
    Infinity,
  );
  const turns = result.status === 'planned' ? result.cost.turns : null;
  const least = result.status === 'planned' ? result.proof.turns.atLeast : null;
  const agrees = turns !== null && turns === least && (!isDone || turns === expected);
  isRight &&= agrees;
  const ratio = general.milliseconds / planner;
  ratios.push(ratio);
  console.log(
    [
      `${size.pages} x ${size.players} x ${size.stations}`,
      seed,
      turns,
      result.status === 'planned'
        ? Object.entries(result.proof)
            .map(
              ([figure, { value, atLeast }]) =>
                `${figure} ${value}${atLeast < value ? ` (at least ${atLeast})` : ''}`,
            )
            .join(', ')
        : result.status,
      `planner ${planner.toFixed(1)}, all ${whole.toFixed(0)}`,
      `HiGHS ${general.milliseconds.toFixed(0)}${isDone ? '' : ', not done'}`,
      `${ratio.toFixed(0)} times`,
      agrees ? '' : 'DISAGREES',
    ].join(' | '),
  );
}

/** The stage after that begins when the turns are proved. */
function fewestTurnsProved(instance: PlanInstance): void {
  const steps = planning(instance);
  for (let step = steps.next(); !step.done && step.value.stage === 'turns';) step = steps.next();
}

function timed<T>(task: () => T): { value: T; milliseconds: number } {
  const start = process.cpuUsage();
  const value = task();
  const { user, system } = process.cpuUsage(start);
  return { value, milliseconds: (user + system) / 1000 };
}

function middleOf(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}
