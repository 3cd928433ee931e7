/**
 * Parts of the window whose scripts come when they are first wanted, so that the plan stands there sooner. A moment after
 * the first frame they are all fetched, so that nobody waits for them.
 */

/** A part of the window by itself, in a script of its own. */
export interface LaterPart<Part> {
  /** Null: it still has to be fetched. What is there is shown at once, so that no key comes before it. */
  readonly there: Part | null;
  readonly fetch: () => Promise<Part>;
}

function fetched<Part>(load: () => Promise<{ readonly default: Part }>): LaterPart<Part> {
  let there: Part | null = null;
  return {
    get there() {
      return there;
    },
    fetch: async () => (there = (await load()).default),
  };
}

export const later = {
  concert: fetched(() => import('./dialogs/ConcertDialog.svelte')),
  ensemble: fetched(() => import('./ensemble/EnsembleDialog.svelte')),
  help: fetched(() => import('./help/HelpDialog.svelte')),
  house: fetched(() => import('./dialogs/HouseDialog.svelte')),
  music: fetched(() => import('./music/MusicDialog.svelte')),
  pack: fetched(() => import('./pack/PackDialog.svelte')),
  paper: fetched(() => import('./paper/PaperDialog.svelte')),
  partPdf: fetched(() => import('./music/PartPdfDialog.svelte')),
  partTable: fetched(() => import('./music/PartTableDialog.svelte')),
  print: fetched(() => import('./dialogs/PrintDialog.svelte')),
  programme: fetched(() => import('./programme/ProgrammeView.svelte')),
  scoreChoice: fetched(() => import('./music/ScoreChoiceDialog.svelte')),
  section: fetched(() => import('./SectionPanel.svelte')),
  seen: fetched(() => import('./dialogs/SeenDialog.svelte')),
  strip: fetched(() => import('./strip/TimeStripPanel.svelte')),
  tables: fetched(() => import('./music/TablesDialog.svelte')),
  turns: fetched(() => import('./turns/TurnsPanel.svelte')),
  underlay: fetched(() => import('./underlay/UnderlayDialog.svelte')),
  underlayScale: fetched(() => import('./underlay/UnderlayScaleDialog.svelte')),
} as const;

/** While the first frame is made there are gaps, too. */
const AFTER_FIRST_FRAME_MS = 400;
/** A window that never rests, on a slow machine, must not be without them for long. */
const AT_THE_LATEST_MS = 1000;

/** Begun when the window has nothing else to do; one that fails is asked for again when it is wanted. */
export function fetchAllLater(): void {
  const fetchAll = (): void => {
    for (const { fetch } of Object.values(later)) fetch().catch(() => undefined);
  };
  setTimeout(() => requestIdleCallback(fetchAll, { timeout: AT_THE_LATEST_MS }), AFTER_FIRST_FRAME_MS);
}
