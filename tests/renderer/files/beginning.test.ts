import type { Channel, Handle, Host } from '#contract/contract.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { describe, expect, it } from 'vitest';
import { begin } from '../../../renderer/files/beginning.ts';
import { askAtFirst } from '../../../renderer/files/first-questions.ts';
import { rememberedFile, rememberFile } from '../../../renderer/files/window-memory.ts';
import { aDocument } from '../../helpers/build.ts';

interface Shell {
  /** Named on the command line. */
  readonly open?: Handle;
  readonly recent?: readonly Handle[];
}

const shellWith = ({ open, recent = [] }: Shell): Host => {
  const answers: Partial<Record<Channel, unknown>> = {
    'app.hello': { open: open ?? null },
    'settings.read': {},
    'files.demo': { name: 'demo', text: writeDocument(aDocument()) },
    'recent.list': recent.map((handle) => ({ handle })),
    'recovery.list': [],
  };
  return { call: (...[channel]) => Promise.resolve({ ok: true, value: answers[channel] }) as never };
};

const filesOf = async (shell: Shell, before?: Handle | null) => {
  const begun = begin(await askAtFirst(shellWith(shell)), 'en-GB', before);
  if (!begun.ok) throw new Error(begun.error.message);
  return begun.value.opening.files;
};

describe('what is opened first', () => {
  it('is the file of the command line in a new window, else the last one', async () => {
    expect(await filesOf({ open: 'named', recent: ['last'] })).toEqual(['named']);
    expect(await filesOf({ recent: ['last', 'older'] })).toEqual(['last']);
    expect(await filesOf({})).toEqual([]);
  });

  it('is after a reload what the window worked on, whatever it was started with', async () => {
    const shell = { open: 'named', recent: ['other window', 'mine', 'named'] };
    expect(await filesOf(shell, 'mine')).toEqual(['mine', 'named']);
    expect(await filesOf(shell, 'named')).toEqual(['named']);
    expect(await filesOf(shell, null)).toEqual([]);
  });
});

describe('the memory of a window', () => {
  it('tells a window without a file from a new one', () => {
    const kept = new Map<string, string>();
    const memory = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
    };
    expect(rememberedFile(memory)).toBe(undefined);
    rememberFile('mine', memory);
    expect(rememberedFile(memory)).toBe('mine');
    rememberFile(null, memory);
    expect(rememberedFile(memory)).toBe(null);
  });
});
