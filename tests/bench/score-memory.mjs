/**
 * `node tests/bench/score-memory.mjs`: time and greatest memory of the built command line on scores of 62 MB, each in a
 * process of its own. Asked for: 300 MB; and two seconds where a score is refused.
 */

import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const CLI = fileURLToPath(new URL('../../dist/node/cli.js', import.meta.url));
const [SIZE, MOST_MB, MOST_SECONDS] = [62e6, 300, 2];

const sounding = '<note><duration>1</duration></note>';
const rest = '<note><rest/><duration>1</duration></note>';
const written =
  '<note default-x="120.55"><pitch><step>C</step><octave>4</octave></pitch><duration>1</duration><voice>1</voice>' +
  '<type>eighth</type><stem default-y="10">up</stem><beam number="1">begin</beam></note>\n';

/** @type {Record<string, () => string>} */
const SCORES = {
  'notes as written': () => filled(written.repeat(8)),
  'rests alone': () => filled(rest.repeat(1000)),
  'notes alone': () => filled(sounding.repeat(1000)),
  'notes and rests in turn': () => filled((sounding + rest).repeat(1000)),
  '290,000 notes and rests, spaced': () => filled((sounding + rest + ' '.repeat(130)).repeat(1000), 290),
  'five million elements': () => filled('<n/>'.repeat(1000)),
};

const folder = mkdtempSync(join(tmpdir(), 'standlines-scores-'));
try {
  for (const [name, make] of Object.entries(SCORES)) measure(name, make());
} finally {
  rmSync(folder, { recursive: true, force: true });
}

/** @param {string} bar @param {number} [most] */
function filled(bar, most = 49_000) {
  const count = Math.min(most, Math.floor(SIZE / (bar.length + 30)));
  const head = '<score-partwise><part-list><score-part id="P1"/></part-list><part id="P1">';
  return `${head}${`<measure number="1">${bar}</measure>`.repeat(count)}</part></score-partwise>`;
}

/** @param {string} name @param {string} xml */
function measure(name, xml) {
  const file = join(folder, 'score.xml');
  writeFileSync(file, xml);
  const begin = performance.now();
  // The process says itself how much it held at most.
  const tell = 'process.on("exit", () => process.stderr.write(`\\nMOST ${process.resourceUsage().maxRSS}`))';
  const run = spawnSync(
    process.execPath,
    ['--import', `data:text/javascript,${encodeURIComponent(tell)}`, CLI, 'score', file, '--json'],
    { encoding: 'utf8', maxBuffer: 1e9 },
  );
  const seconds = (performance.now() - begin) / 1000;
  const megabytes = Number(/MOST (\d+)/.exec(run.stderr)?.[1]) / 1024;
  const isRefused = run.status !== 0;
  console.log(
    `${name}: ${(xml.length / 1e6).toFixed(0)} MB ${isRefused ? 'refused' : 'read'} in ${seconds.toFixed(1)} s, ${megabytes.toFixed(0)} MB`,
  );
  if (!(megabytes < MOST_MB) || (isRefused && seconds > MOST_SECONDS)) process.exitCode = 1;
}
