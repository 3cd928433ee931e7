/** What happens when the window opens: the shell's greeting, the settings, and the document to begin with. */

import type { Handle, Hello, Recoverable, Result, Settings } from '#contract/contract.ts';
import type { Document } from '#model/document/document.ts';
import { readDemo } from '#model/file-format/demo.ts';
import type { FirstAnswers } from './first-questions.ts';

export interface Opening {
  /** Files to open over the demo: the first that can be. */
  readonly files: readonly Handle[];
  readonly kept: readonly Recoverable[];
  /** Nothing was ever opened here: show the first steps. */
  readonly first: boolean;
}

export interface Begun {
  readonly hello: Hello;
  readonly settings: Settings;
  readonly document: Document;
  readonly name: string;
  readonly opening: Opening;
}

/**
 * The demo is always read, so that there is a concert to show whatever becomes of the other file. `locale`: a language
 * tag with the region whose units are usual. `before`: the file
 * that this window worked on before it was loaded anew; null: on none; undefined: it is a new window.
 */
export function begin(answers: FirstAnswers, locale: string, before?: Handle | null): Result<Begun> {
  const [hello, settings, demo, recent, kept] = answers;
  if (!hello.ok) return hello;
  if (!settings.ok) return settings;
  if (!demo.ok) return demo;
  const reading = readDemo(demo.value.text, locale);
  if (!reading.ok) return { ok: false, error: { code: 'demo.unreadable', message: reading.problem.message } };
  const last = recent.ok ? (recent.value[0]?.handle ?? null) : null;
  return {
    ok: true,
    value: {
      hello: hello.value,
      settings: settings.value,
      document: reading.document,
      name: demo.value.name,
      opening: {
        files: filesToOpen(before, hello.value.open ?? last),
        kept: kept.ok ? kept.value : [],
        first: last === null && hello.value.open === null,
      },
    },
  };
}

/** The window's own file, then the usual one; what a window with a concert in no file shows comes from the demo. */
function filesToOpen(before: Handle | null | undefined, usual: Handle | null): Handle[] {
  if (before === null) return [];
  return [...new Set([before, usual])].filter((handle) => handle !== undefined && handle !== null);
}
