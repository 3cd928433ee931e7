/** A pack in several forms as one file, for a window that saves one file at a time. */

import { once } from 'node:events';
import type { Writable } from 'node:stream';
import { Zip, ZipDeflate, ZipPassThrough } from 'fflate';
import { writePack, type FilesOrder, type FileTaker, type WrittenPack } from './pack-files.ts';
import type { PackWatch } from './pack.ts';

/** Into a stream, file after file; rejects as `writePack` does, and then what has been written is no whole file. */
export async function zipPack(
  order: FilesOrder,
  sink: Writable,
  watch: PackWatch = {},
): Promise<WrittenPack> {
  const zip = new Zip((error, chunk) => {
    if (error) throw error;
    sink.write(chunk);
  });
  const taker: FileTaker = {
    willTake: () => Promise.resolve(),
    take: async (name, bytes) => {
      // What is packed already grows by being packed again.
      const isPacked = /\.(png|pdf)$/.test(name);
      const file = isPacked ? new ZipPassThrough(name) : new ZipDeflate(name);
      file.mtime = order.now;
      zip.add(file);
      file.push(bytes, true);
      if (sink.errored) throw sink.errored;
      if (sink.writableNeedDrain) await once(sink, 'drain');
    },
  };
  const written = await writePack(order, taker, watch);
  zip.end();
  sink.end();
  await once(sink, 'finish');
  return written;
}
