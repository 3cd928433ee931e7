/** The program without a window. */

import { nodeFs } from '../services/fs.ts';
import { commandLine } from './command-line.ts';

// A reader that has seen enough, such as `head`, is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

process.exitCode = await commandLine(process.argv.slice(2), {
  fs: nodeFs,
  now: () => new Date(),
  print: (text) => void process.stdout.write(text),
  complain: (line) => void process.stderr.write(`${line}\n`),
});
