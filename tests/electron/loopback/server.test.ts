/** The rules of the loopback shell, request by request. Statuses as in RFC 9110. */

import { connect } from 'node:net';
import { request } from 'node:http';
import { describe, expect, it, vi } from 'vitest';
import { languageFor } from '#model/words/languages.ts';
import { startLoopback, type LoopbackOptions } from '../../../electron/loopback/server.ts';
import { LARGEST_BODY } from '../../../electron/loopback/body.ts';
import { eventually } from '../../helpers/eventually.ts';
import { temporaryFolder } from '../../helpers/folders.ts';
import { testLoopback, TOKEN, windowIn } from '../../helpers/loopback.ts';
import { testShell } from '../../helpers/services.ts';

describe('a right call', () => {
  it('is answered, also under the name localhost', async () => {
    const { server, send } = await testLoopback();
    const reply = await send();
    expect(reply.status).toBe(200);
    expect(JSON.parse(reply.body)).toMatchObject({ ok: true, value: { shell: 'loopback' } });
    const local = `localhost:${server.port}`;
    expect((await send({ headers: { host: local, origin: `http://${local}` } })).status).toBe(200);
  });

  it('carries every header that shuts others out', async () => {
    const { send } = await testLoopback();
    for (const reply of [
      await send(),
      await send({ method: 'GET', path: '/' }),
      await send({ path: '/no' }),
    ]) {
      expect(reply.headers).toMatchObject({
        'x-content-type-options': 'nosniff',
        'cross-origin-resource-policy': 'same-origin',
        'cross-origin-opener-policy': 'same-origin',
        'referrer-policy': 'no-referrer',
        'cache-control': 'no-store',
      });
      const policy = String(reply.headers['content-security-policy']);
      expect(policy).toContain("default-src 'none'; script-src 'self'; style-src 'self';");
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).not.toMatch(/unsafe|\*|http:/);
      const open = Object.keys(reply.headers).filter((name) => name.startsWith('access-control-'));
      expect(open).toEqual([]);
    }
  });
});

it('serves nothing of a concert to whoever does not know the token', async () => {
  const { send } = await testLoopback();
  const view = { view: { width: 850, height: 700 }, taken: { steps: 44, line: 37 } };
  const call = {
    path: '/call/plan.first',
    body: JSON.stringify({ args: [{ ...view, dark: false, locale: 'en' }] }),
  };
  expect((await send(call)).body).toContain('Clarinet');
  for (const reply of [
    await send({ ...call, headers: { 'x-standlines-token': undefined } }),
    await send({ method: 'GET', path: '/' }),
    await send({ method: 'GET', path: call.path }),
  ]) {
    expect(reply.body).not.toMatch(/Clarinet|primitives/);
  }
});

describe('who is turned away from everything', () => {
  it.each([
    ['a name that resolves here', { host: 'evil.test' }, 421],
    ['that name with the port', { host: 'evil.test:PORT' }, 421],
    ['the address without the port', { host: '127.0.0.1' }, 421],
    ['another port', { host: '127.0.0.1:1' }, 421],
    ['0.0.0.0', { host: '0.0.0.0:PORT' }, 421],
    ['a name with a dot at its end', { host: 'localhost.:PORT' }, 421],
    ['the other spelling of the address', { host: '127.1:PORT' }, 421],
    ['an own name with a tail', { host: '127.0.0.1:PORT.evil.test' }, 421],
    ['a foreign page', { origin: 'http://evil.test' }, 403],
    ['a page without an origin', { origin: 'null' }, 403],
    ['a secure page of this name', { origin: 'https://127.0.0.1:PORT' }, 403],
    ['another server here', { origin: 'http://127.0.0.1:1' }, 403],
    ['the other name of this server', { origin: 'http://localhost:PORT' }, 403],
    ['a cross-site request', { 'sec-fetch-site': 'cross-site' }, 403],
    ['a same-site request', { 'sec-fetch-site': 'same-site' }, 403],
  ])('%s', async (_who, headers, status) => {
    const { server, send } = await testLoopback();
    const real = Object.fromEntries(
      Object.entries(headers).map(([name, value]) => [name, value.replace('PORT', String(server.port))]),
    );
    expect((await send({ headers: real })).status).toBe(status);
    expect((await send({ method: 'GET', path: '/', headers: real })).status).toBe(status);
    expect((await send({ path: '/presence', headers: real })).status).toBe(status);
  });

  it('a request without a host', async () => {
    const { server } = await testLoopback();
    expect(await rawly(server.port, 'GET / HTTP/1.1\r\n\r\n')).toMatch(/^HTTP\/1\.1 400 /);
    expect(await rawly(server.port, 'GET / HTTP/1.0\r\n\r\n')).toMatch(/^HTTP\/1\.1 421 /);
  });

  it('is only reachable from this machine', async () => {
    const { server } = await testLoopback();
    const others = Object.values((await import('node:os')).networkInterfaces())
      .flat()
      .filter((face) => face && !face.internal && face.family === 'IPv4');
    for (const face of others)
      await expect(rawly(server.port, 'GET / HTTP/1.0\r\n\r\n', face?.address)).rejects.toThrow();
  });
});

function rawly(port: number, text: string, host = '127.0.0.1'): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connect({ port, host, timeout: 60_000 }, () => socket.write(text));
    let answer = '';
    socket.on('data', (chunk) => (answer += chunk.toString()));
    socket.on('end', () => resolve(answer));
    socket.on('error', reject);
    socket.on('timeout', () => reject(new Error('timeout')));
  });
}

describe('calls that are refused', () => {
  it.each([
    ['without a token', { headers: { 'x-standlines-token': undefined } }, 401],
    ['with a wrong token', { headers: { 'x-standlines-token': 'U'.repeat(43) } }, 401],
    ['with half a token', { headers: { 'x-standlines-token': TOKEN.slice(1) } }, 401],
    ['with two tokens', { headers: { 'x-standlines-token': [TOKEN, TOKEN] } }, 401],
    [
      'with the token in the address',
      { path: `/call/app.hello?token=${TOKEN}`, headers: { 'x-standlines-token': undefined } },
      401,
    ],
    [
      'with the token as a cookie',
      { headers: { 'x-standlines-token': undefined, cookie: `token=${TOKEN}` } },
      401,
    ],
    ['by GET', { method: 'GET' }, 405],
    ['by PUT', { method: 'PUT' }, 405],
    ['by OPTIONS', { method: 'OPTIONS' }, 405],
    ['as a form', { headers: { 'content-type': 'application/x-www-form-urlencoded' } }, 415],
    ['as plain text', { headers: { 'content-type': 'text/plain' } }, 415],
    ['as nothing', { headers: { 'content-type': undefined } }, 415],
    ['as almost JSON', { headers: { 'content-type': 'application/json-patch+json' } }, 415],
    ['with a body that is no JSON', { body: '{"args":[' }, 400],
    ['with a body that is no UTF-8', { body: Buffer.from([0x22, 0xff, 0x22]) }, 400],
    ['with a body of another form', { body: '{"args":[],"more":1}' }, 400],
    ['with arguments of another form', { body: '{"args":[1]}' }, 400],
    ['to a channel that is not', { path: '/call/app.goodbye' }, 404],
    ['to a channel of every object', { path: '/call/constructor' }, 404],
    ['to a channel with another name for its dot', { path: '/call/app%2ehello' }, 404],
  ])('%s', async (_what, change, status) => {
    const { send } = await testLoopback();
    const reply = await send(change);
    expect(reply.status).toBe(status);
    expect(JSON.parse(reply.body)).toMatchObject({ ok: false, error: { message: expect.any(String) } });
    const aboutTheCaller = [401, 405, 415].includes(status);
    if (aboutTheCaller) expect((await send({ ...change, path: '/presence' })).status).toBe(status);
  });

  it('over the limit', async () => {
    const { send } = await testLoopback();
    const body = Buffer.alloc(LARGEST_BODY + 1, 'a');
    expect((await send({ body })).status).toBe(413);
    expect((await send({ body, headers: { 'transfer-encoding': 'chunked' } })).status).toBe(413);
    expect((await send()).status).toBe(200);
  });
});

describe('files', () => {
  it('the page, its parts, and nothing else', async () => {
    const { send } = await testLoopback();
    const page = await send({ method: 'GET', path: '/', headers: { 'x-standlines-token': undefined } });
    expect([page.status, page.headers['content-type']]).toEqual([200, 'text/html; charset=utf-8']);
    const script = await send({ method: 'GET', path: '/assets/index.js?v=1' });
    expect([script.status, script.headers['content-type']]).toEqual([200, 'text/javascript; charset=utf-8']);
    expect((await send({ method: 'POST', path: '/' })).status).toBe(405);
  });

  it('a page in the language of whoever asks', async () => {
    const speakTo = async (preferred: readonly string[]) => languageFor('system', preferred);
    const { send } = await testLoopback({ speakTo });
    const pageFor = (language?: string) =>
      send({ method: 'GET', path: '/', headers: { 'accept-language': language } });
    expect((await pageFor('de-AT,en;q=0.5')).body).toContain('Fenster');
    expect((await pageFor('en-GB,de;q=0.5')).body).toContain('Window');
    expect((await pageFor()).body).toContain('Window');
  });

  it.each([
    '/secret.env',
    '/assets',
    '/assets/',
    '/assets/../secret.env',
    '/../package.json',
    '/..%2fpackage.json',
    '/%2e%2e/package.json',
    '/assets/..%5c..%5cpackage.json',
    '/assets/index.js%00.html',
    '//assets/index.js',
    '/ASSETS/index.js',
    '/etc/passwd',
    'http://127.0.0.1/etc/passwd',
    '/enter/',
    '/enter/guess',
  ])('not %s', async (path) => {
    const { send } = await testLoopback();
    expect((await send({ method: 'GET', path })).status).toBe(404);
  });

  it('a window that is built anew is picked up with its page', async () => {
    const windowFolder = windowIn(temporaryFolder());
    const { send } = await testLoopback({ windowFolder });
    (await import('node:fs')).writeFileSync(`${windowFolder}/assets/later.js`, '');
    expect((await send({ method: 'GET', path: '/assets/later.js' })).status).toBe(404);
    await send({ method: 'GET', path: '/' });
    expect((await send({ method: 'GET', path: '/assets/later.js' })).status).toBe(200);
  });
});

describe('the way in for the own browser', () => {
  it('works once and leads to the page with the token', async () => {
    const { server, send } = await testLoopback();
    const entrance = new URL(server.entrance());
    const navigation = { 'x-standlines-token': undefined, origin: undefined, 'sec-fetch-site': 'none' };
    const first = await send({ method: 'GET', path: entrance.pathname, headers: navigation });
    expect([first.status, first.headers.location]).toEqual([303, `/#token=${TOKEN}`]);
    const second = await send({ method: 'GET', path: entrance.pathname, headers: navigation });
    expect([second.status, second.headers.location]).toEqual([404, undefined]);
  });

  it('a token has 256 bits and differs at every start', async () => {
    const { handlers } = testShell();
    const options: LoopbackOptions = {
      handlers,
      windowFolder: windowIn(temporaryFolder()),
      port: 0,
      report: () => undefined,
      speakTo: async () => 'en',
    };
    const servers = [await startLoopback(options), await startLoopback(options)];
    const tokens = servers.map((server) => new URL(server.address).hash.replace('#token=', ''));
    for (const token of tokens) expect(Buffer.from(token, 'base64url')).toHaveLength(32);
    expect(tokens[0]).not.toBe(tokens[1]);
    for (const server of servers) await server.close();
  });
});

it('knows when the last page has gone', async () => {
  const allPagesGone = vi.fn();
  const { server } = await testLoopback({ allPagesGone });
  const pages = [await presence(server.port), await presence(server.port)];
  expect(server.pages()).toBe(2);
  pages[0]?.destroy();
  await eventually(() => expect(server.pages()).toBe(1));
  expect(allPagesGone).not.toHaveBeenCalled();
  pages[1]?.destroy();
  await eventually(() => expect(allPagesGone).toHaveBeenCalledOnce());
});

function presence(port: number): Promise<{ destroy(): void }> {
  return new Promise((resolve, reject) => {
    const headers = { 'content-type': 'application/json', 'x-standlines-token': TOKEN };
    const sent = request(
      { port, host: '127.0.0.1', method: 'POST', path: '/presence', headers },
      (response) => {
        response.resume();
        response.on('error', () => undefined);
        resolve({ destroy: () => sent.destroy() });
      },
    );
    sent.on('error', reject);
    sent.end('{}');
  });
}
