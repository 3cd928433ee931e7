/** The command line as a program: exit codes, one line for every bad input, and files that stay as they are. */

import { createHash } from 'node:crypto';
import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildPrograms, root, runBuilt, runStandlines } from '../../helpers/built.ts';
import { temporaryFolder } from '../../helpers/folders.ts';

const DEMO = readFileSync(join(root, 'assets/demo-concert.standlines'), 'utf8');
const VERSION = /"version": \d+/;

beforeAll(buildPrograms);

/** One clear line on stderr, nothing on stdout, exit code 2. */
function expectRefusal(words: readonly string[], folder: string, sentence: RegExp): void {
  const { status, stdout, stderr } = runBuilt(words, folder);
  expect(stderr).toMatch(sentence);
  expect(stderr).toMatch(/^standlines: [^\n]{10,400}\n$/);
  expect([status, stdout]).toEqual([2, '']);
}

function fileOf(folder: string, content: string | Buffer, name = 'a.standlines'): string {
  writeFileSync(join(folder, name), content);
  return name;
}

describe('the demo concert', () => {
  it('is checked in words that name the setup and the others', () => {
    const { status, stdout, stderr } = runBuilt(['check', 'demo'], temporaryFolder());
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/^Hedge and Harbour/);
    expect(stdout).toContain(
      'Setup "Lock Gates" (others: "Hedgerow Dances", "Hedgerow Dances, opened out", "Low Water")',
    );
    for (const title of ['Seen from the house', 'Reach', 'Reading', 'Ways out', 'Findings'])
      expect(stdout).toContain(`\n${title}\n`);
    expect(stdout).toMatch(/Local codes, the venue/);
  });

  it.each(['Hedgerow Dances', 'hedgerow dances', 'setup-2', '2'])('setup "%s" can be asked for', (setup) => {
    const { stdout } = runBuilt(['check', 'demo', '--json', '--setup', setup], temporaryFolder());
    expect(JSON.parse(stdout)).toMatchObject({
      file: 'demo',
      setup: { id: 'setup-2', name: 'Hedgerow Dances' },
    });
  });

  it('fails under --strict where it has real faults', () => {
    const strict = ['check', 'demo', '--strict', '--json', '--setup', 'Hedgerow Dances'];
    const { status, stdout } = runBuilt(strict, temporaryFolder());
    const { findings } = JSON.parse(stdout) as { findings: { severity: string }[] };
    expect([status, findings.some((finding) => finding.severity === 'fail')]).toEqual([1, true]);
  });

  it('gives the same words by way of npm, and nothing besides', () => {
    const direct = runBuilt(['check', 'demo'], temporaryFolder());
    const byNpm = runStandlines(['check', 'demo']);
    expect(byNpm.stdout).toBe(direct.stdout);
    expect([byNpm.status, byNpm.stderr]).toEqual([0, '']);
  });

  it('is only a word: a file of that name goes first', () => {
    const folder = temporaryFolder();
    fileOf(folder, '', 'demo');
    expectRefusal(['check', 'demo'], folder, /demo: The file is empty/);
  });
});

it('the schema is JSON Schema, draft 2020-12', () => {
  const { status, stdout } = runBuilt(['schema'], temporaryFolder());
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema' });
});

it('help says what there is', () => {
  const { status, stdout, stderr } = runBuilt(['help'], temporaryFolder());
  expect([status, stderr]).toEqual([0, '']);
  for (const word of ['check', 'plot', 'schema', 'Exit codes']) expect(stdout).toContain(word);
});

it('bad usage is one line', () => {
  const folder = temporaryFolder();
  expectRefusal([], folder, /say what to do/);
  expectRefusal(['check', 'demo', '--jsno'], folder, /there is no option --jsno/);
  expectRefusal(
    ['check', 'demo', '--setup', 'Encore'],
    folder,
    /no setup "Encore"; there are "Lock Gates", /,
  );
  expectRefusal(['check', 'two\nlines'], folder, /"two lines" is not there/);
});

describe('bad input is one line, soon, and changes no file', () => {
  it.each([
    ['nothing', '', /a\.standlines: The file is empty/],
    ['half a file', DEMO.slice(0, DEMO.length / 2), /a\.standlines: /],
    ['a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]), /not text in UTF-8/],
    ['binary that is text', '\0\u0001\u0002', /binary data/],
    ['other JSON', '{"a":1}', /a\.standlines: /],
    ['a newer version', DEMO.replace(VERSION, '"version": 99'), /newer/],
    ['nested without end', '['.repeat(300_000), /a\.standlines: /],
    ['NaN as a number', DEMO.replace(VERSION, '"version": NaN'), /a\.standlines: /],
    ['infinity', DEMO.replace('"edgeDistance": 600', '"edgeDistance": 1e999'), /edgeDistance/],
    ['a negative size', DEMO.replace('"edgeDistance": 600', '"edgeDistance": -600'), /edgeDistance/],
    ['an id twice', DEMO.replace('"id": "setup-2"', '"id": "setup-1"'), /setup-1/],
    ['a prototype', DEMO.replace(VERSION, '$&, "__proto__": {"a": 1}'), /__proto__/],
  ])('%s', (_what, content, sentence) => {
    const folder = temporaryFolder();
    const name = fileOf(folder, content);
    const before = hashOf(join(folder, name));
    const began = performance.now();
    expectRefusal(['check', name, '--json'], folder, sentence);
    expectRefusal(['plot', name, '--out', 'plot.pdf'], folder, sentence);
    expect(performance.now() - began).toBeLessThan(10_000);
    expect(hashOf(join(folder, name))).toBe(before);
    expect(readdirSync(folder)).toEqual([name]);
  });

  it('two hundred megabytes of nothing, refused by size alone', () => {
    const folder = temporaryFolder();
    truncateSync(join(folder, fileOf(folder, '')), 200 * 1024 * 1024);
    const began = performance.now();
    expectRefusal(['check', 'a.standlines'], folder, /has 200 MB; a Standlines file has at most 64 MB/);
    expect(performance.now() - began).toBeLessThan(3_000);
  });

  it('what is no file', () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'folder'));
    execFileSync('mkfifo', [join(folder, 'pipe')]);
    symlinkSync('circle', join(folder, 'circle'));
    expectRefusal(['check', 'folder'], folder, /"folder" is a folder/);
    expectRefusal(['check', 'pipe'], folder, /"pipe" is not an ordinary file/);
    expectRefusal(['check', 'circle'], folder, /link that leads round/);
    expectRefusal(['check', 'missing'], folder, /"missing" is not there/);
    expectRefusal(['check', '/dev/zero'], folder, /not an ordinary file/);
    expectRefusal(['check', 'x'.repeat(300)], folder, /too long/);
  });
});

function hashOf(path: string): string {
  return createHash('sha256').update(readFileSync(path)).digest('hex');
}

describe('plot', () => {
  it('writes a whole PDF, says at which scale, and replaces an older one', () => {
    const folder = temporaryFolder();
    fileOf(folder, 'an older plot', 'plot.pdf');
    const { status, stdout, stderr } = runBuilt(
      ['plot', 'demo', '--out', 'plot.pdf', '--paper', 'A3', '--scale', '1:50'],
      folder,
    );
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/^plot\.pdf: "Lock Gates" at 1:50 on A3 \w+, \d+ sheets\n/);
    const bytes = readFileSync(join(folder, 'plot.pdf'));
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    expect(bytes.subarray(-6).toString()).toMatch(/%%EOF/);
    expect(readdirSync(folder)).toEqual(['plot.pdf']);
  });

  it('never overwrites its own input, under any name', () => {
    const folder = temporaryFolder();
    const name = fileOf(folder, DEMO, 'concert.pdf');
    symlinkSync(name, join(folder, 'link.pdf'));
    linkSync(join(folder, name), join(folder, 'other.pdf'));
    for (const out of [name, 'link.pdf', 'other.pdf', `./${name}`, join(folder, name)]) {
      expectRefusal(['plot', name, '--out', out], folder, /--out is the file that is being read/);
    }
    expect(readFileSync(join(folder, name), 'utf8')).toBe(DEMO);
  });

  it('places that cannot be written are one line, and no half PDF is left', () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'folder.pdf'));
    writeFileSync(join(folder, 'locked.pdf'), 'locked');
    chmodSync(join(folder, 'locked.pdf'), 0o444);
    expectRefusal(['plot', 'demo', '--out', 'missing/plot.pdf'], folder, /There is no folder .*missing\./);
    expectRefusal(['plot', 'demo', '--out', 'folder.pdf'], folder, /is a folder/);
    expectRefusal(['plot', 'demo', '--out', 'locked.pdf'], folder, /read-only/);
    expectRefusal(['plot', 'demo', '--out', '/proc/plot.pdf'], folder, /plot\.pdf/);
    expectRefusal(['plot', 'demo', '--out', `${'x'.repeat(300)}.pdf`], folder, /too long/);
    expect(readFileSync(join(folder, 'locked.pdf'), 'utf8')).toBe('locked');
    expect(readdirSync(folder).sort()).toEqual(['folder.pdf', 'locked.pdf']);
    expect(statSync(join(folder, 'folder.pdf')).isDirectory()).toBe(true);
    expect(existsSync('/proc/plot.pdf')).toBe(false);
  });

  it('a scale that is no standard one or does not fit is refused with what would do', () => {
    const folder = temporaryFolder();
    expectRefusal(['plot', 'demo', '--out', 'plot.pdf', '--scale', '1:37'], folder, /1:37/);
    expectRefusal(['plot', 'demo', '--out', 'plot.pdf', '--scale', '1:10'], folder, /1:10/);
    expect(readdirSync(folder)).toEqual([]);
  });
});
