/** The list of contents that readers of a PDF show beside it. */

import type { Sheet } from '#model/drawing/primitives.ts';

type Item = PDFKit.PDFOutline;

export interface Bookmarks {
  /** Lists the page that is open. */
  add(sheet: Sheet): void;
}

/** Neighbours under the same headings share them; a heading leads to the first page under it. */
export function startBookmarks({ outline }: PDFKit.PDFDocument): Bookmarks {
  let open: { readonly words: string; readonly item: Item }[] = [];
  return {
    add({ title, bookmark = [title] }) {
      const headings = bookmark.slice(0, -1);
      const words = bookmark.at(-1);
      if (words === undefined) return;
      const shared = headings.findIndex((heading, depth) => open[depth]?.words !== heading);
      open = open.slice(0, shared < 0 ? headings.length : shared);
      for (const heading of headings.slice(open.length)) {
        const item = (open.at(-1)?.item ?? outline).addItem(heading, { expanded: true });
        open.push({ words: heading, item });
      }
      (open.at(-1)?.item ?? outline).addItem(words);
    },
  };
}
