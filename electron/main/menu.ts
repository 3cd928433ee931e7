/** The window has its own menu; macOS wants one of the application, for the clipboard too. */

import { Menu, type MenuItemConstructorOptions } from 'electron';
import { t } from '#model/words/say.ts';

export function setMenu(platform: NodeJS.Platform): void {
  Menu.setApplicationMenu(platform === 'darwin' ? Menu.buildFromTemplate(menus()) : null);
}

type Item = MenuItemConstructorOptions;

const LINE: Item = { type: 'separator' };

/** With words of their own: Electron has English ones only. */
function menus(): Item[] {
  return [
    { label: 'Standlines', submenu: applicationItems() },
    { label: t`Edit`, submenu: editItems() },
    { role: 'windowMenu', label: t`Window`, submenu: windowItems() },
  ];
}

function applicationItems(): Item[] {
  return [
    { role: 'about', label: t`About Standlines` },
    LINE,
    { role: 'services', label: t`Services` },
    LINE,
    { role: 'hide', label: t`Hide Standlines` },
    { role: 'hideOthers', label: t`Hide Others` },
    { role: 'unhide', label: t`Show All` },
    LINE,
    { role: 'quit', label: t`Quit Standlines` },
  ];
}

function editItems(): Item[] {
  return [
    { role: 'undo', label: t`Undo` },
    { role: 'redo', label: t`Redo` },
    LINE,
    { role: 'cut', label: t`Cut` },
    { role: 'copy', label: t`Copy` },
    { role: 'paste', label: t`Paste` },
    { role: 'pasteAndMatchStyle', label: t`Paste and Match Style` },
    { role: 'delete', label: t`Delete` },
    { role: 'selectAll', label: t`Select All` },
  ];
}

function windowItems(): Item[] {
  return [
    { role: 'minimize', label: t`Minimize` },
    { role: 'zoom', label: t`Zoom` },
    LINE,
    { role: 'front', label: t`Bring All to Front` },
  ];
}
