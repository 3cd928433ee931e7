/**
 * What is about the built files in Electron's security tutorial (the numbers are its points) and fuses table, found
 * out by parsing what the build writes.
 */

import { ENGINE_FLAGS } from '../../../electron/services/engine-flags.ts';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, parseAst } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { setFuses } from '../../../.config/set-fuses.mjs';
import { windowFiles } from '../../../electron/services/window-files.ts';
import { temporaryFolder } from '../../helpers/folders.ts';
import packageFile from '../../../package.json';

/** Electron's support covers its three latest majors; 45 was the latest on 25 November 2026. */
const OLDEST_SUPPORTED_MAJOR = 43;

const root = fileURLToPath(new URL('../../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'standlines-built-'));
const TEXT = /\.(c?js|css|html|json|svg)$/;
/** Path below the build folder to text; of a font nothing but that it is there. */
const built = new Map<string, string>();

beforeAll(async () => {
  for (const part of ['node', 'preload', 'renderer']) {
    const outDir = join(folder, part);
    await build({
      configFile: join(root, `.config/vite.${part}.config.ts`),
      logLevel: 'error',
      build: { outDir },
    });
    for (const [path, file] of await windowFiles(outDir))
      built.set(part + path, TEXT.test(path) ? readFileSync(file.path, 'utf8') : '');
  }
  built.set('preload/preload.cjs', readFileSync(join(folder, 'preload/preload.cjs'), 'utf8'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function scripts(...parts: string[]): [string, string][] {
  return [...built].filter(
    ([path]) => parts.includes(path.split('/')[0] ?? '') && /\.c?js$/.test(extname(path)),
  );
}

interface Node {
  readonly type: string;
  readonly [field: string]: unknown;
}

/** Every node of a script. */
function nodesOf(text: string): Node[] {
  const nodes: Node[] = [];
  const visit = (value: unknown) => {
    if (Array.isArray(value)) value.forEach(visit);
    else if (value !== null && typeof value === 'object') {
      if ('type' in value) nodes.push(value as Node);
      Object.values(value).forEach(visit);
    }
  };
  visit(parseAst(text));
  return nodes;
}

/** "ipcMain.handle", or "require". */
function calleeOf({ callee }: Node): string {
  const { type, name, object, property } = callee as Record<string, { name?: string }> & {
    type: string;
    name: string;
  };
  if (type === 'Identifier') return name;
  return type === 'MemberExpression' ? `${object?.name}.${property?.name}` : '';
}

function callsIn(text: string): string[] {
  return nodesOf(text)
    .filter((node) => node.type === 'CallExpression')
    .map(calleeOf);
}

it('something was built', () => {
  expect(scripts('node').length).toBeGreaterThan(3);
  expect(scripts('renderer').length).toBeGreaterThan(1);
  expect(built.has('renderer/index.html')).toBe(true);
});

it('1: nothing is loaded over an open line', () => {
  const ours = /^http:\/\/(www\.w3\.org\/|127\.0\.0\.1|\$\{)/;
  // Names of XML vocabularies, and a base to tell whether an address in a PDF is one: pdf.js asks for none of them.
  const names = /^http:\/\/(www\.w3\.org\/|ns\.adobe\.com\/|www\.xfa\.org\/schema\/|example\.com$|\$\{)/;
  for (const [path, text] of built) {
    const allowed = /\/pdf[.-]/.test(path) ? names : ours;
    const addresses = text.match(/\b(?:http|ws|ftp):\/\/[^\s"'`)]*/g) ?? [];
    expect([path, addresses.filter((address) => !allowed.test(address))]).toEqual([path, []]);
  }
});

it('4: the preload script is one file and asks only for Electron', () => {
  const text = built.get('preload/preload.cjs') ?? '';
  const required = nodesOf(text)
    .filter((node) => node.type === 'CallExpression' && calleeOf(node) === 'require')
    .map((node) => (node['arguments'] as { value: string }[])[0]?.value);
  expect(required).toEqual(['electron']);
  expect(nodesOf(text).some((node) => node.type.startsWith('Import'))).toBe(false);
});

it('4: only Chromium as root goes without a sandbox, never Electron', () => {
  const words = [
    readFileSync(join(root, '.config/electron-builder.json5'), 'utf8'),
    JSON.stringify(packageFile.scripts),
  ];
  expect(words.join()).not.toContain('no-sandbox');
  expect(built.get('node/electron.js')).not.toContain('no-sandbox');
});

it('6, 8, 9, 10: no switch weakens the browser', () => {
  for (const [path, text] of scripts('node', 'preload')) {
    const weak = /allowRunningInsecureContent|experimentalFeatures|enableBlinkFeatures|webSecurity: false/;
    expect([path, weak.test(text)]).toEqual([path, false]);
  }
  // How much rubbish the engine keeps is all that is set.
  expect(built.get('node/electron.js')?.match(/appendSwitch\([^)]*\)/g)).toEqual([
    'appendSwitch("js-flags", ENGINE_FLAGS)',
  ]);
  expect(ENGINE_FLAGS).toMatch(
    /^(--(max-semi-space-size|semi-space-growth-factor|heap-growing-percent)=\d+ ?)+$/,
  );
});

it('7: the page holds no script, style or handler of its own', () => {
  const page = built.get('renderer/index.html') ?? '';
  expect(page.match(/<script(?![^>]*\ssrc=)/g)).toBeNull();
  expect(page.match(/<style|\sstyle=|\son\w+=|javascript:/gi)).toBeNull();
  for (const address of page.match(/(?:src|href)="[^"]*"/g) ?? []) expect(address).toMatch(/="\.\//);
});

it('7: no script makes code out of text', () => {
  for (const [path, text] of scripts('renderer', 'preload')) {
    const makers = nodesOf(text).filter(
      (node) =>
        (node.type === 'CallExpression' && calleeOf(node) === 'eval') ||
        (node.type === 'NewExpression' && calleeOf(node) === 'Function'),
    );
    expect([path, makers.length]).toEqual([path, 0]);
  }
});

it('11: there is no web view', () => {
  for (const [path, text] of built) expect([path, /<webview/i.test(text)]).toEqual([path, false]);
});

it('15: nothing is handed to the system to open', () => {
  for (const [path, text] of scripts('node', 'preload'))
    expect([path, /openExternal/.test(text)]).toEqual([path, false]);
});

it('16: Electron is one of the supported majors', () => {
  expect(Number.parseInt(packageFile.devDependencies.electron, 10)).toBeGreaterThanOrEqual(
    OLDEST_SUPPORTED_MAJOR,
  );
});

it('17: the main process listens in one place', () => {
  const listening = scripts('node').flatMap(([, text]) =>
    callsIn(text).filter((name) => name.startsWith('ipcMain.')),
  );
  expect(listening).toEqual(['ipcMain.handle']);
});

it('18: nothing is loaded from file:', () => {
  for (const [path, text] of scripts('node', 'preload')) {
    expect([path, /loadFile|['"`]file:|bypassCSP/.test(text)]).toEqual([path, false]);
  }
});

describe('19: fuses', () => {
  /** The wire of a program: this text, a version, a length, and one character a fuse (electron/electron, fuses.md). */
  const SENTINEL = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';

  it('are set as the table of the tutorial asks, in the program itself', async () => {
    const program = join(temporaryFolder(), 'program');
    const wire = Buffer.concat([Buffer.from(SENTINEL), Buffer.from([1, 8]), Buffer.from('10110001')]);
    writeFileSync(program, Buffer.concat([Buffer.alloc(1000), wire, Buffer.alloc(1000)]));
    await setFuses(program, false);
    const bytes = readFileSync(program);
    const at = bytes.indexOf(SENTINEL) + SENTINEL.length + 2;
    // runAsNode, cookieEncryption, nodeOptions, nodeCliInspect, asarIntegrity, onlyAsar, snapshot, filePrivileges
    expect(bytes.subarray(at, at + 8).toString()).toBe('00001100');
  });

  it('are set by the packager', () => {
    const config = readFileSync(join(root, '.config/electron-builder.json5'), 'utf8');
    expect(config).toContain("afterPack: '.config/set-fuses.mjs'");
  });
});
