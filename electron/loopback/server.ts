/** The contract over 127.0.0.1, and the built window's files. */

import { randomBytes } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import * as v from 'valibot';
import { answerCall, type CallAnswer } from '#contract/answer-call.ts';
import type { Handlers } from '#contract/contract.ts';
import { fault } from '#contract/result.ts';
import { windowFiles, type WindowFile } from '../services/window-files.ts';
import { WINDOW_HEADERS } from '../services/window-headers.ts';
import { readBody } from './body.ts';
import { createEntrance, type Entrance } from './entrance.ts';
import { refuseCaller, refuseStranger, type Refusal } from './guard.ts';
import { createPresence, type Presence } from './presence.ts';
import { CALL_PATH, pathWithToken, PRESENCE_PATH } from './wire.ts';

export interface LoopbackOptions {
  readonly handlers: Handlers;
  /** Folder of the built window. */
  readonly windowFolder: string;
  /** 0 picks a free one. */
  readonly port: number;
  /** Left out: 256 random bits. */
  readonly token?: string;
  /** Told whenever the last page has left. */
  readonly allPagesGone?: () => void;
  readonly report: (bug: unknown) => void;
}

export interface Loopback {
  /** With the token: whoever has it may use the program. */
  readonly address: string;
  /** An address that leads there once, for a browser that is started with it. */
  entrance(): string;
  readonly port: number;
  pages(): number;
  close(): Promise<void>;
}

interface Context {
  readonly options: LoopbackOptions;
  readonly token: string;
  readonly presence: Presence;
  readonly entrance: Entrance;
  files: ReadonlyMap<string, WindowFile>;
}

/** Rejects when the window has not been built or the port is taken. */
export async function startLoopback(options: LoopbackOptions): Promise<Loopback> {
  const context: Context = {
    options,
    token: options.token ?? randomBytes(32).toString('base64url'),
    presence: createPresence(() => options.allPagesGone?.()),
    entrance: createEntrance(() => performance.now()),
    files: await windowFiles(options.windowFolder),
  };
  const server = createServer({ maxHeaderSize: 16 * 1024, requestTimeout: 60_000, headersTimeout: 10_000 });
  server.on('request', (request, response) => void answer(context, request, response));
  const port = await listen(server, options.port);
  return {
    address: `http://127.0.0.1:${port}${pathWithToken(context.token)}`,
    entrance: () => `http://127.0.0.1:${port}${context.entrance.issue()}`,
    port,
    pages: () => context.presence.count(),
    close: () => close(server, context.presence),
  };
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve((server.address() as AddressInfo).port));
  });
}

function close(server: Server, presence: Presence): Promise<void> {
  presence.close();
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}

async function answer(context: Context, request: IncomingMessage, response: ServerResponse): Promise<void> {
  try {
    for (const [name, value] of Object.entries(WINDOW_HEADERS)) response.setHeader(name, value);
    const refusal = refuseStranger(request.headers, request.socket.localPort ?? 0);
    if (refusal) return refuse(response, refusal);
    const path = (request.url ?? '').split('?', 1)[0] ?? '';
    if (path.startsWith(CALL_PATH)) return await answerApi(context, request, response, path);
    if (path === PRESENCE_PATH) return await holdPage(context, request, response);
    await sendFile(context, request, response, path);
  } catch (error) {
    context.options.report(error);
    response.destroy();
  }
}

function refuse(response: ServerResponse, { status, code, message }: Refusal): void {
  response.setHeader('connection', 'close');
  sendJson(response, status, fault(code, message));
}

function sendJson(response: ServerResponse, status: number, value: unknown): void {
  response.writeHead(status, { 'content-type': 'application/json; charset=utf-8' });
  response.end(JSON.stringify(value));
}

const CALL_BODY = v.strictObject({ args: v.array(v.unknown()) });

const STATUS: Readonly<Record<CallAnswer['outcome'], number>> = {
  answered: 200,
  crashed: 200,
  badArguments: 400,
  unknownChannel: 404,
};

async function answerApi(
  context: Context,
  request: IncomingMessage,
  response: ServerResponse,
  path: string,
): Promise<void> {
  const args = await checkedBody(context, request, response);
  if (args === null) return;
  const { handlers, report } = context.options;
  const { outcome, result } = await answerCall(handlers, path.slice(CALL_PATH.length), args, report);
  sendJson(response, STATUS[outcome], result);
}

/** The arguments of a call that may be answered; null when it has been refused. */
async function checkedBody(
  context: Context,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<unknown[] | null> {
  const refusal = refuseCaller(request.method, request.headers, context.token);
  if (refusal) return refused(response, refusal);
  const body = await readBody(request);
  if (body.kind === 'tooLarge') {
    return refused(response, { status: 413, code: 'loopback.tooLarge', message: 'That is too large.' });
  }
  const call = v.safeParse(CALL_BODY, body.kind === 'json' ? body.value : null);
  if (call.success) return call.output.args;
  return refused(response, { status: 400, code: 'loopback.body', message: 'A call is {"args": [...]}.' });
}

function refused(response: ServerResponse, refusal: Refusal): null {
  refuse(response, refusal);
  return null;
}

async function holdPage(context: Context, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const refusal = refuseCaller(request.method, request.headers, context.token);
  if (refusal) return refuse(response, refusal);
  request.resume();
  response.writeHead(200, { 'content-type': 'text/plain; charset=utf-8' });
  context.presence.add(response);
}

async function sendFile(
  context: Context,
  request: IncomingMessage,
  response: ServerResponse,
  path: string,
): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    return refuse(response, { status: 405, code: 'loopback.method', message: 'Files are read with GET.' });
  }
  // A window that was built anew while the server runs is picked up with its page.
  if (path === '/') context.files = await windowFiles(context.options.windowFolder);
  if (context.entrance.redeem(path)) return enter(context, response);
  const file = context.files.get(path);
  if (!file)
    return refuse(response, { status: 404, code: 'loopback.notFound', message: 'There is no such file.' });
  response.writeHead(200, { 'content-type': file.type });
  if (request.method === 'HEAD') return void response.end();
  createReadStream(file.path)
    .on('error', () => response.destroy())
    .pipe(response);
}

function enter(context: Context, response: ServerResponse): void {
  response.writeHead(303, { location: pathWithToken(context.token) });
  response.end();
}
