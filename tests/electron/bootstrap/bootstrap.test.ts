/** What runs before anything is installed: it must say clearly what is missing and never work twice. */

import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { missingPackages } from '../../../electron/bootstrap/dependencies.mjs';
import { oneAtATime } from '../../../electron/bootstrap/one-at-a-time.mjs';
import { root } from '../../helpers/built.ts';
import { temporaryFolder } from '../../helpers/folders.ts';

const bootstrap = join(root, 'electron/bootstrap');

describe.each(['start.mjs', 'test.mjs', 'standlines.mjs', 'build.mjs'])('%s', (script) => {
  it.each(['18.20.4', '20.18.3'])('says so on Node %s and does nothing', (version) => {
    const older = `Object.defineProperty(process.versions, 'node', { value: '${version}' })`;
    const words = ['--import', `data:text/javascript,${encodeURIComponent(older)}`, join(bootstrap, script)];
    const { status, stdout, stderr } = spawnSync(process.execPath, words, { encoding: 'utf8' });
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toBe(`Standlines needs Node 20.19 or newer; this is ${version}.\n`);
  });
});

it('needs nothing that would have to be installed first', () => {
  for (const name of readdirSync(bootstrap).filter((file) => file.endsWith('.mjs'))) {
    const imports =
      readFileSync(join(bootstrap, name), 'utf8').match(/(?<=from ')[^']+|(?<=import\(')[^']+/g) ?? [];
    for (const address of imports)
      expect([name, address]).toEqual([name, expect.stringMatching(/^(node:|\.\/)/)]);
  }
});

describe('packages', () => {
  const wanted = {
    '': {},
    'node_modules/a': { version: '1.0.0', integrity: 'x' },
    'node_modules/b': { version: '2.0.0', optional: true },
  };

  it.each([
    [
      'all there',
      { 'node_modules/a': { version: '1.0.0', integrity: 'x' }, 'node_modules/b': { version: '2.0.0' } },
      [],
    ],
    ['without the one of another system', { 'node_modules/a': { version: '1.0.0', integrity: 'x' } }, []],
    ['none', {}, ['node_modules/a']],
    ['another version', { 'node_modules/a': { version: '1.0.1', integrity: 'x' } }, ['node_modules/a']],
    ['another content', { 'node_modules/a': { version: '1.0.0', integrity: 'y' } }, ['node_modules/a']],
  ])('%s', (_what, installed, missing) => {
    expect(missingPackages(wanted, installed)).toEqual(missing);
  });

  it('the lock file names no place to fetch from and a digest for every package', () => {
    const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
      packages: Record<string, { resolved?: string; integrity?: string }>;
    };
    for (const [path, entry] of Object.entries(lock.packages)) {
      if (path !== '')
        expect([path, entry.resolved, typeof entry.integrity]).toEqual([path, undefined, 'string']);
    }
  });

  it('no package may run a script when it is installed', () => {
    expect(readFileSync(join(root, '.npmrc'), 'utf8')).toContain('ignore-scripts=true');
  });
});

describe('one at a time', () => {
  it('waits for a holder that lives and takes over from one that died', async () => {
    const lock = join(temporaryFolder(), 'dist', 'lock');
    const order: string[] = [];
    const slow = oneAtATime(lock, async () => {
      order.push('first begins');
      await new Promise((done) => setTimeout(done, 300));
      order.push('first ends');
    });
    await oneAtATime(lock, async () => void order.push('second'));
    await slow;
    expect(order).toEqual(['first begins', 'first ends', 'second']);
    mkdirSync(join(lock, '..'), { recursive: true });
    writeFileSync(lock, '99999999');
    await oneAtATime(lock, async () => void order.push('third'));
    expect(order.at(-1)).toBe('third');
    expect(existsSync(lock)).toBe(false);
  });

  it('lets go when the work fails', async () => {
    const lock = join(temporaryFolder(), 'lock');
    await expect(oneAtATime(lock, () => Promise.reject(new Error('planted')))).rejects.toThrow('planted');
    expect(existsSync(lock)).toBe(false);
  });
});

it('finds the browser that is asked for before all others', async () => {
  const program = join(temporaryFolder(), 'browser');
  writeFileSync(program, '');
  const script = `import { findBrowser } from '${pathToFileURL(join(bootstrap, 'tools.mjs')).href}'; console.log(findBrowser());`;
  const find = (env: Record<string, string>) =>
    spawnSync(process.execPath, ['--input-type=module', '-e', script], {
      encoding: 'utf8',
      env: { ...process.env, ...env },
    }).stdout.trim();
  expect(find({ STANDLINES_BROWSER: program })).toBe(program);
  expect(find({ STANDLINES_BROWSER: join(program, 'missing') })).not.toBe(join(program, 'missing'));
});
