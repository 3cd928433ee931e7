/** From a score file to the music of a setup: the file is chosen, read by the shell, and given by a command. */

import type { Handle, ScoreFile } from '#contract/contract.ts';
import { keptParts } from '#model/commands/keep-parts.ts';
import { setScore } from '#model/commands/score.ts';
import { inSetup } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { scoreOf } from '#model/document/parts.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { text } from '../text.ts';
import { chosenHandle } from './chosen-file.ts';

/** As much of the editor as is needed, so that tests can stand one in. */
export type Giving = Pick<Editor, 'host' | 'hello' | 'questions'> & {
  readonly session: Pick<Editor['session'], 'settled' | 'carryOut'>;
};

export type Given =
  /** `dropped`: what of the music before could not be kept, a phrase each. */
  | { readonly outcome: 'given'; readonly name: string; readonly dropped: readonly string[] }
  /** The user changed his mind. */
  | { readonly outcome: 'left' }
  /** What is wrong, for the user; the concert is as it was. */
  | { readonly outcome: 'refused'; readonly problem: string };

const LEFT: Given = { outcome: 'left' };

/** `busy` hears when reading begins and when it ends. */
export async function giveMusic(
  editor: Giving,
  setup: Id<'setup'>,
  busy: (reading: boolean) => void,
): Promise<Given> {
  const place = await chosenFile(editor);
  if (place.outcome !== 'chosen') return place;
  busy(true);
  const read = await readChosen(editor, place.handle).finally(() => busy(false));
  if (!('music' in read)) return read;
  const { name, music } = read;
  const { settled } = editor.session;
  const { dropped } = keptParts(music, scoreOf(settled, setup), inSetup(settled, setup, 'player'));
  const refusal = editor.session.carryOut(setScore(settled, { setup, music, source: name }));
  return refusal ? refused(refusal.reason) : { outcome: 'given', name, dropped };
}

type Chosen = { readonly outcome: 'chosen'; readonly handle: Handle } | Given;

async function chosenFile(editor: Giving): Promise<Chosen> {
  const chosen = await chosenHandle(editor, 'score');
  if (chosen === null) return LEFT;
  return typeof chosen === 'string' ? { outcome: 'chosen', handle: chosen } : refused(chosen.problem);
}

/** Of several scores in one file the user says which. */
async function readChosen(editor: Giving, handle: Handle): Promise<ScoreFile | Given> {
  const first = await editor.host.call('score.read', handle, null);
  if (!first.ok) return refused(first.error.message);
  const { name, root, roots, rootParts } = first.value;
  if (roots.length < 2) return first.value;
  const wanted = await editor.questions.ask('scoreChoice', { name, roots, rootParts });
  if (wanted === null) return LEFT;
  if (wanted === root) return first.value;
  const other = await editor.host.call('score.read', handle, wanted);
  return other.ok ? other.value : refused(other.error.message);
}

function refused(problem: string): Given {
  return { outcome: 'refused', problem };
}

export async function showMusic(editor: Editor): Promise<void> {
  await editor.questions.ask('music', null);
}

/** Says what became of it to a screen reader; what comes back is what is wrong. */
export function toldOf(editor: Editor, given: Given): string | null {
  if (given.outcome === 'given') editor.announce(text.music.given(given.name));
  return given.outcome === 'refused' ? given.problem : null;
}
