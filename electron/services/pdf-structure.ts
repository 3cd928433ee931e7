/** The logical structure beside the marks on the page, for those who hear a document instead of seeing it. */

import type { GroupRole, Primitive, Sheet } from '#model/drawing/primitives.ts';

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
  cell: 'TD',
};

/** Roles whose children have roles of their own. */
const CONTAINERS: ReadonlySet<GroupRole> = new Set<GroupRole>(['table', 'row']);

export function startStructure(document: Pdf): Structure {
  const root = document.struct('Document');
  document.addStructure(root);
  return {
    sheet(sheet, paint) {
      const section = document.struct('Sect', { title: sheet.title });
      root.add(section);
      addAll(document, { parent: section, paint }, sheet.children);
      section.end();
    },
    end: () => root.end(),
  };
}

interface Place {
  readonly parent: Element;
  readonly paint: Paint;
}

function addAll(document: Pdf, place: Place, primitives: readonly Primitive[]): void {
  for (const primitive of primitives) add(document, place, primitive);
}

function add(document: Pdf, { parent, paint }: Place, primitive: Primitive): void {
  if (primitive.kind !== 'group') return paintArtifact(document, paint, primitive);
  const { role, description, clip, children } = primitive;
  if (role !== undefined) return addRole(document, { parent, paint }, { role, children, whole: primitive });
  if (description !== undefined)
    return addFigure(document, { parent, paint }, { description, whole: primitive });
  if (clip !== undefined) return paintArtifact(document, paint, primitive);
  addAll(document, { parent, paint }, children);
}

interface RoleGroup {
  readonly role: GroupRole;
  readonly children: readonly Primitive[];
  readonly whole: Primitive;
}

function addRole(document: Pdf, { parent, paint }: Place, { role, children, whole }: RoleGroup): void {
  // The types do not know the scope of a header cell yet.
  const options: PDFKit.Mixins.StructureElementOptions & { scope?: string } =
    role === 'headerCell' ? { scope: 'Column' } : {};
  const element = document.struct(TAGS[role], options);
  parent.add(element);
  if (CONTAINERS.has(role)) addAll(document, { parent: element, paint }, children);
  else element.add(() => paint(whole));
  element.end();
}

interface Figure {
  readonly description: string;
  readonly whole: Primitive;
}

function addFigure(document: Pdf, { parent, paint }: Place, { description, whole }: Figure): void {
  const element = document.struct('Figure', { alt: description });
  parent.add(element);
  element.add(() => paint(whole));
  element.end();
}

/** Frames and rules say nothing to a listener. */
function paintArtifact(document: Pdf, paint: Paint, primitive: Primitive): void {
  document.markContent('Artifact', { type: 'Layout' });
  paint(primitive);
  document.endMarkedContent();
}
