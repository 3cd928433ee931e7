/** What is refused before it is read, and what is read as it is. */

import { execFileSync } from 'node:child_process';
import { mkdirSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { nodeFs } from '../../../electron/services/fs.ts';
import { LARGEST_FILE, openFile } from '../../../electron/services/open-file.ts';
import { settled } from '../../../electron/services/faults.ts';
import { temporaryFolder } from '../../helpers/folders.ts';

async function codeOf(path: string): Promise<string> {
  const result = await settled(path, () => openFile(nodeFs, path));
  return result.ok ? 'opened' : result.error.code;
}

function fileOf(content: string | Uint8Array): string {
  const path = join(temporaryFolder(), 'a.standlines');
  writeFileSync(path, content);
  return path;
}

it('gives the text as it is, a byte order mark included, and follows links', async () => {
  const path = fileOf('\uFEFF{"ž": "🎻"}');
  symlinkSync(path, `${path}.link`);
  const opened = await openFile(nodeFs, `${path}.link`);
  expect(opened).toMatchObject({ path, text: '\uFEFF{"ž": "🎻"}', readOnly: false });
  expect(opened.hash).toBe(execFileSync('sha256sum', [path], { encoding: 'utf8' }).slice(0, 64));
});

it.each([
  ['Latin-1', Buffer.from([0x44, 0x76, 0xf8])],
  ['UTF-16', Buffer.from('\uFEFF{}', 'utf16le')],
  ['a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])],
  ['half a character', Buffer.from([0xe2, 0x82])],
])('refuses %s', async (_name, bytes) => {
  expect(await codeOf(fileOf(bytes))).toBe('file.notText');
});

it('refuses a file over the limit by its size alone', async () => {
  const path = fileOf('');
  truncateSync(path, 3 * 1024 ** 3);
  const before = process.memoryUsage().rss;
  expect(await codeOf(path)).toBe('file.tooLarge');
  expect(process.memoryUsage().rss - before).toBeLessThan(50 * 1024 * 1024);
  truncateSync(path, LARGEST_FILE + 1);
  expect(await codeOf(path)).toBe('file.tooLarge');
});

it('does not wait for a pipe, read a folder or follow a circle', async () => {
  const folder = temporaryFolder();
  execFileSync('mkfifo', [join(folder, 'pipe')]);
  mkdirSync(join(folder, 'folder'));
  symlinkSync('circle', join(folder, 'circle'));
  expect(await codeOf(join(folder, 'pipe'))).toBe('file.notRegular');
  expect(await codeOf(join(folder, 'folder'))).toBe('file.isFolder');
  expect(await codeOf(join(folder, 'circle'))).toBe('file.linkLoop');
  expect(await codeOf(join(folder, 'missing'))).toBe('file.notFound');
  expect(await codeOf(join(folder, 'x'.repeat(300)))).toBe('file.nameTooLong');
  expect(await codeOf(join(folder, 'a\0b'))).toBe('file.badName');
  expect(await codeOf('/dev/zero')).toBe('file.notRegular');
});
