/** A disk that fails at a chosen step, over the real one, and that writes down what was asked of it. */

import { nodeFs, type Fs, type OpenFile } from '../../electron/services/fs.ts';

export interface FailingFs {
  readonly fs: Fs;
  /** Every step so far: "open wx", "write", "sync", "rename", ... */
  readonly steps: readonly string[];
}

export interface Failure {
  /** The step that fails, counted from 1; Infinity: none. */
  readonly at: number;
  readonly code: string;
  /** Whether every step after it fails too, as when a drive is pulled out. */
  readonly forever?: boolean;
  /** What to do instead of throwing, for instance dying. */
  readonly fail?: () => void;
}

export function failingFs({ at, code, forever = false, fail }: Failure): FailingFs {
  const steps: string[] = [];
  const step = (name: string) => {
    steps.push(name);
    const fails = forever ? steps.length >= at : steps.length === at;
    if (fails && fail) return fail();
    if (fails) throw Object.assign(new Error(`${code}: planted at "${name}"`), { code });
  };
  return { fs: overFs(nodeFs, step), steps };
}

type Step = (name: string) => void;

function overFs(fs: Fs, step: Step): Fs {
  const guarded =
    <A extends unknown[], R>(name: string, work: (...args: A) => Promise<R>) =>
    async (...args: A): Promise<R> => {
      step(name);
      return work(...args);
    };
  return {
    realpath: guarded('realpath', (path) => fs.realpath(path)),
    stat: guarded('stat', (path) => fs.stat(path)),
    access: guarded('access', (path, mode) => fs.access(path, mode)),
    link: guarded('link', (from, to) => fs.link(from, to)),
    copyFile: guarded('copyFile', (from, to) => fs.copyFile(from, to)),
    rename: guarded('rename', (from, to) => fs.rename(from, to)),
    unlink: (path) => fs.unlink(path),
    mkdir: guarded('mkdir', (path, options) => fs.mkdir(path, options)),
    readdir: guarded('readdir', (path) => fs.readdir(path)),
    async open(path, flags, mode) {
      step(`open ${flags}`);
      return overFile(await fs.open(path, flags, mode), step);
    },
  };
}

/** A real file is closed even when closing is what fails, as the system does. */
function overFile(file: OpenFile, step: Step): OpenFile {
  let closed = false;
  return {
    async writeFile(bytes) {
      step('write');
      await file.writeFile(bytes);
    },
    async readFile() {
      step('read');
      return file.readFile();
    },
    async stat() {
      step('fstat');
      return file.stat();
    },
    async chmod(mode) {
      step('chmod');
      await file.chmod(mode);
    },
    async sync() {
      step('sync');
      await file.sync();
    },
    async close() {
      if (!closed) await file.close();
      closed = true;
      step('close');
    },
  };
}
