/** Every page of the help, and looking for words in them. */

import { checkPages, pageOf, type CheckPageId } from '#model/checks/about/about.ts';
import type { AboutPage } from '#model/checks/about/check-page.ts';
import type { Units } from '#model/document/measures.ts';
import { morePages } from './more-pages.ts';

export { pageOf };

export type HelpPageId = CheckPageId | ReturnType<typeof morePages>[number]['id'];
export type HelpPage = AboutPage<HelpPageId>;

export function helpPages(units: Units): readonly HelpPage[] {
  return [...checkPages(units), ...morePages(units)];
}

export function helpPageIds(): readonly HelpPageId[] {
  return helpPages('metric').map(({ id }) => id);
}

export function titleOf(page: HelpPageId): string {
  // No title has a length in it.
  return helpPages('metric').find(({ id }) => id === page)?.title ?? page;
}

/** Pages that have every word of `search` somewhere; those whose title has them first. */
export function pagesWith(pages: readonly HelpPage[], search: string): readonly HelpPage[] {
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  const has = (where: string): boolean => words.every((word) => where.includes(word));
  const found = pages.filter((page) => has(allWords(page)));
  const inTitle = (page: HelpPage): boolean => has(page.title.toLowerCase());
  return words.length === 0 ? found : [...found.filter(inTitle), ...found.filter((page) => !inTitle(page))];
}

function allWords({
  title,
  asks,
  computes,
  verdicts,
  figures,
  settings,
  unknown,
  caution,
}: HelpPage): string {
  return [
    title,
    asks,
    ...computes,
    ...verdicts.map(({ when }) => when),
    ...figures.flatMap(({ what, value, source }) => [what, value, source.cited]),
    ...settings.map(({ what }) => what),
    ...unknown,
    caution ?? '',
  ]
    .join('\n')
    .toLowerCase();
}
