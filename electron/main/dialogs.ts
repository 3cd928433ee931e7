/** The system's file dialogs, over the window that asks. */

import { dialog, type BrowserWindow, type FileFilter } from 'electron';
import type { FileType } from '#contract/contract.ts';
import { t } from '#model/words/say.ts';
import type { Dialogs } from '../services/handlers.ts';

const NAMES: Readonly<Record<FileType, () => string>> = {
  standlines: () => t`Standlines concert`,
  pdf: () => 'PDF',
  score: () => 'MusicXML',
  table: () => t`Table`,
  underlay: () => t`Picture, PDF or DXF`,
  dxf: () => t`DXF drawing`,
  csv: () => t`CSV table`,
  zip: () => t`Files in a ZIP`,
};

const EXTENSIONS: Readonly<Record<FileType, string[]>> = {
  standlines: ['standlines'],
  pdf: ['pdf'],
  score: ['musicxml', 'xml', 'mxl'],
  table: ['csv', 'tsv'],
  underlay: ['png', 'jpg', 'jpeg', 'pdf', 'dxf'],
  dxf: ['dxf'],
  csv: ['csv'],
  zip: ['zip'],
};

function filterFor(type: FileType): FileFilter {
  return { name: NAMES[type](), extensions: EXTENSIONS[type] };
}

export function dialogsOver(window: BrowserWindow): Dialogs {
  return {
    async askOpen(type) {
      const answer = await dialog.showOpenDialog(window, {
        properties: ['openFile'],
        filters: [filterFor(type)],
      });
      return answer.filePaths[0] ?? null;
    },
    async askSave(suggestedName, type) {
      const answer = await dialog.showSaveDialog(window, {
        defaultPath: suggestedName,
        filters: [filterFor(type)],
      });
      return answer.canceled || !answer.filePath ? null : answer.filePath;
    },
  };
}

/** Asked when a window with unsaved work is closed. True: close it. */
export function askToLeave(window: BrowserWindow): boolean {
  const answer = dialog.showMessageBoxSync(window, {
    type: 'warning',
    message: t`This concert has changes that are not saved.`,
    detail: t`If you leave now they are kept aside and offered to you at the next start.`,
    buttons: [t`Stay`, t`Leave`],
    defaultId: 0,
    cancelId: 0,
  });
  return answer === 1;
}

/** Asked when a window has died. True: open it again. */
export async function askToReopen(): Promise<boolean> {
  const answer = await dialog.showMessageBox({
    type: 'error',
    message: t`The window has stopped working.`,
    detail: t`Your last changes have been kept aside and will be offered to you.`,
    buttons: [t`Open again`, t`Quit`],
    defaultId: 0,
    cancelId: 1,
  });
  return answer.response === 0;
}
