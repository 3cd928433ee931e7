/**
 * Reading a score against the XML parser alone, in one run: `node tests/bench/run.mjs scores`. Asked for: no less than a
 * third of the parser's speed on 10 MB.
 */

import { SaxesParser } from 'saxes';
import { musicFromScore } from '#model/score/music/from-score.ts';
import { readScore } from '#model/score/reading/score-reader.ts';
import { generatedScore } from './generated-score.ts';

const ROUNDS = 9;
const ASKED = 1 / 3;

const xml = generatedScore(10 * 1024 * 1024);
const alone: number[] = [];
const reading: number[] = [];
for (let round = 0; round < ROUNDS; round += 1) {
  alone.push(timed(parseOnly));
  reading.push(timed(readWhole));
}
const [parser, reader] = [median(alone), median(reading)];
const megabytes = xml.length / 1024 / 1024;
console.log(`A score of ${megabytes.toFixed(1)} MB, medians of ${ROUNDS} rounds of processor time:`);
console.log(`  saxes alone       ${parser.toFixed(0)} ms, ${((1000 * megabytes) / parser).toFixed(0)} MB/s`);
console.log(`  score to music    ${reader.toFixed(0)} ms, ${((1000 * megabytes) / reader).toFixed(0)} MB/s`);
console.log(`  share of its speed ${(parser / reader).toFixed(2)} (asked for: ${ASKED.toFixed(2)} or more)`);
if (parser / reader < ASKED) process.exitCode = 1;

function parseOnly(): void {
  const saxes = new SaxesParser();
  saxes.on('error', (error) => {
    throw error;
  });
  saxes.write(xml).close();
}

function readWhole(): void {
  const score = readScore(xml);
  const music = score.ok ? musicFromScore(score.value) : score;
  if (!music.ok) throw new Error(music.problem.code);
}

function timed(work: () => void): number {
  globalThis.gc?.();
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}
