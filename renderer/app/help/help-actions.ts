/** The help among the commands: all of it, the first things to try, and each page by its title. */

import type { Editor } from '../../state/editor.svelte.ts';
import { text } from '../text.ts';
import { helpPageIds, titleOf, type HelpPageId } from './pages.ts';

export function showHelp(editor: Editor, page: HelpPageId = 'sight'): void {
  void editor.questions.ask('help', { page });
}

interface HelpSketch {
  readonly id: string;
  readonly keys?: readonly string[];
  readonly words: () => string;
  readonly run: (editor: Editor) => void;
}

export const HELP_ACTIONS: readonly HelpSketch[] = [
  { id: 'help.pages', words: () => text.help.action, keys: ['F1'], run: (editor) => showHelp(editor) },
  { id: 'help.hints', words: () => text.help.hints, run: ({ view }) => (view.hints = true) },
];

/** Named as what they are about is named: who searches for that wants to do it first. */
export const HELP_PAGE_ACTIONS: readonly HelpSketch[] = helpPageIds().map((id) => ({
  id: `help.page.${id}`,
  words: () => text.help.page(titleOf(id)),
  run: (editor: Editor) => showHelp(editor, id),
}));
