/**
 * How the scripts of a page are cut, so that few files have to come before the plan can be used: one with what shows the
 * first picture, one with the whole window; and what the page names, so that all of them are on their way at once.
 */

import { fileURLToPath } from 'node:url';
import type { HtmlTagDescriptor, Plugin, Rolldown } from 'vite';

const source = (path: string) => fileURLToPath(new URL(`../renderer/${path}`, import.meta.url));

/** The first script of every page, and how the window comes after it. */
const START = source('start/start.ts');
const WINDOW = source('main.ts');
/** Chooses the words before any of the window is read: what it needs must not bring the window along. */
const BEFORE_WINDOW = source('german.ts');

/** Fonts that the plan and the first words are set in. */
const FONTS = /400Regular-|600SemiBold-|700Bold-/;

type Graph = Pick<Rolldown.ChunkingContext, 'getModuleInfo'>;

function reachedFrom(start: string, graph: Graph): Set<string> {
  const reached = new Set([start]);
  for (const id of reached) for (const next of graph.getModuleInfo(id)?.importedIds ?? []) reached.add(next);
  return reached;
}

interface Cut {
  readonly first: ReadonlySet<string>;
  readonly window: ReadonlySet<string>;
}

const cuts = new WeakMap<object, Cut>();

function cutOf(graph: Graph): Cut {
  const known = cuts.get(graph);
  if (known) return known;
  const first = reachedFrom(START, graph);
  const before = reachedFrom(BEFORE_WINDOW, graph);
  const window = [...reachedFrom(WINDOW, graph)].filter((id) => !first.has(id) && !before.has(id));
  const cut = { first, window: new Set(window) };
  cuts.set(graph, cut);
  return cut;
}

/** For the bundler's `codeSplitting`. */
export const FIRST_SCRIPTS: Rolldown.CodeSplittingOptions = {
  // Whatever is left out of them needs nothing of theirs, so that no script waits for itself.
  includeDependenciesRecursively: false,
  groups: [
    { name: (id, graph) => (cutOf(graph).first.has(id) ? 'first' : null), debugName: 'first' },
    { name: (id, graph) => (cutOf(graph).window.has(id) ? 'editor' : null), debugName: 'editor' },
  ],
};

/** Names in each page what its first script will ask for: the window, its look, and the letters. */
export function fetchedEarly(): Plugin {
  return {
    name: 'fetched-early',
    transformIndexHtml: {
      order: 'post',
      handler: (_html, { bundle, filename }) => {
        if (!bundle) return [];
        const files = Object.values(bundle);
        const chunks = files.filter((file) => file.type === 'chunk');
        const isGerman = filename.endsWith('.de.html');
        const entry = chunks.find(({ moduleIds }) => moduleIds.includes(START));
        const window = chunks.find(({ moduleIds }) => moduleIds.includes(WINDOW));
        const words = chunks.find(({ moduleIds }) => moduleIds.includes(BEFORE_WINDOW));
        if (!entry || !window || !words) throw new Error(`${filename}: its scripts are not where they were`);
        const scripts = closureOf([window, ...(isGerman ? [words] : [])], chunks);
        for (const name of closureOf([entry], chunks).keys()) scripts.delete(name);
        const fonts = files.filter(({ fileName }) => FONTS.test(fileName)).map(({ fileName }) => fileName);
        return [...fonts.map(fontTag), templateWith([...scripts.values()].flatMap(scriptTags))];
      },
    },
  };
}

function closureOf(
  starts: readonly Rolldown.OutputChunk[],
  chunks: readonly Rolldown.OutputChunk[],
): Map<string, Rolldown.OutputChunk> {
  const found = new Map(starts.map((chunk) => [chunk.fileName, chunk]));
  for (const chunk of found.values()) {
    for (const other of chunks) if (chunk.imports.includes(other.fileName)) found.set(other.fileName, other);
  }
  return found;
}

const fontTag = (file: string): HtmlTagDescriptor => ({
  tag: 'link',
  attrs: { rel: 'preload', as: 'font', type: 'font/ttf', crossorigin: true, href: `./${file}` },
  injectTo: 'head',
});

/** The page's first script takes them out as soon as the picture is there, which they must not keep waiting. */
const templateWith = (children: HtmlTagDescriptor[]): HtmlTagDescriptor => ({
  tag: 'template',
  attrs: { id: 'window-files' },
  children,
  injectTo: 'head',
});

function scriptTags(chunk: Rolldown.OutputChunk): HtmlTagDescriptor[] {
  const styles = [...(chunk.viteMetadata?.importedCss ?? [])];
  return [
    {
      tag: 'link',
      attrs: { rel: 'modulepreload', crossorigin: true, href: `./${chunk.fileName}` },
    },
    ...styles.map((file): HtmlTagDescriptor => ({
      tag: 'link',
      attrs: { rel: 'preload', as: 'style', crossorigin: true, href: `./${file}` },
    })),
  ];
}
