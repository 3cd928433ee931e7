/** The logical structure beside the marks on the page, for those who hear a document instead of seeing it. */

import { bounds } from '#model/drawing/bounds.ts';
import type {
  Box,
  GroupPrimitive,
  GroupRole,
  MeasureText,
  Primitive,
  Sheet,
} from '#model/drawing/primitives.ts';

export interface Structure {
  /** Paints a sheet's primitives in order, each under the tag that it belongs to. */
  sheet(sheet: Sheet, paint: (primitive: Primitive) => void): void;
  end(): void;
}

type Pdf = PDFKit.PDFDocument;
type Element = PDFKit.PDFStructureElement;
type Paint = (primitive: Primitive) => void;

const TAGS: Readonly<Record<GroupRole, string>> = {
  title: 'H1',
  heading: 'H2',
  paragraph: 'P',
  table: 'Table',
  row: 'TR',
  headerCell: 'TH',
  rowHeader: 'TH',
  cell: 'TD',
};

/** Roles whose children have roles of their own. */
const CONTAINERS: ReadonlySet<GroupRole> = new Set<GroupRole>(['table', 'row']);

export function startStructure(document: Pdf, measure: MeasureText): Structure {
  const root = document.struct('Document');
  document.addStructure(root);
  return {
    sheet(sheet, paint) {
      const section = document.struct('Sect', { title: sheet.title });
      root.add(section);
      addAll(document, { parent: section, paint, measure }, sheet.children);
      section.end();
    },
    end: () => root.end(),
  };
}

interface Place {
  readonly parent: Element;
  readonly paint: Paint;
  readonly measure: MeasureText;
}

function addAll(document: Pdf, place: Place, primitives: readonly Primitive[]): void {
  for (const primitive of primitives) add(document, place, primitive);
}

function add(document: Pdf, place: Place, primitive: Primitive): void {
  const { paint } = place;
  if (primitive.kind !== 'group') return paintArtifact(document, paint, primitive);
  const { role, description, clip, children } = primitive;
  if (role !== undefined) return addRole(document, place, { role, children, whole: primitive });
  if (description !== undefined) return addFigure(document, place, { description, whole: primitive });
  if (clip !== undefined) return paintArtifact(document, paint, primitive);
  addAll(document, place, children);
}

interface RoleGroup {
  readonly role: GroupRole;
  readonly children: readonly Primitive[];
  readonly whole: Primitive;
}

function addRole(document: Pdf, place: Place, { role, children, whole }: RoleGroup): void {
  const { parent, paint } = place;
  // The types do not know the scope of a header cell yet.
  const options: PDFKit.Mixins.StructureElementOptions & { scope?: string } =
    role === 'headerCell' ? { scope: 'Column' } : role === 'rowHeader' ? { scope: 'Row' } : {};
  const element = document.struct(TAGS[role], options);
  parent.add(element);
  if (CONTAINERS.has(role)) addAll(document, { ...place, parent: element }, children);
  else element.add(() => paint(whole));
  element.end();
}

interface Figure {
  readonly description: string;
  readonly whole: GroupPrimitive;
}

/** A picture says where on the page it is, for those who enlarge what they read. */
function addFigure(document: Pdf, { parent, paint, measure }: Place, { description, whole }: Figure): void {
  const box = whole.clip ?? bounds([whole], measure);
  const element = document.struct('Figure', {
    alt: description,
    ...(box ? { bbox: cornersOf(box), placement: 'Block' } : {}),
  });
  parent.add(element);
  element.add(() => paint(whole));
  element.end();
}

const POINTS_PER_MM = 72 / 25.4;

/** In points from the top left of the page, as pdfkit wants it. */
function cornersOf({ x, y, width, height }: Box): [number, number, number, number] {
  const corners = [x, y, x + width, y + height] as const;
  return corners.map((each) => each * POINTS_PER_MM) as [number, number, number, number];
}

/** Frames and rules say nothing to a listener. */
function paintArtifact(document: Pdf, paint: Paint, primitive: Primitive): void {
  document.markContent('Artifact', { type: 'Layout' });
  paint(primitive);
  document.endMarkedContent();
}
