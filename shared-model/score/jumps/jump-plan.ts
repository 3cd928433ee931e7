/** From marks and words to jumps that can be made: each with its target, within its movement. */

import { MOST_JUMPS } from '../limits.ts';
import { Refusal } from '../problem.ts';
import type { Remark } from '../remark.ts';
import type { JumpKind, JumpMark, Score, WordsMark } from '../score.ts';
import { destinationInWords, isTrio, jumpInWords } from './jump-words.ts';
import type { Movement } from './movements.ts';

/** D.C. or D.S.: made once, when the bar has been played and its repeats are done. */
export interface Jump {
  readonly bar: number;
  readonly target: number;
  /** What the words say it leads to; null: whichever comes first. */
  readonly until: 'fine' | 'coda' | null;
  /** After the jump the music stops before this bar; null: nowhere. */
  readonly stopsBefore: number | null;
}

export interface JumpPlan {
  readonly jumps: ReadonlyMap<number, Jump>;
  /** Bars with which a jumped pass ends. */
  readonly fines: ReadonlySet<number>;
  /** From the bar with To Coda to the first bar of the coda. */
  readonly codas: ReadonlyMap<number, number>;
  /** A jump whose end nothing tells. */
  readonly ambiguous: boolean;
  readonly remarks: readonly Remark[];
}

export function jumpPlan(score: Score, movements: readonly Movement[]): JumpPlan {
  const marks = byMovement(distinct(score.jumpMarks), movements);
  const words = byMovement(score.words, movements);
  const plans = movements.map((movement, index) =>
    planMovement(movement, marks[index] ?? [], words[index] ?? []),
  );
  return {
    jumps: new Map(plans.flatMap(({ jumps }) => [...jumps])),
    fines: new Set(plans.flatMap(({ fines }) => [...fines])),
    codas: new Map(plans.flatMap(({ codas }) => [...codas])),
    ambiguous: plans.some(({ ambiguous }) => ambiguous),
    remarks: plans.flatMap(({ remarks }) => remarks),
  };
}

/** Every part may print the same marks. Throws `Refusal` for more than any music has. */
function distinct(marks: readonly JumpMark[]): JumpMark[] {
  const byContent = new Map(marks.map((mark) => [JSON.stringify(mark), mark]));
  if (byContent.size > MOST_JUMPS) throw tooManyJumps();
  return [...byContent.values()];
}

function tooManyJumps(): Refusal {
  return new Refusal({ code: 'score.tooLarge', what: 'jumps', most: MOST_JUMPS });
}

/** One list for each movement. */
function byMovement<T extends { readonly bar: number }>(
  things: readonly T[],
  movements: readonly Movement[],
): T[][] {
  const lists: T[][] = movements.map(() => []);
  let index = 0;
  for (const thing of things.toSorted((a, b) => a.bar - b.bar)) {
    while (thing.bar > (movements[index]?.last ?? Infinity)) index += 1;
    lists[index]?.push(thing);
  }
  return lists;
}

function planMovement(movement: Movement, told: readonly JumpMark[], words: readonly WordsMark[]): JumpPlan {
  const { marks, remarks: ofWords } = withWords(told, words);
  const fines = barsOf(marks, 'fine');
  const { codas, lost } = codasOf(marks);
  const trio = words.find(({ text }) => isTrio(text))?.bar ?? null;
  const found = jumpsOf({ marks, words, movement, fines, codas, trio });
  return {
    jumps: new Map(found.jumps.map((jump) => [jump.bar, jump])),
    fines: new Set(fines),
    codas,
    ambiguous: found.remarks.some(({ code }) => code === 'jump.ambiguous'),
    remarks: [...ofWords, ...lost.map((bar) => noTarget(bar)), ...found.remarks],
  };
}

/**
 * Words count for each kind of jump that the movement tells no player program. A D.C. for programs and a Fine in
 * print alone belong together all the same.
 */
function withWords(marks: readonly JumpMark[], words: readonly WordsMark[]) {
  const told = new Set(marks.map(({ kind }) => kind));
  const additions: JumpMark[] = [];
  const remarks: Remark[] = [];
  for (const { bar, text } of words) {
    const kind = jumpInWords(text);
    if (kind === null || told.has(kind) || additions.some((mark) => mark.bar === bar && mark.kind === kind))
      continue;
    if (additions.length >= MOST_JUMPS) throw tooManyJumps();
    additions.push({ kind, bar, name: '', source: 'symbol' });
    if (kind !== 'coda') remarks.push({ code: 'jump.words', bar, text });
  }
  const toldJump = told.has('dacapo') || told.has('dalsegno');
  const isSecondName = ({ kind }: JumpMark) => toldJump && (kind === 'dacapo' || kind === 'dalsegno');
  return {
    marks: [...marks, ...additions.filter((mark) => !isSecondName(mark))],
    remarks: toldJump ? remarks.filter(({ text }) => !isJump(text ?? '')) : remarks,
  };
}

function isJump(text: string): boolean {
  return ['dacapo', 'dalsegno'].includes(jumpInWords(text) ?? '');
}

function barsOf(marks: readonly JumpMark[], kind: JumpKind): number[] {
  return [...new Set(marks.filter((mark) => mark.kind === kind).map(({ bar }) => bar))];
}

interface Surroundings {
  readonly marks: readonly JumpMark[];
  readonly words: readonly WordsMark[];
  readonly movement: Movement;
  readonly fines: readonly number[];
  readonly codas: ReadonlyMap<number, number>;
  readonly trio: number | null;
}

function jumpsOf(surroundings: Surroundings) {
  const jumps: Jump[] = [];
  const remarks: Remark[] = [];
  const marks = surroundings.marks.filter(({ kind }) => kind === 'dacapo' || kind === 'dalsegno');
  for (const mark of marks) {
    if (jumps.some(({ bar }) => bar === mark.bar)) continue;
    const target = mark.kind === 'dacapo' ? surroundings.movement.first : segnoFor(mark, surroundings.marks);
    if (target === null) {
      if (!remarks.some(({ bar }) => bar === mark.bar)) remarks.push(noTarget(mark.bar));
      continue;
    }
    const jump = { ...ending(mark, target, surroundings), bar: mark.bar, target };
    jumps.push(jump);
    remarks.push(...jumpRemarks(jump, surroundings));
  }
  return { jumps, remarks };
}

/** How the pass after a jump ends. */
function ending(mark: JumpMark, target: number, { words, fines, codas, trio }: Surroundings) {
  const said = words.find(({ bar, text }) => bar === mark.bar && isJump(text));
  const until = destinationInWords(said?.text ?? '');
  const open = !endsSomewhere(target, fines, codas);
  const stopsBefore =
    open && mark.kind === 'dacapo' && trio !== null && trio > target && trio <= mark.bar ? trio : null;
  return { until, stopsBefore };
}

function endsSomewhere(
  target: number,
  fines: readonly number[],
  codas: ReadonlyMap<number, number>,
): boolean {
  return [...fines, ...codas.keys()].some((bar) => bar >= target);
}

function jumpRemarks(jump: Jump, { fines, codas }: Surroundings): Remark[] {
  if (jump.stopsBefore !== null) return [{ code: 'jump.stopsBeforeTrio', bar: jump.stopsBefore }];
  return endsSomewhere(jump.target, fines, codas) ? [] : [{ code: 'jump.ambiguous', bar: jump.bar }];
}

function noTarget(bar: number): Remark {
  return { code: 'jump.noTarget', bar };
}

/** The sign of its name, otherwise the last one before the jump, otherwise the first of all. */
function segnoFor({ bar, name }: JumpMark, marks: readonly JumpMark[]): number | null {
  const signs = preferSounds(marks.filter(({ kind }) => kind === 'segno'));
  const named = signs.filter((sign) => sign.name === name);
  const candidates = (named.length > 0 ? named : signs).map((sign) => sign.bar).toSorted((a, b) => a - b);
  return candidates.filter((candidate) => candidate <= bar).at(-1) ?? candidates[0] ?? null;
}

/** What is told to player programs names its signs; a printed sign beside it says no more. */
function preferSounds(marks: readonly JumpMark[]): readonly JumpMark[] {
  const sounds = marks.filter(({ source }) => source === 'sound');
  return sounds.length > 0 ? sounds : marks;
}

function codasOf(marks: readonly JumpMark[]) {
  const signs = preferSounds(marks.filter(({ kind }) => kind === 'coda'));
  const codas = new Map<number, number>();
  const lost: number[] = [];
  for (const { bar, name } of marks.filter(({ kind }) => kind === 'tocoda')) {
    if (codas.has(bar)) continue;
    const behind = signs.filter((sign) => sign.bar > bar);
    const named = behind.filter((sign) => sign.name === name);
    const target = (named.length > 0 ? named : behind).reduce(
      (least, sign) => Math.min(least, sign.bar),
      Infinity,
    );
    if (target < Infinity) codas.set(bar, target);
    else if (!lost.includes(bar)) lost.push(bar);
  }
  return { codas, lost };
}
