/** The contract as a window meets it, over a real disk. */

import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { FileText, Handle, PlotRequest, Result, Saved, SaveRequest } from '#contract/contract.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { aConcert, aDocument } from '../../helpers/build.ts';
import { testShell, type TestShell } from '../../helpers/services.ts';

const TEXT = writeDocument(aDocument());
const OTHER = writeDocument(aDocument(aConcert({ name: 'Another evening' })));
const WORK = { name: 'Trio', handle: null, hash: null, text: OTHER, recoveredFrom: null };

function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
  return result.value;
}

function code(result: Result<unknown>): string {
  return result.ok ? 'ok' : result.error.code;
}

async function handleIn({ services, handlers, folder }: TestShell, name: string): Promise<Handle> {
  return value(await handlers['files.inFolder'](services.handles.handleOf(folder), name)).handle;
}

function request(handle: Handle, change: Partial<SaveRequest> = {}): SaveRequest {
  return { handle, text: TEXT, expectedHash: null, replace: false, ...change };
}

async function savedFile(shell: TestShell, name = 'trio.standlines'): Promise<Saved> {
  return value(await shell.handlers['files.save'](request(await handleIn(shell, name))));
}

describe('save and open', () => {
  it('a new file, read back as it was written, and saved again with what is on disk', async () => {
    const shell = testShell();
    const saved = await savedFile(shell);
    expect(saved).toMatchObject({ name: 'trio.standlines', location: join(shell.folder, 'trio.standlines') });
    const read: FileText = value(await shell.handlers['files.read'](saved.handle));
    expect(read).toEqual({ ...saved, text: TEXT, readOnly: false, warning: undefined });
    const again = request(saved.handle, { text: OTHER, expectedHash: read.hash });
    expect(value(await shell.handlers['files.save'](again)).handle).toBe(saved.handle);
    expect(readFileSync(saved.location, 'utf8')).toBe(OTHER);
    expect(readFileSync(`${saved.location}.bak`, 'utf8')).toBe(TEXT);
  });

  it('refuses a text that could not be opened again, and leaves the file', async () => {
    const shell = testShell();
    const { handle, hash, location } = await savedFile(shell);
    for (const text of ['', '{}', TEXT.slice(0, -5), TEXT.replace('"standlines"', '"other"')]) {
      const refused = await shell.handlers['files.save'](request(handle, { text, expectedHash: hash }));
      expect(code(refused)).toBe('file.notADocument');
    }
    expect(readFileSync(location, 'utf8')).toBe(TEXT);
  });

  it('writes documents only as .standlines and prints only as .pdf', async () => {
    const shell = testShell();
    const profile = await handleIn(shell, 'profile.sh');
    expect(code(await shell.handlers['files.save'](request(profile)))).toBe('file.wrongEnding');
    const plot: PlotRequest = {
      text: TEXT,
      setup: 'setup-1',
      options: { paper: 'A4', orientation: 'auto', scale: null },
    };
    expect(code(await shell.handlers['plot.save'](plot, profile, true))).toBe('file.wrongEnding');
    const print = await handleIn(shell, 'plot.pdf');
    expect(value(await shell.handlers['plot.save'](plot, print, false)).name).toBe('plot.pdf');
    expect(code(await shell.handlers['plot.save'](plot, print, false))).toBe('file.exists');
  });

  it('a hundred saves at once end with the last, one after the other', async () => {
    const shell = testShell();
    const { handle } = await savedFile(shell);
    const names = Array.from({ length: 100 }, (_, index) => `Evening ${index}`);
    const saves = names.map((name) =>
      shell.handlers['files.save'](
        request(handle, { text: writeDocument(aDocument(aConcert({ name }))), replace: true }),
      ),
    );
    expect((await Promise.all(saves)).every((result) => result.ok)).toBe(true);
    expect(value(await shell.handlers['files.read'](handle)).text).toContain('Evening 99');
  });

  it('two windows on one file, one of them through a link: the second save is refused', async () => {
    const shell = testShell();
    const { handle, hash, location } = await savedFile(shell);
    symlinkSync(location, join(shell.folder, 'link.standlines'));
    const link = value(await shell.handlers['files.read'](await handleIn(shell, 'link.standlines')));
    expect(link.handle).toBe(handle);
    const mine = request(handle, { text: OTHER, expectedHash: hash });
    expect(code(await shell.handlers['files.save'](mine))).toBe('ok');
    const theirs = request(link.handle, { expectedHash: link.hash });
    expect(code(await shell.handlers['files.save'](theirs))).toBe('file.changedOnDisk');
  });

  it('a handle of no one is refused in every call that takes one', async () => {
    const { handlers } = testShell();
    const made = 'a'.repeat(32);
    expect(code(await handlers['files.read'](made))).toBe('file.unknownHandle');
    expect(code(await handlers['files.list'](made))).toBe('file.unknownHandle');
    expect(code(await handlers['files.inFolder'](made, 'a.standlines'))).toBe('file.unknownHandle');
    expect(code(await handlers['files.save'](request(made)))).toBe('file.unknownHandle');
    expect(code(await handlers['recovery.keep']('key', { ...WORK, handle: made }))).toBe(
      'file.unknownHandle',
    );
  });
});

describe('folders', () => {
  it('lists folders first, then documents, prints, scores and tables in natural order, nothing hidden and nothing else', async () => {
    const shell = testShell();
    const shown = ['b 10.standlines', 'b 9.standlines', 'a.pdf', 'c.musicxml', 'd.XML', 'e.mxl', 'f.csv'];
    for (const name of [...shown, '.hidden.standlines', 'notes.txt']) {
      writeFileSync(join(shell.folder, name), 'x');
    }
    mkdirSync(join(shell.folder, 'z folder'));
    symlinkSync('nowhere', join(shell.folder, 'dangling.standlines'));
    const listing = value(await shell.handlers['files.list'](shell.services.handles.handleOf(shell.folder)));
    expect(listing.entries.map((entry) => entry.name)).toEqual([
      'z folder',
      'a.pdf',
      'b 9.standlines',
      'b 10.standlines',
      'c.musicxml',
      'd.XML',
      'e.mxl',
      'f.csv',
    ]);
    const parent = value(await shell.handlers['files.list'](listing.parent));
    expect(parent.entries.some((entry) => join(parent.location, entry.name) === shell.folder)).toBe(true);
  });

  it.each([
    '../out.standlines',
    '/etc/passwd',
    'a/b',
    'a\\b',
    'a:b',
    'a\0b',
    '..',
    '.',
    ' ',
    'CON',
    'com1.standlines',
    'ends. ',
    'line\nbreak',
    '\ud800.standlines',
    'x'.repeat(300),
  ])('refuses %j as a file name', async (name) => {
    const { services, handlers, folder } = testShell();
    expect(code(await handlers['files.inFolder'](services.handles.handleOf(folder), name))).toBe(
      'file.badName',
    );
  });
});

describe('what is remembered', () => {
  it('recent files, newest first, without those that have gone, until cleared', async () => {
    const shell = testShell();
    await savedFile(shell, 'one.standlines');
    await savedFile(shell, 'two.standlines');
    await savedFile(shell, 'three.standlines');
    const { unlinkSync } = await import('node:fs');
    unlinkSync(join(shell.folder, 'two.standlines'));
    const names = async () => value(await shell.handlers['recent.list']()).map((file) => file.name);
    expect(await names()).toEqual(['three.standlines', 'one.standlines']);
    await shell.handlers['recent.clear']();
    expect(await names()).toEqual([]);
  });

  it('no file that is none of ours, or it would be the one to begin with', async () => {
    const shell = testShell();
    await savedFile(shell, 'one.standlines');
    const broken = join(shell.folder, 'broken.standlines');
    writeFileSync(broken, '{"format": "standlines", "version": 1, "rec');
    const read = value(await shell.handlers['files.read'](shell.services.handles.handleOf(broken)));
    expect(read.text).toContain('"rec');
    const names = value(await shell.handlers['recent.list']()).map((file) => file.name);
    expect(names).toEqual(['one.standlines']);
  });

  it('settings, with defaults for none and for damaged ones', async () => {
    const { services, handlers } = testShell();
    const defaults = value(await handlers['settings.read']());
    expect(defaults).toEqual({
      language: 'system',
      theme: 'system',
      units: 'document',
      paper: null,
      singleKeys: true,
    });
    await handlers['settings.write']({ ...defaults, theme: 'dark' });
    expect(value(await handlers['settings.read']()).theme).toBe('dark');
    writeFileSync(join(services.state, 'settings.json'), '{"theme": "purple"}');
    expect(value(await handlers['settings.read']())).toEqual(defaults);
  });

  it('unsaved work with the file it belongs to', async () => {
    const shell = testShell();
    const { handle, hash } = await savedFile(shell);
    const kept = { ...WORK, handle, hash };
    expect(code(await shell.handlers['recovery.keep']('key', kept))).toBe('ok');
    shell.services.recovery.disown();
    const [offered] = value(await shell.handlers['recovery.list']());
    expect(offered).toMatchObject({ name: 'Trio', location: join(shell.folder, 'trio.standlines') });
    const work = value(await shell.handlers['recovery.read'](offered?.id ?? ''));
    expect(work).toEqual({ name: 'Trio', text: OTHER, handle, hash, location: offered?.location });
    expect(code(await shell.handlers['recovery.discard'](offered?.id ?? ''))).toBe('ok');
    expect(value(await shell.handlers['recovery.list']())).toEqual([]);
  });
});

describe('greeting and dialogs', () => {
  it('gives the file of the command line as a handle', async () => {
    const shell = testShell({}, { open: '/somewhere/trio.standlines', notice: 'Chromium, because ...' });
    const hello = value(await shell.handlers['app.hello']());
    expect(hello).toMatchObject({ shell: 'loopback', nativeDialogs: false, notice: 'Chromium, because ...' });
    expect(shell.services.handles.pathOf(hello.open ?? '')).toBe('/somewhere/trio.standlines');
    expect(code(await shell.handlers['files.askOpen']('standlines'))).toBe('dialog.none');
  });

  it('adds the ending that a dialog left out', async () => {
    const dialogs = { askOpen: async () => null, askSave: async () => '/somewhere/trio' };
    const shell = testShell({}, { dialogs });
    expect(value(await shell.handlers['files.askOpen']('standlines'))).toBeNull();
    const handle = value(await shell.handlers['files.askSave']('Trio', 'standlines'));
    expect(shell.services.handles.pathOf(handle ?? '')).toBe('/somewhere/trio.standlines');
  });

  it('has the demo concert', async () => {
    const demo = value(await testShell().handlers['files.demo']());
    expect(demo.text).toContain('"format": "standlines"');
  });

  it('says when the demo is missing', async () => {
    expect(code(await testShell({ demo: '/nowhere/demo' }).handlers['files.demo']())).toBe('file.notFound');
  });
});
