/** One request to the loopback server, from the door to the answer. */

import { readFile } from 'node:fs/promises';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { answerCall, type CallAnswer } from '#contract/answer-call.ts';
import type { Handlers } from '#contract/contract.ts';
import { fault } from '#contract/result.ts';
import type { Language } from '#model/words/languages.ts';
import { t } from '#model/words/say.ts';
import { wantedIn } from '../services/language.ts';
import { pageIn, windowFiles, type WindowFile } from '../services/window-files.ts';
import { headersOf } from '../services/window-headers.ts';
import { readArguments } from './body.ts';
import type { Entrance } from './entrance.ts';
import { requireCaller, turnStrangersAway } from './guard.ts';
import type { Presence } from './presence.ts';
import { Refusal } from './refusal.ts';
import { CALL_PATH, pathWithToken, PRESENCE_PATH } from './wire.ts';

/** What every request meets. */
export interface House {
  readonly handlers: Handlers;
  readonly windowFolder: string;
  readonly token: string;
  readonly presence: Presence;
  readonly entrance: Entrance;
  readonly report: (bug: unknown) => void;
  /** The language to serve a page in, of whoever prefers these. */
  readonly speakTo: (preferred: readonly string[]) => Promise<Language>;
  files: ReadonlyMap<string, WindowFile>;
}

export interface Exchange {
  readonly request: IncomingMessage;
  readonly response: ServerResponse;
}

/** Never rejects. */
export async function answer(house: House, exchange: Exchange): Promise<void> {
  const { request, response } = exchange;
  try {
    const path = (request.url ?? '').split('?', 1)[0] ?? '';
    for (const [name, value] of Object.entries(headersOf(path))) response.setHeader(name, value);
    turnStrangersAway(request.headers, request.socket.localPort ?? 0);
    await route(house, exchange, path);
  } catch (error) {
    if (error instanceof Refusal) return refuse(response, error);
    // A page that leaves while it sends is no bug.
    if (request.complete) house.report(error);
    response.destroy();
  }
}

async function route(house: House, exchange: Exchange, path: string): Promise<void> {
  if (path.startsWith(CALL_PATH)) return answerChannel(house, exchange, path.slice(CALL_PATH.length));
  if (path === PRESENCE_PATH) return holdPage(house, exchange);
  return sendFile(house, exchange, path);
}

function refuse(response: ServerResponse, { status, code, message }: Refusal): void {
  response.setHeader('connection', 'close');
  sendJson(response, status, fault(code, message));
}

function sendJson(response: ServerResponse, status: number, value: unknown): void {
  response.writeHead(status, { 'content-type': 'application/json; charset=utf-8' });
  response.end(JSON.stringify(value));
}

const STATUS: Readonly<Record<CallAnswer['outcome'], number>> = {
  answered: 200,
  crashed: 200,
  badArguments: 400,
  unknownChannel: 404,
};

async function answerChannel(house: House, { request, response }: Exchange, channel: string): Promise<void> {
  requireCaller(request, house.token);
  const args = await readArguments(request);
  const { outcome, result } = await answerCall(house.handlers, channel, args, house.report);
  sendJson(response, STATUS[outcome], result);
}

function holdPage({ token, presence }: House, { request, response }: Exchange): void {
  requireCaller(request, token);
  request.resume();
  response.writeHead(200, { 'content-type': 'text/plain; charset=utf-8' });
  presence.add(response);
}

async function sendFile(house: House, { request, response }: Exchange, path: string): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    throw new Refusal(405, 'loopback.method', t`Files are read with GET.`);
  }
  if (house.entrance.redeem(path)) return sendToPage(house, response);
  const file = path === '/' ? await pageFor(house, request) : house.files.get(path);
  if (!file) throw new Refusal(404, 'loopback.notFound', t`There is no such file.`);
  if (request.method === 'HEAD') return void response.writeHead(200, { 'content-type': file.type }).end();
  // At one go: in pieces, the many files of a page hold each other up.
  const bytes = await readFile(file.path).catch(() => null);
  if (bytes === null) return void response.destroy();
  response.writeHead(200, { 'content-type': file.type, 'content-length': bytes.length }).end(bytes);
}

/** A window that was built anew while the server runs is picked up with its page. */
async function pageFor(house: House, { headers }: IncomingMessage): Promise<WindowFile | undefined> {
  house.files = await windowFiles(house.windowFolder);
  return pageIn(await house.speakTo(wantedIn(headers['accept-language'])), house.files);
}

function sendToPage({ token }: House, response: ServerResponse): void {
  response.writeHead(303, { location: pathWithToken(token) });
  response.end();
}
