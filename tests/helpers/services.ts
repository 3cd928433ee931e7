/** Services in a folder of the test's own, with the real disk. */

import { join } from 'node:path';
import { createHandles } from '../../electron/services/handles.ts';
import { createFirstPictures } from '../../electron/services/first-picture.ts';
import { createHandlers, type Services, type WindowShell } from '../../electron/services/handlers.ts';
import { nodeFs } from '../../electron/services/fs.ts';
import { demoPath } from '../../electron/services/program.ts';
import { createPackJobs } from '../../electron/services/pack-jobs.ts';
import type { Plot } from '../../electron/services/plot.ts';
import { createRecovery } from '../../electron/services/recovery.ts';
import { createUserFiles } from '../../electron/services/user-files.ts';
import type { Handlers } from '#contract/contract.ts';
import { temporaryFolder } from './folders.ts';

const PLOT: Plot = {
  bytes: Buffer.from('%PDF-1.7 of a test'),
  pages: 1,
  choice: { paper: 'A4', orientation: 'portrait', scale: 50 },
  notes: [],
};

export interface TestShell {
  readonly folder: string;
  readonly services: Services;
  readonly handlers: Handlers;
}

export function testShell(change: Partial<Services> = {}, window: Partial<WindowShell> = {}): TestShell {
  const folder = temporaryFolder();
  const surroundings = { fs: change.fs ?? nodeFs, state: join(folder, 'state'), handles: createHandles() };
  const demo = demoPath();
  const services: Services = {
    ...surroundings,
    files: createUserFiles(surroundings),
    recovery: createRecovery({ ...surroundings, now: () => new Date() }),
    demo,
    firstPictures: createFirstPictures({ ...surroundings, demo }),
    renderPlot: async () => PLOT,
    packs: createPackJobs(() => new Date()),
    ...change,
  };
  const shell = { shell: 'loopback', notice: null, open: null, dialogs: null } as const;
  return { folder, services, handlers: createHandlers(services, { ...shell, ...window }) };
}
