/** Puts the services together for a shell that runs on this machine. */

import { dirname, join } from 'node:path';
import { createFirstPictures } from './first-picture.ts';
import { nodeFs } from './fs.ts';
import { createHandles } from './handles.ts';
import type { Services } from './handlers.ts';
import { createPackJobs } from './pack-jobs.ts';
import { renderPlot } from './plot.ts';
import { demoPath } from './program.ts';
import { recentFiles } from './recent-files.ts';
import { createRecovery } from './recovery.ts';
import { stateFolder } from './state-folder.ts';
import { sweepFolders } from './sweep.ts';
import { createUserFiles } from './user-files.ts';

/** Also clears away, in the background, what killed saves have left behind. */
export function startServices(): Services {
  const state = stateFolder();
  const surroundings = { fs: nodeFs, state, handles: createHandles() };
  const demo = demoPath();
  void sweep(state);
  return {
    ...surroundings,
    files: createUserFiles(surroundings),
    recovery: createRecovery({ fs: nodeFs, state, now: () => new Date() }),
    demo,
    renderPlot,
    firstPictures: createFirstPictures({ ...surroundings, demo }),
    packs: createPackJobs(() => new Date()),
  };
}

async function sweep(state: string): Promise<void> {
  const recent = await recentFiles(nodeFs, state);
  await sweepFolders(nodeFs, [state, join(state, 'recovery'), ...recent.map(dirname)], new Date());
}
