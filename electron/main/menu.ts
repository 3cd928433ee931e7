/** The window has its own menu; macOS wants one of the application, for the clipboard too. */

import { Menu } from 'electron';

export function setMenu(platform: NodeJS.Platform): void {
  const roles = [{ role: 'appMenu' }, { role: 'editMenu' }, { role: 'windowMenu' }] as const;
  Menu.setApplicationMenu(platform === 'darwin' ? Menu.buildFromTemplate([...roles]) : null);
}
