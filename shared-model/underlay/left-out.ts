/** What a DXF holds besides lines: it is not drawn, and whoever opens the file is told. */

/** How many of each, by the name that the DXF reference (Autodesk) gives it; the most frequent first. */
export type LeftOut = readonly { readonly name: string; readonly count: number }[];

/** What people see in a drawing and an underlay does not show. */
const NOT_LINES: ReadonlySet<string> = new Set([
  '3DFACE',
  '3DSOLID',
  'ATTRIB',
  'BODY',
  'DIMENSION',
  'HATCH',
  'IMAGE',
  'LEADER',
  'MESH',
  'MLINE',
  'MTEXT',
  'MULTILEADER',
  'OLE2FRAME',
  'POINT',
  'REGION',
  'SHAPE',
  'SOLID',
  'SURFACE',
  'TEXT',
  'TRACE',
  'WIPEOUT',
]);

/** Of a DXF as text: a code on one line and its value on the next; a thing begins with its name as the value of code 0. */
export function leftOutOf(dxf: string): LeftOut {
  const counts = new Map<string, number>();
  const lines = dxf.split(/\r\n|\r|\n/);
  for (let at = 0; at + 1 < lines.length; at += 2) {
    const name = lines[at + 1]?.trim() ?? '';
    if (lines[at]?.trim() === '0' && NOT_LINES.has(name)) counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts].map(([name, count]) => ({ name, count })).sort((a, b) => b.count - a.count);
}
