/** What has to come before the window can show its plan. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { expect, test } from './editor.ts';

const RENDERER = new URL('../../dist/renderer/', import.meta.url);
const MOST = 400 * 1024;

test('the first scripts are under 400 kB compressed, and what comes later is there before it is wanted', async ({
  editor,
  page,
}) => {
  const html = readFileSync(fileURLToPath(new URL('index.html', RENDERER)), 'utf8');
  const first = [...html.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map(([, file = '']) => file);
  expect(first.length).toBeGreaterThan(0);
  const bytes = first.map((file) => gzipSync(readFileSync(new URL(file, RENDERER))).length);
  expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThan(MOST);

  // Fetched while nobody waits, so that these dialogs open without the network.
  await expect(editor.plan).toBeVisible();
  const fetched = () =>
    page.evaluate(() =>
      performance.getEntriesByType('resource').map(({ name }) => name.split('/').at(-1) ?? ''),
    );
  const script = async () => (await fetched()).find((name) => /^PrintDialog.*\.js$/.test(name)) ?? null;
  await expect.poll(script).not.toBeNull();
  // With all that it needs itself, which may still have been on its way.
  const address = new URL(`assets/${await script()}`, page.url()).href;
  await page.evaluate(`import(${JSON.stringify(address)}).then(() => null)`);
  const styles = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('link')].every((link) => link.rel !== 'stylesheet' || link.sheet),
    );
  await expect.poll(styles).toBe(true);
  await page.context().setOffline(true);
  await page.keyboard.press('Control+P');
  await expect(page.getByRole('dialog', { name: /^Print/ })).toBeVisible();
  await page.context().setOffline(false);
});
