/** The contract over 127.0.0.1, and the built window's files. */

import { randomBytes } from 'node:crypto';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Handlers } from '#contract/contract.ts';
import type { Language } from '#model/words/languages.ts';
import { windowFiles } from '../services/window-files.ts';
import { createEntrance } from './entrance.ts';
import { createPresence, type Presence } from './presence.ts';
import { answer, type House } from './routes.ts';
import { pathWithToken } from './wire.ts';

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
  /** The language to serve a page in, of whoever prefers these (language tags). */
  readonly speakTo: (preferred: readonly string[]) => Promise<Language>;
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

/** Rejects when the window has not been built or the port is taken. */
export async function startLoopback(options: LoopbackOptions): Promise<Loopback> {
  const house: House = {
    ...options,
    token: options.token ?? randomBytes(32).toString('base64url'),
    presence: createPresence(() => options.allPagesGone?.()),
    entrance: createEntrance(() => performance.now()),
    files: await windowFiles(options.windowFolder),
  };
  const server = createServer({ maxHeaderSize: 16 * 1024, requestTimeout: 60_000, headersTimeout: 10_000 });
  server.on('request', (request, response) => void answer(house, { request, response }));
  const port = await listen(server, options.port);
  const origin = `http://127.0.0.1:${port}`;
  return {
    address: origin + pathWithToken(house.token),
    entrance: () => origin + house.entrance.issue(),
    port,
    pages: () => house.presence.count(),
    close: () => close(server, house.presence),
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
