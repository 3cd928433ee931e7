/** The tools of an underlay: two points and a distance, the origin, tracing the platform. */

import { refusalWords } from '#model/commands/refusal-words.ts';
import { tracePlatform } from '#model/commands/underlay-trace.ts';
import { scaleUnderlay, underlayToOrigin } from '#model/commands/underlay.ts';
import { allOf, platformOf } from '#model/document/document.ts';
import type { Underlay } from '#model/document/records.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { PickPoints } from '../../canvas/gestures/pick-points.svelte.ts';
import { TraceOutline } from '../../canvas/gestures/trace-outline.svelte.ts';
import type { PlanTool } from '../../canvas/gestures/tool.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { focusOn } from '../looking.ts';
import { done } from '../properties/change.ts';
import { text } from '../text.ts';

const words = text.underlay;

function take(editor: Editor, tool: PlanTool): void {
  editor.view.tool?.cancel();
  editor.view.armed = null;
  editor.view.tool = tool;
  focusOn('plan');
}

export async function askForScale(editor: Editor, { id }: Underlay): Promise<void> {
  const points = await picked(editor, [words.firstPoint, words.secondPoint]);
  const [a, b] = points ?? [];
  if (!a || !b) return;
  const measured = Math.hypot(b.x - a.x, b.y - a.y);
  const answer = await editor.questions.ask('underlayScale', {
    measured,
    refused: (given) => {
      const outcome = scaleUnderlay(editor.session.settled, { id, a, b, ...given });
      return outcome.ok ? null : refusalWords(outcome, editor.units);
    },
  });
  if (answer) editor.carryOut(scaleUnderlay(editor.session.settled, { id, a, b, ...answer }));
}

export async function askForOrigin(editor: Editor, { id }: Underlay): Promise<void> {
  const [point] = (await picked(editor, [words.originPoint])) ?? [];
  if (point) editor.carryOut(underlayToOrigin(editor.session.settled, { id, point }));
}

function picked(editor: Editor, steps: readonly [string, ...string[]]): Promise<readonly Vec2[] | null> {
  return new Promise((resolve) => take(editor, new PickPoints(editor, { words: steps, done: resolve })));
}

export function traceThePlatform(editor: Editor): void {
  take(editor, new TraceOutline(editor, (outline) => traced(editor, outline)));
}

/** What is open and where doors went is said at once: it was guessed from the platform before. */
function traced(editor: Editor, outline: readonly Vec2[]): string | null {
  const problem = done(editor, tracePlatform(editor.session.settled, { outline }));
  if (problem !== null) return problem;
  const { settled } = editor.session;
  const open = platformOf(settled).openEdges.map((edge) => String(edge + 1));
  editor.tell(words.traced(text.list(open), allOf(settled, 'door').length));
  return null;
}
