/** The time strip under the plan: shown, and gone along in. */

import type { Turn } from '#model/pages/planner/plan.ts';
import { barWords } from '#model/pages/running/bar-at.ts';
import { clockWords } from '#model/score/words/clock-words.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import type { TimeStrip } from '../../state/time-strip.svelte.ts';
import { focusOnNew } from '../looking.ts';
import { text } from '../text.ts';
import { showTurn } from '../turns/showing-turns.ts';

export function toggleStrip(editor: Editor): void {
  const { view, strip } = editor;
  view.strip = !view.strip;
  if (!view.strip) return;
  strip.begin();
  focusOnNew(() => (strip.run ? 'strip-time' : 'strip'));
}

/** "1:23, bar 48, second time" */
export function timeWords({ moment, length, time }: TimeStrip): string {
  const clock = clockWords(time);
  if (time >= length) return text.strip.at(clock, text.strip.ended);
  return text.strip.at(clock, barWords(moment?.bar ?? null));
}

/** Goes to the moment at which it begins, and shows who makes it, and where. */
export function goToTurn(editor: Editor, turn: Turn): void {
  const { strip } = editor;
  strip.go(turn.at);
  strip.chosen = turn;
  showTurn(editor, turn);
  editor.announce(timeWords(strip));
}

export function goToTurnBeside(editor: Editor, step: 1 | -1): void {
  const turn = editor.strip.turnBeside(step);
  if (turn) goToTurn(editor, turn);
}

/** Whether the key was one of the strip's. */
export function pressedOnStrip(editor: Editor, { key, shiftKey }: KeyboardEvent): boolean {
  const { strip } = editor;
  const act = KEYS[key];
  if (!act) return false;
  strip.chosen = null;
  act(editor, shiftKey);
  return true;
}

const step = (way: 1 | -1) => (editor: Editor, byBar: boolean) => {
  const { strip } = editor;
  strip.go(byBar ? strip.barBeside(way) : strip.time + way);
};

const KEYS: Readonly<Record<string, (editor: Editor, shift: boolean) => void>> = {
  ' ': ({ strip }) => strip.togglePlaying(),
  ArrowRight: step(1),
  ArrowUp: step(1),
  ArrowLeft: step(-1),
  ArrowDown: step(-1),
  PageDown: (editor) => goToTurnBeside(editor, 1),
  PageUp: (editor) => goToTurnBeside(editor, -1),
  Home: ({ strip }) => strip.go(0),
  End: ({ strip }) => strip.go(strip.length),
  '+': ({ strip }) => strip.zoom(1 / ZOOM),
  '=': ({ strip }) => strip.zoom(1 / ZOOM),
  '-': ({ strip }) => strip.zoom(ZOOM),
  '0': ({ strip }) => strip.showAll(),
};

export const ZOOM = 1.6;
