/**
 * Packs on the way: begun, watched, stopped, looked at and saved. What is saved is the very file that was looked at. Only the
 * last few are kept, each in a file, so that it does not matter to memory how long a pack is.
 */

import { randomUUID } from 'node:crypto';
import type { Fault, PackOrder, PackState } from '#contract/contract.ts';
import { concertOf } from '#model/document/document.ts';
import { pieceOfEntry } from '#model/drawing/pack/pack.ts';
import { readDocument } from '#model/file-format/read.ts';
import { t } from '#model/words/say.ts';
import { FaultError, faultOf } from './faults.ts';
import { printPack, type PackStep, type PrintedPack } from './pack.ts';
import { zipPack } from './pack-zip.ts';
import { scratchFile, type ScratchFile } from './scratch-file.ts';

export interface PackJobs {
  /** Throws `FaultError` when the text is no document; other faults are told to whoever watches. */
  begin(order: PackOrder): string;
  /** Answers when more is known than after `seen` steps, at the latest after a second. */
  watch(job: string, seen: number): Promise<PackState>;
  /** Ends it if it is still being made, and forgets it. */
  stop(job: string): Promise<null>;
  /** Throws `FaultError` when it is not whole. */
  bytes(job: string): Promise<Uint8Array>;
  /** The ending of its file. Throws `FaultError` when there is none of that name. */
  typeOf(job: string): 'pdf' | 'zip';
}

interface Job {
  readonly type: 'pdf' | 'zip';
  readonly stopper: AbortController;
  state: PackState;
  file: ScratchFile | null;
  /** Resolved and made anew with each step. */
  news: PromiseWithResolvers;
}

interface PromiseWithResolvers {
  readonly promise: Promise<void>;
  readonly resolve: () => void;
}

/** One for what is shown, one for what replaces it. */
const MOST_KEPT = 3;
const LONGEST_WAIT = 1000;

export function createPackJobs(now: () => Date): PackJobs {
  const jobs = new Map<string, Job>();
  const jobNamed = (id: string): Job => {
    const job = jobs.get(id);
    if (!job) throw new FaultError('pack.unknown', t`That pack is no longer there: make it again.`);
    return job;
  };
  const stop = async (id: string): Promise<null> => {
    const job = jobs.get(id);
    jobs.delete(id);
    job?.stopper.abort();
    await job?.file?.drop();
    return null;
  };
  return {
    begin(order) {
      const id = randomUUID();
      jobs.set(id, started(order, now()));
      const oldest = [...jobs.keys()].slice(0, -MOST_KEPT);
      for (const one of oldest) void stop(one);
      return id;
    },
    async watch(id, seen) {
      const job = jobNamed(id);
      if (job.state.step <= seen && isUnderWay(job.state)) await soon(job.news.promise);
      return job.state;
    },
    stop,
    async bytes(id) {
      const { file } = jobNamed(id);
      if (!file) throw new FaultError('pack.notReady', t`The pack is not whole yet.`);
      return file.read();
    },
    typeOf: (id) => jobNamed(id).type,
  };
}

function isUnderWay({ doing }: PackState): boolean {
  return doing === 'counting' || doing === 'drawing';
}

function soon(news: Promise<void>): Promise<void> {
  return new Promise((resolve) => {
    const timer = setTimeout(resolve, LONGEST_WAIT);
    void news.then(() => {
      clearTimeout(timer);
      resolve();
    });
  });
}

function started({ text, ...order }: PackOrder, now: Date): Job {
  const read = readDocument(text);
  if (!read.ok) throw new FaultError('pack.notADocument', read.problem.message);
  const { document } = read;
  const type = order.formats.every((format) => format === 'pdf') ? 'pdf' : 'zip';
  const job: Job = {
    type,
    stopper: new AbortController(),
    state: { step: 0, doing: 'counting', done: 0, of: 1, pack: null, fault: null },
    file: null,
    news: withResolvers(),
  };
  const told = (change: Partial<PackState>): void => tell(job, change);
  const watch = { signal: job.stopper.signal, progress: (step: PackStep) => told(step) };
  const made = type === 'pdf' ? printPack : zipPack;
  scratchFile<PrintedPack>((sink) => made({ ...order, document, now }, sink, watch)).then(
    (file) => {
      if (job.stopper.signal.aborted) return void file.drop();
      job.file = file;
      told({ doing: 'ready', pack: packOf(file.outcome) });
    },
    (error: unknown) => told({ doing: 'failed', fault: faultFrom(error, concertOf(document).name) }),
  );
  const packOf = ({ sheets, entries, notes }: PrintedPack): PackState['pack'] => ({
    ...{ sheets, notes },
    entries: entries.map(({ entry, first, count }) => ({
      name: entry.name,
      title: entry.title,
      piece: pieceOfEntry(document, entry),
      ...{ first, count },
    })),
  });
  return job;
}

function tell(job: Job, change: Partial<PackState>): void {
  job.state = { ...job.state, ...change, step: job.state.step + 1 };
  const { resolve } = job.news;
  job.news = withResolvers();
  resolve();
}

/** A bug must not look like a pack that never ends: it is told, too. */
function faultFrom(error: unknown, name: string): Fault {
  try {
    return faultOf(error, name);
  } catch {
    return {
      code: 'pack.failed',
      message: t`The pack could not be drawn (${error instanceof Error ? error.message : String(error)}).`,
    };
  }
}

function withResolvers(): PromiseWithResolvers {
  let resolve = (): void => undefined;
  const promise = new Promise<void>((done) => (resolve = done));
  return { promise, resolve };
}
