/** The whole contract, once for both shells. What differs between them is handed in. */

import { basename, dirname, join } from 'node:path';
import type {
  FileType,
  Handle,
  Handlers,
  Hello,
  PlotRequest,
  Result,
  SavedType,
} from '#contract/contract.ts';
import { fault, ok } from '#contract/result.ts';
import { t } from '#model/words/say.ts';
import { renderExport } from './export.ts';
import { settled } from './faults.ts';
import { checkFileName, listFolder, startFolder, withEnding } from './folders.ts';
import type { FirstPictures } from './first-picture.ts';
import type { Fs } from './fs.ts';
import type { Handles } from './handles.ts';
import { openFile } from './open-file.ts';
import type { PackJobs } from './pack-jobs.ts';
import { renderPaper } from './paper.ts';
import { hashOfPart, openPartFile, partBeside, readPartFile } from './part-file.ts';
import type { Plot } from './plot.ts';
import { version } from './program.ts';
import { clearRecent, recentFiles } from './recent-files.ts';
import type { Recovery } from './recovery.ts';
import { openScore } from './score-file.ts';
import { readSettings, writeSettings } from './settings.ts';
import { readTable } from './table-file.ts';
import { readUnderlay } from './underlay-file.ts';
import type { UserFiles } from './user-files.ts';

/** The system's file dialogs; each answers with a path, or null when the user changed his mind. */
export interface Dialogs {
  askOpen(type: FileType): Promise<string | null>;
  askSave(suggestedName: string, type: SavedType): Promise<string | null>;
}

/** What every window of a running program shares. */
export interface Services {
  readonly fs: Fs;
  readonly state: string;
  readonly handles: Handles;
  readonly files: UserFiles;
  readonly recovery: Recovery;
  readonly renderPlot: (request: PlotRequest) => Promise<Plot>;
  readonly firstPictures: FirstPictures;
  readonly packs: PackJobs;
  /** Path of the demo concert that is shipped with the program. */
  readonly demo: string;
}

/** What one window is told and given by its shell. */
export interface WindowShell {
  readonly shell: Hello['shell'];
  readonly notice: string | null;
  /** Path of the file it was opened for. */
  readonly open: string | null;
  /** Null when the shell has no dialogs of the system. */
  readonly dialogs: Dialogs | null;
}

export function createHandlers(services: Services, window: WindowShell): Handlers {
  return {
    'app.hello': async () => ok(greeting(services, window)),
    ...dialogHandlers(services, window),
    ...folderHandlers(services),
    ...fileHandlers(services),
    ...scoreHandlers(services),
    ...partHandlers(services),
    ...recoveryHandlers(services),
    ...settingsHandlers(services),
    'plan.first': (asked) => settled(services.state, () => services.firstPictures.of(asked, window)),
    ...plotHandlers(services),
    ...packHandlers(services),
    ...paperHandlers(services),
    ...exportHandlers(services),
  };
}

function greeting({ handles }: Services, { dialogs, open, ...known }: WindowShell): Hello {
  const nativeDialogs = dialogs !== null;
  return { ...known, version, nativeDialogs, open: open === null ? null : handles.handleOf(open) };
}

function dialogHandlers(
  { handles }: Services,
  { dialogs }: WindowShell,
): Pick<Handlers, 'files.askOpen' | 'files.askSave'> {
  const none = () =>
    fault('dialog.none', t`This shell has no dialogs of the system: browse the folders instead.`);
  const named = (path: string | null): Handle | null => (path === null ? null : handles.handleOf(path));
  return {
    'files.askOpen': async (type) => (dialogs ? ok(named(await dialogs.askOpen(type))) : none()),
    'files.askSave': async (suggested, type) => {
      if (!dialogs) return none();
      const path = await dialogs.askSave(suggested, type);
      return ok(named(path === null ? null : withEnding(path, type)));
    },
  };
}

function folderHandlers({
  fs,
  handles,
  files,
}: Services): Pick<Handlers, 'files.list' | 'files.inFolder' | 'files.beside'> {
  const named = async (folder: string, name: string) => {
    checkFileName(name);
    const file = join(folder, name);
    return { handle: handles.handleOf(file), exists: (await fs.stat(file).catch(() => null)) !== null };
  };
  return {
    'files.list': async (folder) => {
      if (folder !== null) return settledAt(handles, folder, (path) => listFolder(fs, handles, path));
      const start = files.lastFolder() ?? (await startFolder(fs));
      return settled(start, () => listFolder(fs, handles, start));
    },
    'files.inFolder': (folder, name) => settledAt(handles, folder, (path) => named(path, name)),
    'files.beside': (file, name) => settledAt(handles, file, (path) => named(dirname(path), name)),
  };
}

function fileHandlers(
  services: Services,
): Pick<Handlers, 'files.read' | 'files.save' | 'files.demo' | 'recent.list' | 'recent.clear'> {
  const { fs, state, handles, files, demo } = services;
  return {
    'files.read': (handle) => settledAt(handles, handle, () => files.read(handle)),
    'files.save': (request) => settledAt(handles, request.handle, () => files.saveDocument(request)),
    'files.demo': () =>
      settled(demo, async () => ({ name: basename(demo), text: (await openFile(fs, demo)).text })),
    'recent.list': () =>
      settled(state, async () =>
        (await recentFiles(fs, state)).map((path) => ({
          handle: handles.handleOf(path),
          name: basename(path),
          location: dirname(path),
        })),
      ),
    'recent.clear': () => settled(state, () => clearRecent(fs, state).then(() => null)),
  };
}

function scoreHandlers({ fs, handles }: Services): Pick<Handlers, 'score.read'> {
  return {
    'score.read': (handle, root) =>
      settledAt(handles, handle, async (path) => {
        const { score: _score, ...file } = await openScore(fs, path, { root, repeatsAfterJump: false });
        return { name: basename(path), ...file };
      }),
  };
}

type PartChannel = Extract<keyof Handlers, `part.${string}`> | 'table.read';

function partHandlers({ fs, handles }: Services): Pick<Handlers, PartChannel> {
  return {
    'table.read': (handle) =>
      settledAt(handles, handle, async (path) => ({ name: basename(path), text: await readTable(fs, path) })),
    'part.read': (handle) => settledAt(handles, handle, (path) => readPartFile(fs, path)),
    'part.bytes': (handle) =>
      settledAt(handles, handle, async (path) =>
        Buffer.from((await openPartFile(fs, path)).bytes).toString('base64'),
      ),
    'part.beside': (document, name) =>
      settledAt(handles, document, async (path) => {
        const found = await partBeside(fs, path, name);
        return found === null ? null : handles.handleOf(found);
      }),
    'part.hash': (handle) => settledAt(handles, handle, (path) => hashOfPart(fs, path)),
  };
}

type RecoveryChannel = Extract<keyof Handlers, `recovery.${string}`>;

function recoveryHandlers({ recovery, handles, state }: Services): Pick<Handlers, RecoveryChannel> {
  return {
    'recovery.keep': (key, { handle, recoveredFrom, ...work }) =>
      settled(state, async () => {
        const path = handle === null ? null : handles.pathOf(handle);
        await recovery.keep(key, { ...work, path }, recoveredFrom);
        return null;
      }),
    'recovery.drop': (key) => settled(state, () => recovery.drop(key).then(() => null)),
    'recovery.list': () =>
      settled(state, async () =>
        (await recovery.list()).map(({ id, entry }) => ({
          id,
          name: entry.name,
          location: entry.path,
          savedAt: entry.savedAt,
        })),
      ),
    'recovery.read': (id) =>
      settled(state, async () => {
        const { text, path, name, hash } = await recovery.read(id);
        return { text, name, handle: path === null ? null : handles.handleOf(path), location: path, hash };
      }),
    'recovery.discard': (id) => settled(state, () => recovery.discard(id).then(() => null)),
  };
}

function settingsHandlers({ fs, state }: Services): Pick<Handlers, 'settings.read' | 'settings.write'> {
  return {
    'settings.read': () => settled(state, () => readSettings(fs, state)),
    'settings.write': (settings) => settled(state, () => writeSettings(fs, state, settings).then(() => null)),
  };
}

function plotHandlers({
  handles,
  files,
  state,
  renderPlot,
}: Services): Pick<Handlers, 'plot.render' | 'plot.save'> {
  return {
    'plot.render': (request) =>
      settled(state, async () => {
        const { bytes, pages } = await renderPlot(request);
        return { base64: Buffer.from(bytes).toString('base64'), pages };
      }),
    'plot.save': (request, handle, replace) =>
      settledAt(handles, handle, async () =>
        files.savePrint(handle, (await renderPlot(request)).bytes, replace),
      ),
  };
}

type PackChannel = Extract<keyof Handlers, `pack.${string}`>;

function packHandlers({ handles, files, state, packs }: Services): Pick<Handlers, PackChannel> {
  return {
    'pack.begin': (order) => settled(state, async () => ({ job: packs.begin(order) })),
    'pack.watch': (job, seen) => settled(state, () => packs.watch(job, seen)),
    'pack.stop': (job) => settled(state, () => packs.stop(job)),
    'pack.bytes': (job) => settled(state, async () => Buffer.from(await packs.bytes(job)).toString('base64')),
    'pack.save': (job, handle, replace) =>
      settledAt(handles, handle, async () =>
        files.savePrint(handle, await packs.bytes(job), replace, packs.typeOf(job)),
      ),
  };
}

function paperHandlers({ fs, handles, files }: Services): Pick<Handlers, 'paper.save'> {
  return {
    'paper.save': (request, handle, replace) =>
      settledAt(handles, handle, async () => {
        const { bytes, sheets, notes } = await renderPaper(request, { fs, handles, now: () => new Date() });
        return { ...(await files.savePrint(handle, bytes, replace)), sheets, notes };
      }),
  };
}

/** Ways in and out for what other programs draw and count with. */
function exportHandlers({ fs, handles, files }: Services): Pick<Handlers, 'underlay.read' | 'export.save'> {
  return {
    'underlay.read': (handle) => settledAt(handles, handle, (path) => readUnderlay(fs, path)),
    'export.save': (request, handle, replace) =>
      settledAt(handles, handle, async () => {
        const type = request.what === 'dxf' ? 'dxf' : 'csv';
        return files.savePrint(handle, renderExport(request), replace, type);
      }),
  };
}

/** Like `settled`, for work on the path behind a handle; an unknown handle is a fault result too. */
async function settledAt<T>(
  handles: Handles,
  handle: Handle,
  work: (path: string) => Promise<T>,
): Promise<Result<T>> {
  const path = await settled('', async () => handles.pathOf(handle));
  return path.ok ? settled(path.value, () => work(path.value)) : path;
}
