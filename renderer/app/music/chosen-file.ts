/** Asks for a file to read, in the system's dialog or the window's own. */

import type { FileType, Handle } from '#contract/contract.ts';
import type { Editor } from '../../state/editor.svelte.ts';

/** As much of the editor as is needed, so that tests can stand one in. */
export type Choosing = Pick<Editor, 'host' | 'hello' | 'questions'>;

/** Null: the user changed his mind. */
export async function chosenHandle(
  { host, hello, questions }: Choosing,
  type: FileType,
): Promise<Handle | { readonly problem: string } | null> {
  if (!hello.nativeDialogs)
    return (await questions.ask('place', { mode: 'open', type, name: '' }))?.handle ?? null;
  const answer = await host.call('files.askOpen', type);
  return answer.ok ? answer.value : { problem: answer.error.message };
}
