/** Lets the window's calls in: only from the program's own page, only well-formed ones. */

import { ipcMain, type IpcMainInvokeEvent, type WebContents } from 'electron';
import { answerCall } from '#contract/answer-call.ts';
import { BRIDGE } from '#contract/bridge.ts';
import type { Handlers, Result } from '#contract/contract.ts';
import { fault } from '#contract/result.ts';
import { t } from '#model/words/say.ts';
import { isOwnAddress } from './app-protocol.ts';

type Answering = (channel: string, args: unknown) => Promise<Result<unknown>>;

const windows = new WeakMap<WebContents, Answering>();

/** Each window has handlers of its own, because each is told which file it was opened for. */
export function connectWindow(contents: WebContents, handlers: Handlers): void {
  windows.set(contents, async (channel, args) => (await answerCall(handlers, channel, args, report)).result);
}

/** The only place where the main process listens to windows. */
export function openBridge(): void {
  handle(BRIDGE, (event, channel, args) => {
    const answer = windows.get(event.sender);
    if (!answer || typeof channel !== 'string') return Promise.resolve(refused());
    return answer(channel, args);
  });
}

type Listener = (event: IpcMainInvokeEvent, channel: unknown, args: unknown) => Promise<Result<unknown>>;

function handle(name: string, listener: Listener): void {
  ipcMain.handle(name, (event, channel: unknown, args: unknown, ...more: unknown[]) =>
    isOwnPage(event) && more.length === 0 ? listener(event, channel, args) : refused(),
  );
}

/** The top frame of a window of ours that shows our page; a frame that has gone is null. */
function isOwnPage({ senderFrame, sender }: IpcMainInvokeEvent): boolean {
  if (!senderFrame || senderFrame.parent !== null || senderFrame !== sender.mainFrame) return false;
  return isOwnAddress(senderFrame.url);
}

function refused(): Result<never> {
  return fault('call.stranger', t`This call does not come from a window of the program.`);
}

function report(bug: unknown): void {
  console.error(bug);
}
