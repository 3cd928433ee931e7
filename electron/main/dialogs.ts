/** The system's file dialogs, over the window that asks. */

import { dialog, type BrowserWindow, type FileFilter } from 'electron';
import type { FileType } from '#contract/contract.ts';
import type { Dialogs } from '../services/handlers.ts';

const FILTERS: Readonly<Record<FileType, FileFilter>> = {
  standlines: { name: 'Standlines concert', extensions: ['standlines'] },
  pdf: { name: 'PDF', extensions: ['pdf'] },
  score: { name: 'MusicXML', extensions: ['musicxml', 'xml', 'mxl'] },
  table: { name: 'Table', extensions: ['csv', 'tsv'] },
  underlay: { name: 'Picture, PDF or DXF', extensions: ['png', 'jpg', 'jpeg', 'pdf', 'dxf'] },
  dxf: { name: 'DXF drawing', extensions: ['dxf'] },
  csv: { name: 'CSV table', extensions: ['csv'] },
  zip: { name: 'Files in a ZIP', extensions: ['zip'] },
};

export function dialogsOver(window: BrowserWindow): Dialogs {
  return {
    async askOpen(type) {
      const answer = await dialog.showOpenDialog(window, {
        properties: ['openFile'],
        filters: [FILTERS[type]],
      });
      return answer.filePaths[0] ?? null;
    },
    async askSave(suggestedName, type) {
      const answer = await dialog.showSaveDialog(window, {
        defaultPath: suggestedName,
        filters: [FILTERS[type]],
      });
      return answer.canceled || !answer.filePath ? null : answer.filePath;
    },
  };
}

/** Asked when a window with unsaved work is closed. True: close it. */
export function askToLeave(window: BrowserWindow): boolean {
  const answer = dialog.showMessageBoxSync(window, {
    type: 'warning',
    message: 'This concert has changes that are not saved.',
    detail: 'If you leave now they are kept aside and offered to you at the next start.',
    buttons: ['Stay', 'Leave'],
    defaultId: 0,
    cancelId: 0,
  });
  return answer === 1;
}

/** Asked when a window has died. True: open it again. */
export async function askToReopen(): Promise<boolean> {
  const answer = await dialog.showMessageBox({
    type: 'error',
    message: 'The window has stopped working.',
    detail: 'Your last changes have been kept aside and will be offered to you.',
    buttons: ['Open again', 'Quit'],
    defaultId: 0,
    cancelId: 1,
  });
  return answer.response === 0;
}
