/**
 * Real and synthetic scores against figures computed by an independent program: `shared/data/scores/facts.json`, which
 * `method.md` beside it describes (MusicXML read with another library in another language). Page breaks of engraved
 * parts: `part_pages.json`, measured on the PDFs that lie beside the scores in OpenScore/StringQuartets.
 */

import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { Music, Part } from '#model/score/music.ts';
import { musicFromScore } from '#model/score/music/from-score.ts';
import { inScoreOrder, performanceOf } from '#model/score/music/performance.ts';
import { rangeText } from '#model/score/music/ranges.ts';
import { readingsOf } from '#model/score/music/readings.ts';
import { withPages, withRepeatsAfterJump } from '#model/score/music/typed-over.ts';
import { restsOf, type Rest } from '#model/score/music/rests.ts';
import { readScoreBytes } from '../../electron/services/score-container.ts';

const FOLDER = fileURLToPath(new URL('../../../shared/data/scores/', import.meta.url));
const isThere = existsSync(`${FOLDER}facts.json`);
if (!isThere) console.warn('NOT RUN: shared/data/scores does not lie beside this checkout.');

interface RestFact {
  readonly seconds: number;
  readonly start: number;
  readonly end: number;
  readonly from_measure: number;
  readonly to_measure: number;
}

interface PartFacts {
  readonly name: string;
  readonly notes: number;
  readonly longest_rests: readonly RestFact[];
  readonly rests_ge_2s: number;
  readonly rests_ge_3s: number;
  readonly rests_ge_5s: number;
  readonly sounding_seconds: number;
  readonly page_breaks: readonly number[];
  readonly page_readings?: readonly (readonly [number, number, number])[];
  readonly transposes: readonly (readonly [number, string, string])[];
  readonly cue_notes: number;
  readonly instrument_change: readonly (readonly [number, string])[];
}

interface Facts {
  readonly file: string;
  readonly error?: string;
  readonly measures: number;
  readonly movements: readonly (readonly [number, number])[];
  readonly quarters_score_order: string;
  readonly default_tempo_used: boolean;
  readonly seconds_score_order: number;
  readonly unfolded_measures: number;
  readonly unfolded_seconds: number;
  readonly play_order: readonly string[];
  readonly ambiguous: boolean;
  readonly jumps_taken_from_words: readonly (readonly [number, string])[];
  readonly unfolded_measures_repeats_after_jump?: number;
  readonly unfolded_seconds_repeats_after_jump?: number;
  readonly part_facts: readonly PartFacts[];
}

const allFacts: readonly Facts[] = isThere
  ? (JSON.parse(readFileSync(`${FOLDER}facts.json`, 'utf8')) as { files: Facts[] }).files
  : [];

function read(file: string) {
  return readScoreBytes(readFileSync(`${FOLDER}${file}`), file).score;
}

function musicOf(file: string, repeatsAfterJump = false): Music {
  const outcome = musicFromScore(read(file), { repeatsAfterJump });
  if (!outcome.ok) throw new Error(outcome.problem.code);
  return outcome.value;
}

describe.skipIf(!isThere)('scores of shared/data against facts.json', () => {
  it('is given a good many scores', () => {
    expect(allFacts.filter(({ error }) => error === undefined).length).toBeGreaterThanOrEqual(22);
  });

  for (const facts of allFacts.filter(({ error }) => error !== undefined)) {
    it(`refuses ${facts.file}`, () => {
      expect(() => read(facts.file)).toThrow(/^"m0/);
    });
  }

  for (const facts of allFacts.filter(({ error }) => error === undefined)) {
    describe(facts.file, () => {
      const music = musicOf(facts.file);
      const performance = performanceOf(music);

      it('has the same bars, movements and play order', () => {
        expect(music.bars.length).toBe(facts.measures);
        const ends = music.movements.map((first, index) => [
          first,
          (music.movements[index + 1] ?? music.bars.length) - 1,
        ]);
        expect(ends).toEqual(facts.movements);
        expect(music.order.map(rangeText)).toEqual(facts.play_order);
        expect(performance.played.length).toBe(facts.unfolded_measures);
        expect(music.ambiguous).toBe(facts.ambiguous);
      });

      it('lasts as long', () => {
        const ticks = music.bars.reduce((sum, bar) => sum + bar.ticks, 0);
        const [n = 0, d = 1] = facts.quarters_score_order.split('/').map(Number);
        expect(ticks / music.ticksPerQuarter).toBeCloseTo(n / d, 9);
        expect(inScoreOrder(music).seconds).toBeCloseTo(facts.seconds_score_order, 3);
        expect(performance.seconds).toBeCloseTo(facts.unfolded_seconds, 3);
        expect(music.remarks.some(({ code }) => code === 'tempo.assumed')).toBe(facts.default_tempo_used);
      });

      it('says which words were taken for jumps', () => {
        const fromWords = music.remarks.filter(({ code }) => code === 'jump.words');
        expect(fromWords.map(({ bar, text }) => [bar, text])).toEqual(facts.jumps_taken_from_words);
      });

      it('makes repeats after jumps when asked to', () => {
        const other = musicOf(facts.file, true);
        const played = performanceOf(other);
        expect(played.played.length).toBe(
          facts.unfolded_measures_repeats_after_jump ?? facts.unfolded_measures,
        );
        expect(played.seconds).toBeCloseTo(
          facts.unfolded_seconds_repeats_after_jump ?? facts.unfolded_seconds,
          3,
        );
        // The choice kept in the music gives what reading the file again gives, and comes back.
        const switched = withRepeatsAfterJump(music, true);
        expect(switched.order).toEqual(other.order);
        expect(withRepeatsAfterJump(switched, false)).toEqual(music);
      });

      facts.part_facts.forEach((partFacts, index) => {
        it(`gives part ${index + 1} ${partFacts.name} the same rests and pages`, () => {
          const part = music.parts[index];
          if (!part) throw new Error('there is no such part');
          checkRests(restsOf(music, part, performance), partFacts, performance.seconds);
          checkPages(music, part, partFacts);
        });
      });
    });
  }
});

function checkRests(rests: readonly Rest[], facts: PartFacts, total: number): void {
  const lengths = rests.map(({ from, to }) => to - from).toSorted((a, b) => b - a);
  facts.longest_rests.forEach((fact, index) => {
    expect(Math.abs((lengths[index] ?? 0) - fact.seconds)).toBeLessThan(1e-3);
    const same = rests.find(
      ({ from, to }) => Math.abs(from - fact.start) < 1e-3 && Math.abs(to - fact.end) < 1e-3,
    );
    expect(same).toMatchObject({ fromBar: fact.from_measure, toBar: fact.to_measure });
  });
  checkCounts(lengths, [facts.rests_ge_2s, facts.rests_ge_3s, facts.rests_ge_5s]);
  const silent = lengths.reduce((sum, length) => sum + length, 0);
  expect(Math.abs(total - silent - facts.sounding_seconds)).toBeLessThan(2e-3);
}

/** Rests of exactly 5 s: the figures were counted in floating point, where some of them are a hair shorter. */
function checkCounts(lengths: readonly number[], counts: readonly number[]): void {
  [2, 3, 5].forEach((least, index) => {
    const surely = lengths.filter((length) => length > least + 1e-6).length;
    const perhaps = lengths.filter((length) => length > least - 1e-6).length;
    expect(counts[index]).toBeGreaterThanOrEqual(surely);
    expect(counts[index]).toBeLessThanOrEqual(perhaps);
  });
}

function checkPages(music: Music, part: Part, facts: PartFacts): void {
  expect(part.pages.slice(1).map(({ bar }) => bar)).toEqual(facts.page_breaks);
  expect(
    part.transpositions.map(({ bar, chromatic, diatonic }) => [bar, String(chromatic), String(diatonic)]),
  ).toEqual(facts.transposes);
  expect(part.instruments.map(({ bar }) => bar)).toEqual(facts.instrument_change.map(([bar]) => bar));
  if (!facts.page_readings) return;
  const readings = readingsOf(music, part, performanceOf(music));
  expect(readings.length).toBe(facts.page_readings.length);
  readings.forEach(({ page, from, to }, index) => {
    const [factPage = 0, factFrom = 0, factTo = 0] = facts.page_readings?.[index] ?? [];
    expect(page).toBe(factPage + 1);
    expect(Math.abs(from - factFrom)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(to - factTo)).toBeLessThanOrEqual(0.0051);
  });
}

interface PrintedPart {
  readonly usable: boolean;
  readonly first_measure_index: readonly number[];
  readonly page_readings: readonly (readonly [page: number, from: number, to: number])[];
}

const printed: Readonly<Record<string, Readonly<Record<string, PrintedPart>>>> = isThere
  ? (
      JSON.parse(readFileSync(`${FOLDER}part_pages.json`, 'utf8')) as {
        files: Record<string, Record<string, PrintedPart>>;
      }
    ).files
  : {};

describe.skipIf(!isThere)('pages of printed parts, typed over a score, against part_pages.json', () => {
  const cases = Object.entries(printed).flatMap(([file, parts]) =>
    Object.entries(parts).flatMap(([name, part]) => (part.usable ? [{ file, name, part }] : [])),
  );

  it('is given a good many parts', () => expect(cases.length).toBeGreaterThanOrEqual(19));

  it.each(cases)('$file, $name', ({ file, name, part }) => {
    const score = musicOf(file);
    const index = score.parts.findIndex((one) => one.name === name);
    // #1 is the first bar of the file: numbers begin again in every movement.
    const typed = part.first_measure_index.map((bar) => `#${bar + 1}`).join(', ');
    const paged = withPages(score, index, typed);
    if (!paged.ok) throw new Error(paged.problem.code);
    const readings = readingsOf(paged.value, paged.value.parts[index]!, performanceOf(paged.value));
    expect(readings.map(({ page }) => page)).toEqual(part.page_readings.map(([page]) => page));
    for (const [at, [, from, to]] of part.page_readings.entries()) {
      // They are given to hundredths of a second.
      expect(readings[at]?.from).toBeCloseTo(from, 1.9);
      expect(readings[at]?.to).toBeCloseTo(to, 1.9);
    }
  });
});
