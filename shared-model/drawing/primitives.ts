/**
 * The closed list of things a drawing is made of. Millimetres on paper, origin at the top left, y downwards.
 * Painters (screen, PDF, SVG) translate these and decide nothing. Curves are cubics only.
 */

/** A path as a flat list: `M x y`, `L x y`, `C x1 y1 x2 y2 x y`, `Z`. */
export type PathItem =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z'];

export interface Stroke {
  /** `#rrggbb`. */
  readonly colour: string;
  readonly width: number;
  /** On, off, on, off ... in mm; left out: solid. */
  readonly dash?: readonly number[];
}

export interface PathPrimitive {
  readonly kind: 'path';
  readonly path: readonly PathItem[];
  readonly fill?: string;
  readonly stroke?: Stroke;
}

export type FontWeight = 'regular' | 'bold';

export interface TextPrimitive {
  readonly kind: 'text';
  readonly text: string;
  /** The anchor point, on the baseline. */
  readonly x: number;
  readonly y: number;
  /** Font size in mm. */
  readonly size: number;
  readonly weight: FontWeight;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly colour: string;
  /** Degrees clockwise on the page about the anchor point. */
  readonly turn?: number;
}

/** What a group is to somebody who has the sheet read to him. */
export type GroupRole =
  | 'title'
  | 'heading'
  | 'paragraph'
  | 'table'
  | 'row'
  /** Over a column, and at the head of a row. */
  | 'headerCell'
  | 'rowHeader'
  | 'cell';

export interface GroupPrimitive {
  readonly kind: 'group';
  readonly children: readonly Primitive[];
  /** The record this group draws, so that a click on it finds the record. */
  readonly subject?: string;
  /** Children are cut off outside this rectangle. */
  readonly clip?: Box;
  /** In words, for those who cannot see it. */
  readonly description?: string;
  /** Left out: a picture if it has a description, otherwise just a bundle. Tables hold rows, rows hold cells. */
  readonly role?: GroupRole;
}

export type Primitive = PathPrimitive | TextPrimitive | GroupPrimitive;

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Sheet {
  readonly title: string;
  /**
   * Where it hangs in a reader's list of contents: the headings over it, then its own words. Left out: its title alone;
   * empty: it is not listed, as it goes on with the sheet before.
   */
  readonly bookmark?: readonly string[];
  readonly width: number;
  readonly height: number;
  readonly children: readonly Primitive[];
}

/** Width in mm of a text at a font size in mm. Handed in: the model knows no fonts. */
export type MeasureText = (text: string, size: number, weight: FontWeight) => number;
