/** The loopback shell in a real browser: its own page works, foreign pages and names do not. */

import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Page } from '@playwright/test';
import { expect, it, onTestFinished, vi } from 'vitest';
import { testLoopback, TOKEN, windowIn } from '../../helpers/loopback.ts';
import { openBrowser } from '../../helpers/browser.ts';
import { eventually } from '../../helpers/eventually.ts';
import { temporaryFolder } from '../../helpers/folders.ts';

/** A page's call, as the window makes it. Resolves to the status, or to "blocked". */
function callFrom(page: Page, address: string, token: string | null): Promise<number | string> {
  return page.evaluate(
    ({ address, token }) => {
      const headers = {
        'content-type': 'application/json',
        ...(token ? { 'x-standlines-token': token } : {}),
      };
      return fetch(address, { method: 'POST', headers, body: '{"args":[]}' }).then(
        (response) => response.status,
        () => 'blocked',
      );
    },
    { address, token },
  );
}

it('its own page may call with the token, and only with it', async (context) => {
  const browser = await openBrowser(context);
  const { server } = await testLoopback();
  const page = await browser.newPage();
  await page.goto(server.address);
  expect(await page.title()).toBe('Window');
  expect(await page.evaluate(() => location.hash)).toBe(`#token=${TOKEN}`);
  expect(await callFrom(page, '/call/app.hello', TOKEN)).toBe(200);
  expect(await callFrom(page, '/call/app.hello', null)).toBe(401);
});

it('the entrance leads the browser to the page with the token', async (context) => {
  const browser = await openBrowser(context);
  const { server } = await testLoopback();
  const page = await browser.newPage();
  await page.goto(server.entrance());
  expect(await page.evaluate(() => location.href)).toBe(server.address);
});

it('a name that has been bent to this machine gets nothing, even with the token', async (context) => {
  const browser = await openBrowser(context, '--host-resolver-rules=MAP evil.test 127.0.0.1');
  const { server } = await testLoopback();
  const page = await browser.newPage();
  const response = await page.goto(`http://evil.test:${server.port}/`);
  expect(response?.status()).toBe(421);
  expect(await callFrom(page, '/call/app.hello', TOKEN)).toBe(421);
  expect(await callFrom(page, '/presence', TOKEN)).toBe(421);
});

it('a foreign page reaches no handler, by call, form or frame', async (context) => {
  const browser = await openBrowser(context);
  const reached = vi.fn();
  const shell = await testLoopback();
  const handlers = new Proxy(shell.handlers, {
    get: (target, channel, receiver) => {
      reached(channel);
      return Reflect.get(target, channel, receiver) as unknown;
    },
  });
  const { server } = await testLoopback({ handlers });
  const page = await browser.newPage();
  await page.goto(await foreignPage());
  const address = `http://127.0.0.1:${server.port}/call/recent.clear`;
  expect(await callFrom(page, address, TOKEN)).toBe('blocked');
  const plainly = await page.evaluate(
    (url) =>
      fetch(url, { method: 'POST', mode: 'no-cors', body: '{"args":[]}' }).then(
        (response) => response.type,
        () => 'blocked',
      ),
    address,
  );
  expect(['opaque', 'blocked']).toContain(plainly);
  await page.evaluate((url) => {
    const frame = document.createElement('iframe');
    frame.src = url;
    document.body.append(frame);
  }, server.address);
  await page.waitForTimeout(500);
  expect(
    await page
      .frames()[1]
      ?.title()
      .catch(() => ''),
  ).not.toBe('Window');
  expect(reached).not.toHaveBeenCalled();
});

/** A server of somebody else on this machine. */
async function foreignPage(): Promise<string> {
  const foreign = createServer((_request, response) => response.end('<!doctype html><body>'));
  await new Promise<void>((done) => foreign.listen(0, '127.0.0.1', done));
  onTestFinished(() => void foreign.close());
  return `http://127.0.0.1:${(foreign.address() as AddressInfo).port}/`;
}

it('the policy stops scripts in the page, code out of text and requests to elsewhere', async (context) => {
  const browser = await openBrowser(context);
  const windowFolder = windowIn(
    temporaryFolder(),
    '<!doctype html><title>Window</title><script>document.title = "inline ran"</script>',
  );
  const { server } = await testLoopback({ windowFolder });
  const page = await browser.newPage();
  await page.goto(server.address);
  expect(await page.title()).toBe('Window');
  const violations = await page.evaluate(async () => {
    const seen: string[] = [];
    document.addEventListener('securitypolicyviolation', (event) => seen.push(event.effectiveDirective));
    const script = document.createElement('script');
    script.textContent = 'document.title = "injected ran"';
    document.head.append(script);
    const image = document.createElement('img');
    image.src = 'http://127.0.0.1:1/a.png';
    document.head.append(image);
    await fetch('http://127.0.0.1:1/').catch(() => undefined);
    // They are told one by one, a while later.
    for (let tries = 0; tries < 300 && seen.length < 3; tries++)
      await new Promise((done) => setTimeout(done, 100));
    return seen.sort();
  });
  expect(violations).toEqual(['connect-src', 'img-src', 'script-src-elem']);
  expect(await page.title()).toBe('Window');
});

it('a page that is closed or reloaded is noticed', async (context) => {
  const browser = await openBrowser(context);
  const allPagesGone = vi.fn();
  const { server } = await testLoopback({ allPagesGone });
  const page = await browser.newPage();
  const hold = () =>
    page.evaluate((token) => {
      const headers = { 'content-type': 'application/json', 'x-standlines-token': token };
      return fetch('/presence', { method: 'POST', headers, body: '{}' }).then((response) => response.status);
    }, TOKEN);
  await page.goto(server.address);
  expect(await hold()).toBe(200);
  expect(server.pages()).toBe(1);
  await page.reload();
  await eventually(() => expect(allPagesGone).toHaveBeenCalledTimes(1));
  await hold();
  await page.close();
  await eventually(() => expect(allPagesGone).toHaveBeenCalledTimes(2));
  expect(server.pages()).toBe(0);
});
