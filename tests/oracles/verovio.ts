/** The notation library verovio (WebAssembly) as a second reader of scores: what it plays, and how long. */

interface TimeMapEntry {
  readonly tstamp: number;
  readonly measureOn?: string;
}

interface Toolkit {
  setOptions(options: Readonly<Record<string, unknown>>): void;
  loadData(data: string): boolean;
  loadZipDataBuffer(data: ArrayBuffer): boolean;
  renderToTimemap(options: Readonly<Record<string, unknown>>): readonly TimeMapEntry[];
  destroy(): void;
}

interface Verovio {
  readonly VerovioToolkit: new (module: unknown) => Toolkit;
  readonly enableLog?: (level: number, module: unknown) => void;
}

export interface Played {
  readonly bars: number;
  readonly seconds: number;
}

/** Reads a file's bytes; `expanded`: with its repeats and jumps carried out. */
export async function verovioReader(): Promise<(bytes: Uint8Array, expanded: boolean) => Played> {
  // @ts-expect-error: the package carries no types.
  const { default: create } = (await import('verovio/wasm')) as { default: () => Promise<unknown> };
  // @ts-expect-error: the package carries no types.
  const { VerovioToolkit, enableLog } = (await import('verovio/esm')) as Verovio;
  const module = await create();
  enableLog?.(0, module);
  return (bytes, expanded) => {
    const toolkit = new VerovioToolkit(module);
    toolkit.setOptions({ breaks: 'none', [expanded ? 'expandAlways' : 'expandNever']: true });
    try {
      if (bytes[0] === 0x50) toolkit.loadZipDataBuffer(new Uint8Array(bytes).buffer);
      else toolkit.loadData(new TextDecoder().decode(bytes));
      const map = toolkit.renderToTimemap({ includeMeasures: true });
      return {
        bars: map.filter(({ measureOn }) => measureOn !== undefined).length,
        seconds: (map.at(-1)?.tstamp ?? 0) / 1000,
      };
    } finally {
      toolkit.destroy();
    }
  };
}
