/** What the shell says to a German user: faults of the disk, of foreign files and of names. */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { answerCall } from '#contract/answer-call.ts';
import type { Handlers } from '#contract/contract.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { whyBrowser } from '../../../electron/loopback/why-browser.ts';
import { faultOf } from '../../../electron/services/faults.ts';
import { checkFileName } from '../../../electron/services/folders.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { openBytes, openFile, tooLarge } from '../../../electron/services/open-file.ts';
import { readScoreBytes } from '../../../electron/services/score-container.ts';
import * as electron from '../../helpers/electron-stub.ts';

vi.mock('electron', () => import('../../helpers/electron-stub.ts'));

const folder = mkdtempSync(join(tmpdir(), 'standlines-german-'));
beforeAll(() => speakFrom('de', german));
afterAll(() => {
  speakEnglish();
  rmSync(folder, { recursive: true, force: true });
});

const messageOf = (work: () => unknown): string => {
  try {
    work();
  } catch (error) {
    return faultOf(error, '').message;
  }
  throw new Error('nothing was refused');
};

describe('in German', () => {
  it('the system’s errors say what is wrong, where, and what to do', () => {
    const error = Object.assign(new Error('no space left on device'), { code: 'ENOSPC' });
    expect(faultOf(error, '/musik/Trio.standlines').message).toBe(
      'Der Datenträger ist voll: „Trio.standlines“ konnte in /musik nicht gespeichert werden. Platz schaffen oder einen anderen Ort wählen.',
    );
    const odd = Object.assign(new Error('odd'), { code: 'EODD' });
    expect(faultOf(odd, '/musik/Trio.standlines').message).toBe(
      'Das System antwortete EODD bei „Trio.standlines“ in /musik.',
    );
  });

  it('names and sizes that cannot be are refused', async () => {
    expect(messageOf(() => checkFileName('Trio?'))).toBe(
      '„Trio?“ kann kein Dateiname sein: er enthält ein Zeichen, das in Dateinamen nicht stehen kann.',
    );
    expect(tooLarge('plan.png', 70 * 1024 * 1024, 'underlay').message).toBe(
      '„plan.png“ hat 70 MB; eine Datei für eine Unterlage hat höchstens 64 MB.',
    );
    await expect(openBytes(nodeFs, folder, 'part')).rejects.toThrow(/ist ein Ordner, keine Datei\.$/);
    const latin = join(folder, 'latin.standlines');
    writeFileSync(latin, Buffer.from([0xe4, 0xf6]));
    await expect(openFile(nodeFs, latin)).rejects.toThrow('„latin.standlines“ ist keine Standlines-Datei');
  });

  it('a score that is none is refused in whole sentences', () => {
    const refusalOf = (text: string) => messageOf(() => readScoreBytes(Buffer.from(text), 'Trio.xml'));
    expect(refusalOf('keine Noten')).toMatch(/^„Trio\.xml“ ist kein MusicXML: weder XML noch/);
    expect(refusalOf('<?xml version="1.0"?><html/>')).toBe(
      '„Trio.xml“: Das ist XML, aber keine MusicXML-Partitur: Es beginnt mit <html> statt mit <score-partwise> oder <score-timewise>.',
    );
    expect(refusalOf('<score-partwise><part-list>')).toMatch(/\(Element nicht geschlossen: part-list\)/);
  });

  it('a window that runs in a browser says why', () => {
    expect(whyBrowser('Chromium', 'root')).toBe(
      'Dieses Fenster läuft in Chromium, weil Electron als root nicht abgeschirmt laufen kann. Alles andere ist gleich.',
    );
    expect([
      whyBrowser('Chromium', undefined),
      whyBrowser(undefined, 'root'),
      whyBrowser('x', 'odd'),
    ]).toEqual([null, null, null]);
  });

  it('a call that no window makes is refused', async () => {
    const answer = await answerCall({} as Handlers, 'files.list', [7], () => undefined);
    expect(answer.result).toMatchObject({
      error: { message: 'Die Angaben zu „files.list“ haben nicht die richtige Form (bei 0).' },
    });
  });
});

describe('the system’s own dialogs and menu', () => {
  beforeEach(() => vi.clearAllMocks());

  it('have German names, buttons and items', async () => {
    const { askToLeave, dialogsOver } = await import('../../../electron/main/dialogs.ts');
    const window = new electron.FakeWindow({ webPreferences: {} }) as never;
    electron.dialog.showOpenDialog.mockResolvedValueOnce({ filePaths: [] });
    await dialogsOver(window).askOpen('table');
    expect(electron.dialog.showOpenDialog).toHaveBeenCalledWith(
      window,
      expect.objectContaining({ filters: [{ name: 'Tabelle', extensions: ['csv', 'tsv'] }] }),
    );
    askToLeave(window);
    expect(electron.dialog.showMessageBoxSync).toHaveBeenCalledWith(
      window,
      expect.objectContaining({ buttons: ['Bleiben', 'Verlassen'] }),
    );
    const { setMenu } = await import('../../../electron/main/menu.ts');
    setMenu('darwin');
    const [menus] = electron.Menu.buildFromTemplate.mock.calls[0] ?? [];
    expect(labelsIn(menus)).toContain('Standlines beenden');
    expect(labelsIn(menus)).toContain('Bearbeiten');
    setMenu('linux');
    expect(electron.Menu.setApplicationMenu).toHaveBeenLastCalledWith(null);
  });
});

function labelsIn(menu: unknown): string[] {
  return [...JSON.stringify(menu).matchAll(/"label":"([^"]*)"/g)].map(([, label = '']) => label);
}
