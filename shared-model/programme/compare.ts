/** Variants of a setup side by side: what each is better at, and by how much. */

import { checkSetup } from '../checks/check-setup.ts';
import type { Report } from '../checks/report.ts';
import { find, inSetup, type Document } from '../document/document.ts';
import { labelOf } from '../document/labels.ts';
import type { Setup } from '../document/records.ts';
import { changeover } from './changeover.ts';
import { neighboursOf } from './programme.ts';

export type FigureKind =
  | 'seenWell'
  | 'worstPlace'
  | 'fails'
  | 'cautions'
  | 'notes'
  | 'reachMargin'
  | 'stepsToReach'
  | 'spareTime'
  | 'pageTurns'
  | 'changeBefore'
  | 'changeAfter'
  | 'carried';

export type FigureUnit = 'share' | 'count' | 'mm' | 's';

export interface ComparedFigure {
  readonly kind: FigureKind;
  /** Whose it is; empty: of the setup as a whole. */
  readonly player: string;
  readonly unit: FigureUnit;
  readonly better: 'more' | 'less';
  /** In the order of the setups; null: not known, or there is no such player. */
  readonly values: readonly (number | null)[];
  /** Indices of those that are best; all of them: a tie. Empty: nothing to compare. */
  readonly best: readonly number[];
  /** From the best to the next best; 0 in a tie, null when there is nothing to compare. */
  readonly by: number | null;
}

export interface Comparison {
  readonly setups: readonly Setup[];
  readonly figures: readonly ComparedFigure[];
  /** For each setup how many figures it alone is best at. */
  readonly wins: readonly number[];
}

/** `reportOf`: for whoever has the reports already. */
export function compareSetups(
  document: Document,
  setups: readonly Setup[],
  reportOf: (setup: Setup) => Report = ({ id }) => checkSetup(document, id),
): Comparison {
  const measured = setups.map((setup) => figuresOf(document, setup, reportOf(setup)));
  const keys = [...new Map(measured.flat().map((figure) => [keyOf(figure), figure])).values()];
  const figures = keys.map((key) =>
    compared(
      key,
      measured.map((each) => each.find((figure) => keyOf(figure) === keyOf(key))?.value ?? null),
    ),
  );
  const wins = setups.map(
    (_, index) => figures.filter(({ best }) => best.length === 1 && best[0] === index).length,
  );
  return { setups, figures: figures.toSorted((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind)), wins };
}

interface Figure extends Pick<ComparedFigure, 'kind' | 'player' | 'unit' | 'better'> {
  readonly value: number | null;
}

const keyOf = ({ kind, player }: Pick<Figure, 'kind' | 'player'>): string => `${kind} ${player}`;

const ORDER: readonly FigureKind[] = [
  'seenWell',
  'worstPlace',
  'fails',
  'cautions',
  'notes',
  'reachMargin',
  'stepsToReach',
  'spareTime',
  'pageTurns',
  'changeBefore',
  'changeAfter',
  'carried',
];

/** Differences under these are none: half a per cent, half a second, a millimetre. */
const SAME: Readonly<Record<FigureUnit, number>> = { share: 0.005, count: 0, mm: 1, s: 0.5 };

export function compared(
  { kind, player, unit, better }: Omit<Figure, 'value'>,
  values: readonly (number | null)[],
): ComparedFigure {
  const known = values.filter((value) => value !== null);
  const [first = NaN, ...rest] = known.toSorted((a, b) => (better === 'more' ? b - a : a - b));
  const isBest = (value: number | null) => value !== null && Math.abs(value - first) <= SAME[unit] + 1e-9;
  const best = known.length < 2 ? [] : values.flatMap((value, index) => (isBest(value) ? [index] : []));
  const next = rest.find((value) => !isBest(value));
  const by = known.length < 2 ? null : best.length > 1 || next === undefined ? 0 : Math.abs(first - next);
  return { kind, player, unit, better, values, best, by };
}

function figuresOf(document: Document, setup: Setup, report: Report): Figure[] {
  return [
    ...sightFiguresOf(document, setup, report),
    ...findingFigures(report),
    ...reachFigures(report),
    ...turnFigures(document, setup),
    ...changeFigures(document, setup),
  ];
}

/** Players of two variants are the same when they are called the same. */
function sightFiguresOf(document: Document, { id }: Setup, { sight }: Report): Figure[] {
  if (sight.scene.seats.length === 0) return [];
  const shares = sight.figures.map(({ worst }) => worst.share);
  return [
    ...sight.figures.map(({ player, seenWell }): Figure => {
      const name = inSetup(document, id, 'player').find((each) => each.id === player)?.name ?? '';
      return {
        kind: 'seenWell',
        player: name.trim() || labelOf(document, id, player),
        unit: 'share',
        better: 'more',
        value: seenWell,
      };
    }),
    { kind: 'worstPlace', player: '', unit: 'share', better: 'more', value: least(shares) },
  ];
}

function findingFigures({ findings }: Report): Figure[] {
  const count = (severity: string) => findings.filter((each) => each.severity === severity).length;
  return (
    [
      ['fails', 'fail'],
      ['cautions', 'caution'],
      ['notes', 'note'],
    ] as const
  ).map(([kind, severity]) => ({ kind, player: '', unit: 'count', better: 'less', value: count(severity) }));
}

function reachFigures({ reach }: Report): Figure[] {
  if (reach.length === 0) return [];
  const margins = reach.map(({ armReach, distance }) => armReach - distance);
  const walked = reach.filter(({ manner }) => manner !== 'reach' && manner !== 'lean').length;
  const spare = reach.flatMap(({ freeTime, seconds }) =>
    freeTime === null || !Number.isFinite(seconds) ? [] : [freeTime - seconds],
  );
  return [
    { kind: 'reachMargin', player: '', unit: 'mm', better: 'more', value: least(margins) },
    { kind: 'stepsToReach', player: '', unit: 'count', better: 'less', value: walked },
    { kind: 'spareTime', player: '', unit: 's', better: 'more', value: least(spare) },
  ];
}

function turnFigures(document: Document, { id }: Setup): Figure[] {
  const plan = inSetup(document, id, 'pagePlan')[0];
  const value = plan ? plan.turns.length : null;
  return [{ kind: 'pageTurns', player: '', unit: 'count', better: 'less', value }];
}

function changeFigures(document: Document, setup: Setup): Figure[] {
  const { before, after } = neighboursOf(document, setup);
  const coming = changeover(document, find(document, before)?.id ?? null, setup.id);
  const going = changeover(document, setup.id, after);
  const seconds = (kind: FigureKind, value: number): Figure => ({
    kind,
    player: '',
    unit: 's',
    better: 'less',
    value,
  });
  return [
    seconds('changeBefore', coming.time.usual),
    seconds('changeAfter', going.time.usual),
    { kind: 'carried', player: '', unit: 'mm', better: 'less', value: coming.carried + going.carried },
  ];
}

function least(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((low, value) => Math.min(low, value), Infinity);
}
