/** The program without a window. */

import { nodeFs } from '../services/fs.ts';
import { stateFolder } from '../services/state-folder.ts';
import { commandLine } from './command-line.ts';

// A reader that has seen enough, such as `head`, is no fault; a disk that is full is one.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit();
  process.stderr.write(
    `The output could not be written (${error.code ?? error.message}): make room, or send it elsewhere.\n`,
  );
  process.exit(2);
});

process.exitCode = await commandLine(process.argv.slice(2), {
  fs: nodeFs,
  now: () => new Date(),
  state: stateFolder(),
  print: (text) => void process.stdout.write(text),
  complain: (line) => void process.stderr.write(`${line}\n`),
});
