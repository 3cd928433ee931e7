/**
 * The paper of a binding as it comes out of the printer and is put together: its panels in order and their joints.
 *
 * A panel is `pagesPerPanel` pages side by side, printed on one face. Of a ridge booklet the panels form a strip, printed
 * face up, one below the other, beginning with the panel fixed to the desk of side 0 and ending with the one fixed to the
 * desk of side 1. With F the panel fixed on the open side, B the one fixed on the stack side, so, si the outer and inner
 * face of leaf s, that is F, 1o, 1i, 2o, 2i, ..., Lo, Li, B when the stack is on side 1, and the reverse when it is on side 0.
 * (Common practice, no source; `tests/oracles/fold-simulation` folds it.)
 */

import { pagesInView, statesOf, viewOf, type Binding, type SideIndex, type View } from './binding.ts';
import { concertinaJoint, type ConcertinaJoint } from './concertina-fold.ts';

export interface Panel {
  /** `F` and `B` are fixed to a desk; `2o` and `2i` are the faces of leaf 2; pages of a row are just numbered. */
  readonly name: string;
  /** Whose reader it is for. */
  readonly side: SideIndex;
  /** The states in which its reader sees it, one after the other; empty: never. */
  readonly states: readonly number[];
  /** The leaf that it is a face of, from 1; null: it stays where it is, or moves with a row. */
  readonly leaf: number | null;
  /** Left to right as its reader sees them. */
  readonly pages: View;
  /** Whether its text stands upright on the flat strip; otherwise the whole panel is turned by 180 degrees. */
  readonly upright: boolean;
  /** A card is stuck to its blank side, so that the leaf keeps its shape while it is moved. */
  readonly card: boolean;
}

/** As the text of the panel stands. */
export type Edge = 'head' | 'foot' | 'left' | 'right';

export interface Taped {
  /** Index into the panels of the strip. */
  readonly panel: number;
  readonly edge: Edge;
}

/**
 * `ridge`: heads together, lies over the ridge. `hem`: feet together, the lower edge of a leaf, which is lifted.
 * All others are of a concertina, whose pages stand upright: see `concertina-fold.ts`.
 */
export type JointKind = 'ridge' | 'hem' | ConcertinaJoint;

export interface Joint {
  /** Printed on both edges: A, B, ..., Z, AA, ... */
  readonly label: string;
  readonly kind: JointKind;
  readonly first: Taped;
  readonly second: Taped;
}

export interface Strip {
  readonly panels: readonly Panel[];
  readonly joints: readonly Joint[];
}

/** The panels and joints of any binding. Loose pages and the pages of a book have no joints. */
export function stripOf(binding: Binding): Strip {
  switch (binding.kind) {
    case 'ridge':
      return ridgeStrip(binding);
    case 'concertina':
      return concertinaStrip(binding);
    case 'book':
      return { panels: bookPanels(binding), joints: [] };
    case 'loose':
      return { panels: rowPanels(viewOf(binding, 0, 0), [0]), joints: [] };
  }
}

/** A, B, ..., Z, AA, AB, ... for 0, 1, ... */
export function jointLabel(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : jointLabel(Math.floor(index / 26) - 1) + last;
}

function ridgeStrip(binding: Binding): Strip {
  const fromOpenSide = leafOrder(binding);
  const inOrder = binding.stackSide === 1 ? fromOpenSide : fromOpenSide.toReversed();
  // A ridge is the first joint from either end, so the first panel has its head below, and every other one with it.
  const panels = inOrder.map((panel, index) => ({ ...panel, upright: index % 2 === 1 }));
  const joints = panels.slice(1).map((_, index) => ridgeJoint(index));
  return { panels, joints };
}

/** F, 1o, 1i, ..., Lo, Li, B. */
function leafOrder(binding: Binding): Omit<Panel, 'upright'>[] {
  const { leaves, stackSide } = binding;
  const openSide: SideIndex = stackSide === 0 ? 1 : 0;
  const face = (name: string, side: SideIndex, state: number, leaf: number | null) => ({
    name,
    side,
    states: [state],
    leaf,
    pages: viewOf(binding, side, state),
    // One card a leaf is enough: its other face is folded against it.
    card: leaf !== null && side === stackSide,
  });
  const faces = Array.from({ length: leaves }, (_, index) => [
    face(`${index + 1}o`, stackSide, index, index + 1),
    face(`${index + 1}i`, openSide, index + 1, index + 1),
  ]).flat();
  return [face('F', openSide, 0, null), ...faces, face('B', stackSide, leaves, null)];
}

function ridgeJoint(index: number): Joint {
  const edge = index % 2 === 0 ? 'head' : 'foot';
  return {
    label: jointLabel(index),
    kind: edge === 'head' ? 'ridge' : 'hem',
    first: { panel: index, edge },
    second: { panel: index + 1, edge },
  };
}

/** Every page of the row, in order: page p is seen in each state whose view reaches it. */
function concertinaStrip(binding: Binding): Strip {
  const shown = pagesInView(binding);
  const count = shown + 2 * binding.leaves;
  const panels = Array.from({ length: count }, (_, index): Panel => {
    const states = statesShowing(binding, index);
    const state = states[0] ?? 0;
    const page = viewOf(binding, 0, state)[index - 2 * state] ?? null;
    const [panel] = rowPanels([page], states, index);
    if (!panel) throw new Error('a row of one page has one panel');
    return panel;
  });
  const joints = panels.slice(1).map((_, index): Joint => ({
    label: jointLabel(index),
    kind: concertinaJoint({ shown, leaves: binding.leaves }, index + 1),
    first: { panel: index, edge: 'right' },
    second: { panel: index + 1, edge: 'left' },
  }));
  return { panels, joints };
}

function statesShowing(binding: Binding, page: number): number[] {
  const states = Array.from({ length: statesOf(binding) }, (_, state) => state);
  return states.filter((state) => page >= 2 * state && page < 2 * state + pagesInView(binding));
}

function rowPanels(pages: View, states: readonly number[], from = 0): Panel[] {
  return pages.map((page, index) => ({
    name: String(from + index + 1),
    side: 0,
    states,
    leaf: null,
    pages: [page],
    upright: true,
    card: false,
  }));
}

/** F (inside the front cover), 1 recto, 1 verso, ..., L verso, B (inside the back cover). */
function bookPanels(binding: Binding): Panel[] {
  const panel = (name: string, state: number, place: 0 | 1, leaf: number | null): Panel => ({
    name,
    side: 0,
    states: [state],
    leaf,
    pages: [viewOf(binding, 0, state)[place] ?? null],
    upright: true,
    card: false,
  });
  const faces = Array.from({ length: binding.leaves }, (_, index) => [
    panel(`${index + 1} recto`, index, 1, index + 1),
    panel(`${index + 1} verso`, index + 1, 0, index + 1),
  ]).flat();
  return [panel('F', 0, 0, null), ...faces, panel('B', binding.leaves, 1, null)];
}
