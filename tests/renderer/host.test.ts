import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, describe, expect, it } from 'vitest';
import { connect, overBridge, overLoopback, tokenOf, UNREACHABLE } from '../../renderer/host.ts';

const saying = (cause: string) => `it does not answer (${cause})`;

let server: Server | undefined;

afterEach(
  () =>
    new Promise<void>((resolve) => {
      if (!server) return resolve();
      server.closeAllConnections();
      server.close(() => resolve());
      server = undefined;
    }),
);

interface Seen {
  url: string;
  method: string;
  token: string | undefined;
  type: string | undefined;
  body: string;
}

/** A real HTTP server that answers every call with `answer` and writes down what came. */
async function listening(answer: unknown, seen: Seen[]): Promise<typeof fetch> {
  server = createServer((request, response) => {
    let body = '';
    request.on('data', (piece: Buffer) => (body += piece.toString()));
    request.on('end', () => {
      const { url = '', method = '', headers } = request;
      const token = headers['x-standlines-token'];
      seen.push({ url, method, token: String(token), type: headers['content-type'], body });
      response.setHeader('content-type', 'application/json');
      if (url === '/presence') response.write('\n');
      else response.end(JSON.stringify(answer));
    });
  });
  await new Promise<void>((resolve) => server?.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return (path, init) => fetch(`http://127.0.0.1:${port}${String(path)}`, init);
}

describe('over loopback', () => {
  it('posts the arguments with the token and hands back the answer', async () => {
    const seen: Seen[] = [];
    const send = await listening({ ok: true, value: [] }, seen);
    const answer = await overLoopback({ token: 'secret', send, saying }).call('recent.list');
    expect(answer).toEqual({ ok: true, value: [] });
    expect(seen).toEqual([
      {
        url: '/call/recent.list',
        method: 'POST',
        token: 'secret',
        type: 'application/json',
        body: '{"args":[]}',
      },
    ]);
  });

  it('hands back a failure of the shell as it is', async () => {
    const refusal = { ok: false, error: { code: 'file.notFound', message: 'gone' } };
    const send = await listening(refusal, []);
    expect(await overLoopback({ token: 'secret', send, saying }).call('files.read', 'h1')).toEqual(refusal);
  });

  it('answers with a fault when nobody listens', async () => {
    const answer = await overLoopback({
      token: 'secret',
      send: () => Promise.reject(new Error('refused')),
      saying,
    }).call('files.demo');
    expect(answer).toMatchObject({ ok: false, error: { code: UNREACHABLE } });
  });

  it('answers with a fault when the answer is not JSON', async () => {
    const answer = await overLoopback({
      token: 'secret',
      send: () => Promise.resolve(new Response('<html>')),
      saying,
    }).call('files.demo');
    expect(answer).toMatchObject({ ok: false, error: { code: UNREACHABLE } });
  });

  it('tells when the shell is there and when it is lost', async () => {
    const send = await listening(null, []);
    const told: boolean[] = [];
    const said = (): Promise<void> => new Promise((resolve) => (wake = resolve));
    let wake = (): void => undefined;
    const first = said();
    const stop = overLoopback({ token: 'secret', send, saying }).watch((connected) => {
      told.push(connected);
      wake();
    });
    await first;
    expect(told).toEqual([true]);
    const second = said();
    server?.closeAllConnections();
    await second;
    expect(told).toEqual([true, false]);
    stop();
  });
});

describe('over the bridge', () => {
  it('turns a rejected call into a fault', async () => {
    const connection = overBridge({ call: () => Promise.reject(new Error('no handler')) }, saying);
    expect(await connection.call('files.demo')).toMatchObject({ ok: false, error: { code: UNREACHABLE } });
  });

  it('is taken when the page has one', async () => {
    const answer = { ok: true, value: null } as const;
    const page = { standlines: { call: () => Promise.resolve(answer) } } as unknown as Window;
    expect(await connect(page, saying).call('recent.clear')).toBe(answer);
  });
});

describe('tokenOf', () => {
  it('reads the fragment', () => {
    expect(tokenOf('#token=abc123')).toBe('abc123');
    expect(tokenOf('#x=1&token=abc')).toBe('abc');
    expect(tokenOf('')).toBe('');
  });
});
