/** A loopback server over a made-up window, and requests to it with any header. */

import { mkdirSync, writeFileSync } from 'node:fs';
import { request, type IncomingHttpHeaders, type OutgoingHttpHeaders } from 'node:http';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { startLoopback, type Loopback, type LoopbackOptions } from '../../electron/loopback/server.ts';
import { temporaryFolder } from './folders.ts';
import { testShell, type TestShell } from './services.ts';

export const TOKEN = 'T'.repeat(43);

export interface TestLoopback extends TestShell {
  readonly server: Loopback;
  /** A right call, changed by what is given. */
  send(change?: Partial<Sending>): Promise<Reply>;
}

interface Sending {
  readonly method: string;
  readonly path: string;
  readonly headers: OutgoingHttpHeaders;
  readonly body: string | Buffer;
}

export interface Reply {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

export function windowIn(folder: string, page = '<!doctype html><title>Window</title>'): string {
  mkdirSync(join(folder, 'assets'), { recursive: true });
  writeFileSync(join(folder, 'index.html'), page);
  writeFileSync(join(folder, 'index.de.html'), '<!doctype html><title>Fenster</title>');
  writeFileSync(join(folder, 'assets', 'index.js'), 'document.title = "Started";');
  writeFileSync(join(folder, 'secret.env'), 'not to be served');
  return folder;
}

export async function testLoopback(change: Partial<LoopbackOptions> = {}): Promise<TestLoopback> {
  const shell = testShell();
  const report = (bug: unknown) => {
    throw bug;
  };
  const windowFolder = windowIn(temporaryFolder());
  const server = await startLoopback({
    handlers: shell.handlers,
    windowFolder,
    port: 0,
    token: TOKEN,
    report,
    speakTo: async () => 'en',
    ...change,
  });
  onTestFinished(() => server.close());
  return { ...shell, server, send: (sending) => send(server.port, sending) };
}

function send(port: number, change: Partial<Sending> = {}): Promise<Reply> {
  const { method = 'POST', path = '/call/app.hello', body = '{"args":[]}' } = change;
  const headers = {
    host: `127.0.0.1:${port}`,
    origin: `http://127.0.0.1:${port}`,
    'sec-fetch-site': 'same-origin',
    'content-type': 'application/json',
    'x-standlines-token': TOKEN,
    ...change.headers,
  };
  return exchange(
    { port, method, path, headers: present(headers) },
    ['GET', 'OPTIONS'].includes(method) ? '' : body,
  );
}

/** Headers set to undefined are left out. */
function present(headers: OutgoingHttpHeaders): OutgoingHttpHeaders {
  return Object.fromEntries(Object.entries(headers).filter(([, value]) => value !== undefined));
}

interface Exchange {
  readonly port: number;
  readonly method: string;
  readonly path: string;
  readonly headers: OutgoingHttpHeaders;
}

function exchange({ port, method, path, headers }: Exchange, body: string | Buffer): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const options = { host: '127.0.0.1', port, method, path, headers, agent: false, setHost: false };
    const sent = request(options, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () =>
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          body: Buffer.concat(chunks).toString(),
        }),
      );
    });
    sent.on('error', reject);
    sent.end(body);
  });
}
