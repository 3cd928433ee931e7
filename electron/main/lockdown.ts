/** What a window may not do, whatever gets into it. */

import type { App, Session, WebContents } from 'electron';
import { isOwnAddress } from './app-protocol.ts';

/** For every web contents that Electron makes, now or later. */
export function lockDown(app: App): void {
  app.on('web-contents-created', (_event, contents) => lockDownContents(contents));
}

function lockDownContents(contents: WebContents): void {
  const stayHere = (event: { preventDefault(): void; readonly url: string }) => {
    if (!isOwnAddress(event.url)) event.preventDefault();
  };
  contents.on('will-navigate', stayHere);
  contents.on('will-redirect', stayHere);
  contents.on('will-frame-navigate', stayHere);
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}

/** No permission, no device, no download, and no request that leaves the program. */
export function lockDownSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.on('will-download', (event) => event.preventDefault());
  session.webRequest.onBeforeRequest(({ url }, answer) => answer({ cancel: !staysInside(url) }));
}

function staysInside(address: string): boolean {
  return isOwnAddress(address) || /^(blob:app:\/\/main\/|data:|devtools:)/.test(address);
}
