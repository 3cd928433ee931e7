/**
 * A place for a file typed as a path, where the shell only lists folders: found by going from folder to folder as a hand
 * would in the dialog, so that no path that the user could not browse to is ever named to the shell.
 */

import type { FolderListing, Handle, Host, Result } from '#contract/contract.ts';

export interface TypedPlace {
  readonly folder: FolderListing;
  readonly name: string;
}

export type Found =
  | { readonly found: TypedPlace }
  /** A folder of the path that is not there, or is not shown. */
  | { readonly missing: string }
  | { readonly trouble: string };

/** `typed` is a file's name, or a path from `here` or from the top; folders stand between / or \\. */
export async function typedPlace(host: Host, here: FolderListing, typed: string): Promise<Found> {
  const steps = typed.trim().split(/[/\\]/);
  const name = steps.pop() ?? '';
  const list = (folder: Handle) => host.call('files.list', folder);
  let folder: Result<FolderListing> = { ok: true, value: here };
  if (isFromTheTop(steps)) {
    steps.shift();
    while (folder.ok && folder.value.parent !== null) folder = await list(folder.value.parent);
  }
  for (const step of steps) {
    if (!folder.ok) break;
    const next = stepFrom(folder.value, step);
    if (next === null) return { missing: step };
    if (next !== folder.value.handle) folder = await list(next);
  }
  return folder.ok ? { found: { folder: folder.value, name } } : { trouble: folder.error.message };
}

/** "/home/..." or "C:\\Users\\..." */
function isFromTheTop([first]: readonly string[]): boolean {
  return first === '' || /^[A-Za-z]:$/.test(first ?? '');
}

function stepFrom({ handle, parent, entries }: FolderListing, step: string): Handle | null {
  if (step === '' || step === '.') return handle;
  if (step === '..') return parent;
  return entries.find(({ type, name }) => type === 'folder' && name === step)?.handle ?? null;
}
