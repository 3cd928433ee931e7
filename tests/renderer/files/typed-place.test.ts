import type { FolderListing, Host } from '#contract/contract.ts';
import { describe, expect, it } from 'vitest';
import { typedPlace } from '../../../renderer/files/typed-place.ts';

/** Folders by path; a shell that lists them and nothing else. */
const FOLDERS = ['/', '/home', '/home/ann', '/home/ann/concerts', '/srv'];

const listed = (path: string): FolderListing => ({
  handle: path,
  location: path,
  parent: path === '/' ? null : path.slice(0, Math.max(1, path.lastIndexOf('/'))),
  entries: FOLDERS.filter(
    (other) => other !== path && other.slice(0, Math.max(1, other.lastIndexOf('/'))) === path,
  ).map((other) => ({ name: other.split('/').at(-1) ?? '', handle: other, type: 'folder', size: 0 })),
});

const host = {
  call: async (channel: string, folder: string) => {
    if (channel !== 'files.list' || !FOLDERS.includes(folder)) throw new Error(`asked for ${folder}`);
    if (folder === '/srv') return { ok: false, error: { code: 'file.denied', message: 'Not yours.' } };
    return { ok: true, value: listed(folder) };
  },
} as unknown as Host;

const at = async (typed: string) => {
  const place = await typedPlace(host, listed('/home/ann'), typed);
  return 'found' in place ? [place.found.folder.location, place.found.name] : place;
};

describe('a place typed into the dialog', () => {
  it('is a name, or a path from here or from the top', async () => {
    expect(await at('duo')).toEqual(['/home/ann', 'duo']);
    expect(await at(' concerts/duo.standlines ')).toEqual(['/home/ann/concerts', 'duo.standlines']);
    expect(await at('./concerts//../duo')).toEqual(['/home/ann', 'duo']);
    expect(await at('/home/ann/concerts/duo')).toEqual(['/home/ann/concerts', 'duo']);
    expect(await at('/duo')).toEqual(['/', 'duo']);
    expect(await at('C:\\home\\ann\\duo')).toEqual(['/home/ann', 'duo']);
  });

  it('says which folder is not there, and passes on what the shell says', async () => {
    expect(await at('/home/bob/duo')).toEqual({ missing: 'bob' });
    expect(await at('../../../duo')).toEqual({ missing: '..' });
    expect(await at('/srv/duo')).toEqual({ trouble: 'Not yours.' });
  });
});
