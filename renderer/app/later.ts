/**
 * Parts of the window whose scripts come when they are first wanted, so that the plan stands there sooner. A moment after
 * the first frame they are all fetched, so that nobody waits for them.
 */

export const later = {
  concert: () => import('./dialogs/ConcertDialog.svelte'),
  ensemble: () => import('./ensemble/EnsembleDialog.svelte'),
  help: () => import('./help/HelpDialog.svelte'),
  house: () => import('./dialogs/HouseDialog.svelte'),
  music: () => import('./music/MusicDialog.svelte'),
  pack: () => import('./pack/PackDialog.svelte'),
  paper: () => import('./paper/PaperDialog.svelte'),
  partPdf: () => import('./music/PartPdfDialog.svelte'),
  partTable: () => import('./music/PartTableDialog.svelte'),
  print: () => import('./dialogs/PrintDialog.svelte'),
  programme: () => import('./programme/ProgrammeView.svelte'),
  scoreChoice: () => import('./music/ScoreChoiceDialog.svelte'),
  section: () => import('./SectionPanel.svelte'),
  seen: () => import('./dialogs/SeenDialog.svelte'),
  strip: () => import('./strip/TimeStripPanel.svelte'),
  tables: () => import('./music/TablesDialog.svelte'),
  turns: () => import('./turns/TurnsPanel.svelte'),
  underlay: () => import('./underlay/UnderlayDialog.svelte'),
  underlayScale: () => import('./underlay/UnderlayScaleDialog.svelte'),
} as const;

/** While the first frame is made there are gaps, too. */
const AFTER_FIRST_FRAME_MS = 1000;

/** Begun when the window has nothing else to do; one that fails is asked for again when it is wanted. */
export function fetchAllLater(): void {
  const fetchAll = (): void => {
    for (const fetch of Object.values(later)) fetch().catch(() => undefined);
  };
  setTimeout(() => requestIdleCallback(fetchAll), AFTER_FIRST_FRAME_MS);
}
