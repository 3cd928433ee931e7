/** Turns what was selected towards a thing or a point that is clicked; what it would look like is seen before. */

import { turnTowards } from '#model/commands/turn.ts';
import type { Outcome } from '#model/commands/command.ts';
import { labelOf } from '#model/document/labels.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { text } from '../../app/text.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { pickables } from '../pickables.ts';
import { itemAt } from '../picking.ts';
import type { PointerAt } from './gesture.ts';
import type { PlanTool, ToolMarks } from './tool.ts';

const REACH_PIXELS = 8;

export class FaceTowards implements PlanTool {
  readonly words = text.hands.clickToFace;
  readonly #editor: Editor;
  readonly #ids: readonly string[];
  #next: { readonly spot: Vec2; readonly caption: string } | null = $state.raw(null);

  constructor(editor: Editor, ids: readonly string[]) {
    this.#editor = editor;
    this.#ids = ids;
  }

  readonly marks: ToolMarks = $derived.by(() => ({
    points: [],
    next: this.#next?.spot ?? null,
    joined: false,
    caption: this.#next?.caption ?? '',
  }));

  hover(at: PointerAt): void {
    const { session } = this.#editor;
    const item = this.#itemAt(at);
    const caption = item === null ? '' : text.plan.faces(labelOf(session.document, session.setup, item));
    this.#next = { spot: at.spot, caption };
    session.preview(this.#outcome(at));
  }

  click(at: PointerAt): void {
    const { session, view } = this.#editor;
    const outcome = this.#outcome(at);
    session.dropDraft();
    view.tool = null;
    this.#editor.carryOut(outcome);
  }

  double(): void {
    // The first click of the two ended it.
  }

  key(): boolean {
    return false;
  }

  leave(): void {
    this.#next = null;
    this.#editor.session.dropDraft();
  }

  cancel(): void {
    this.#editor.session.dropDraft();
    this.#editor.view.tool = null;
  }

  #outcome(at: PointerAt): Outcome {
    const item = this.#itemAt(at);
    const towards = item === null ? at.spot : { id: item };
    return turnTowards(this.#editor.session.settled, { ids: this.#ids, towards });
  }

  #itemAt({ spot, free }: PointerAt): string | null {
    const { session, view } = this.#editor;
    if (free) return null;
    const others = pickables(session.settled, session.setup).filter(({ id }) => !this.#ids.includes(id));
    return itemAt(others, spot, REACH_PIXELS / view.camera.scale);
  }
}
