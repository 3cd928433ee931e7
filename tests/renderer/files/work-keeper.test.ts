import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { KEEP_AFTER_MS, WorkKeeper, type Unsaved } from '../../../renderer/files/work-keeper.ts';
import { aDocument, aStand } from '../../helpers/build.ts';
import { FakeShell } from './fake-shell.ts';

let shell: FakeShell;
let troubles: (string | null)[];
let keeper: WorkKeeper;

const unsaved = (x: number): Unsaved => ({
  document: aDocument(aStand({ x })),
  identity: {
    name: 'Trio',
    location: null,
    handle: null,
    hash: null,
    readOnly: false,
    key: 'k',
    recoveredFrom: null,
  },
});

beforeEach(() => {
  vi.useFakeTimers();
  shell = new FakeShell();
  troubles = [];
  keeper = new WorkKeeper(shell, (message) => troubles.push(message));
});

afterEach(() => vi.useRealTimers());

describe('WorkKeeper', () => {
  it('keeps the newest state within two seconds of the first change, however many follow', async () => {
    for (let x = 0; x < 30; x++) {
      keeper.changed(unsaved(x));
      await vi.advanceTimersByTimeAsync(60);
    }
    expect(KEEP_AFTER_MS).toBeLessThan(2000);
    expect(shell.calls).toEqual(['recovery.keep']);
    await vi.advanceTimersByTimeAsync(KEEP_AFTER_MS);
    expect(shell.calls).toHaveLength(2);
    expect(shell.kept.get('k')).toContain('"x": 29');
  });

  it('keeps recovered work in place of what it was recovered from', async () => {
    shell.kept.set('old', 'before');
    const { document, identity } = unsaved(1);
    keeper.changed({ document, identity: { ...identity, recoveredFrom: 'old' } });
    await keeper.flush();
    expect([...shell.kept.keys()]).toEqual(['k']);
  });

  it('takes kept work back once everything is saved', async () => {
    keeper.changed(unsaved(1));
    await keeper.flush();
    expect(shell.kept.has('k')).toBe(true);
    keeper.changed(null);
    await vi.runAllTimersAsync();
    expect(shell.kept.has('k')).toBe(false);
  });

  it('takes back even what was still on its way', async () => {
    keeper.changed(unsaved(1));
    const keeping = keeper.flush();
    keeper.changed(null);
    await keeping;
    await vi.runAllTimersAsync();
    expect(shell.kept.has('k')).toBe(false);
    expect(shell.calls).toEqual(['recovery.keep', 'recovery.drop']);
  });

  it('complains once while keeping fails, and tells when it works again', async () => {
    const { call } = shell;
    shell.call = () => Promise.resolve({ ok: false, error: { code: 'disk.full', message: 'full' } }) as never;
    for (let x = 0; x < 3; x++) {
      keeper.changed(unsaved(x));
      await keeper.flush();
    }
    expect(troubles).toEqual(['full']);
    shell.call = call;
    for (let x = 0; x < 2; x++) {
      keeper.changed(unsaved(x));
      await keeper.flush();
    }
    expect(troubles).toEqual(['full', null]);
  });
});
