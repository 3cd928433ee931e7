/** The evening as a view of its own: shown, and left for the plan. */

import type { Id } from '#model/document/ids.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { focusOnNew } from '../looking.ts';

export function toggleProgramme({ view }: Editor): void {
  view.programme = !view.programme;
  focusOnNew(() => (view.programme ? 'programme' : 'plan'));
}

/** Back to the plan, with this setup on it. */
export function showOnPlan({ view, session }: Editor, setup: Id<'setup'>): void {
  view.seat = null;
  session.showSetup(setup);
  view.programme = false;
  focusOnNew(() => 'plan');
}
