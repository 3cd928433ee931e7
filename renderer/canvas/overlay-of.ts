/** Puts the overlay together from the selection, the traces of the hands and the findings. */

import { outlineOf } from '#model/catalogue/outlines.ts';
import { labelOf } from '#model/document/labels.ts';
import { formatLength } from '#model/document/measures.ts';
import { isPlaced } from '#model/document/records.ts';
import { placedInSetup, platformOf, type Document } from '#model/document/document.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import { storageOutline } from '#model/drawing/plan/storages.ts';
import type { Polygon } from '#model/geometry/polygon.ts';
import { underlayOutline } from '#model/underlay/place.ts';
import { text } from '../app/text.ts';
import { keyOf } from '../state/examiner.ts';
import type { Editor } from '../state/editor.svelte.ts';
import { glancesOf } from './glances.ts';
import { extentOf, grown, holds, visibleExtent, type Extent } from './camera.ts';
import { platformCorners, turnHandle } from './handles.ts';
import { pickOutline } from './pickables.ts';
import { envelopesOf, type Envelopes } from './envelopes.ts';
import type { DrawnGuide, Overlay, OverlayInks, Remark } from './overlay.ts';
import { withHeads, type Headed } from './pin-places.ts';
import { gathered, type Pin } from './pins.ts';
import { runningMarks, type RunningMarks } from './running-marks.ts';
import type { Guide } from './snapping.ts';
import type { HandTraces } from './traces.svelte.ts';

/** `written`: where the plan has words, in mm of the stage, which the pins keep clear of. */
export function overlayOf(editor: Editor, traces: HandTraces, written: readonly Extent[]): Overlay {
  const { session, view } = editor;
  const { document, selection } = session;
  const hovered = traces.hovered !== null && !selection.includes(traces.hovered) ? traces.hovered : null;
  return {
    selected: ringsOf(document, selection),
    hovered: hovered === null ? null : ringOf(document, hovered),
    turn: traces.marquee ? null : turnHandle(document, selection, view.camera),
    corners: platformCorners(document, selection),
    guides: traces.guides.map((guide) => drawnGuide(editor, guide)),
    marquee: traces.marquee,
    remarks: session.drafting ? [] : remarksOf(editor, written),
    sightlines: sightlinesOf(editor),
    envelopes: envelopesIn(editor)?.rings ?? [],
    running: runningOf(editor),
    caption: traces.caption,
    tool: view.tool?.marks ?? null,
  };
}

/** With the stands where they are now, so that they keep their pages while they are moved. */
function runningOf({ view, strip, session }: Editor): RunningMarks | null {
  const { moment } = view.strip ? strip : { moment: null };
  return (
    moment && runningMarks({ document: session.document, setup: session.setup, moment, words: text.strip })
  );
}

/** Of the only player chosen, or of whom the chosen finding is about, while reach is shown. */
export function envelopesIn({ checks, view, session }: Editor): Envelopes | null {
  const { report } = checks;
  if (!report || report.setup !== session.setup) return null;
  const finding = report.findings.find((each) => keyOf(each) === view.finding);
  const isLookedAt = session.selection.includes(finding?.subjects[0] ?? '');
  const asked = isLookedAt && finding?.code.startsWith('reach.') ? finding.subjects : null;
  if (!asked && !view.reach) return null;
  const [player, item] = asked ?? (session.selection.length === 1 ? session.selection : []);
  return player === undefined ? null : envelopesOf(session.document, report, player, item ?? null);
}

/** Judgements are in red pencil, everything else in the drawing's ink. */
export function overlayInks(theme: 'light' | 'dark'): OverlayInks {
  const { ink, paper, faint } = PALETTES[theme];
  return { ink, paper, faint, pencil: theme === 'light' ? '#b0301c' : '#ff8a70' };
}

function ringsOf(document: Document, ids: readonly string[]): Polygon[] {
  const rings: Polygon[] = [];
  for (const id of ids) {
    const ring = ringOf(document, id);
    if (ring) rings.push(ring);
  }
  return rings;
}

function ringOf(document: Document, id: string): Polygon | null {
  const record = document.records.get(id);
  if (!record) return null;
  if (isPlaced(record)) return pickOutline(record);
  if (record.kind === 'storage') return storageOutline(record);
  if (record.kind === 'underlay') return record.shown ? underlayOutline(record) : null;
  return record.kind === 'platform' ? platformOf(document).outline : null;
}

function drawnGuide({ session, units }: Editor, guide: Guide): DrawnGuide {
  const others = text.list(guide.with.map((id) => labelOf(session.document, session.setup, id)));
  const words = text.guides[guide.reason](others, formatLength(guide.gap ?? guide.at, units));
  return { axis: guide.axis, at: guide.at, words };
}

/** The chosen finding's own pin, above those of the others, gathered where they would cover each other. */
function remarksOf({ checks, view, session }: Editor, words: readonly Extent[]): Remark[] {
  if (checks.judged?.setup !== session.setup) return [];
  const inView = grown(visibleExtent(view.camera, view.size), NEAR);
  const pins: Pin[] = [];
  const chosen: Headed[] = [];
  for (const [index, finding] of (checks.report?.findings ?? []).entries()) {
    const { where, severity } = finding;
    if (!where || !holds(inView, where)) continue;
    const pin = { where, severity, number: index + 1 };
    if (keyOf(finding) === view.finding) chosen.push({ ...pin, chosen: true, more: 0 });
    // Notes are many and not urgent: they show when they are looked at.
    else if (severity !== 'note' && pins.length < MOST_PINS) pins.push(pin);
  }
  // The chosen one has the first place, and is painted last.
  const placed = withHeads([...chosen, ...gathered(pins, view.camera.scale)], {
    camera: view.camera,
    view: view.size,
    words,
    things: thingsOf(session),
  });
  return placed.toSorted((a, b) => Number(a.chosen) - Number(b.chosen));
}

/** What stands in the setup that is shown, but for risers: on these others stand, and heads may. */
function thingsOf({ document, setup }: Editor['session']): Extent[] {
  const things = placedInSetup(document, setup).filter(({ kind }) => kind !== 'riser');
  return things.flatMap((record) => extentOf(outlineOf(record)) ?? []);
}

/** More pins than this hide the plan; the list has the rest. */
const MOST_PINS = 200;

/** Round the view, mm: a pin's head is beside its spot. */
const NEAR = 200;

/** From the place looked into to every player, by what it sees of him. */
/** From the chosen seat to all players, or between players. */
function sightlinesOf({ checks, view, session }: Editor): Overlay['sightlines'] {
  const { report } = checks;
  if (!report || report.setup !== session.setup) return [];
  if (view.seat === null) return glancesOf(session.document, report.facing, session);
  const { seats, targets } = report.sight.scene;
  const row = seats.findIndex(({ id }) => id === view.seat);
  const from = seats[row];
  if (!from) return [];
  return targets.map((to, column) => ({
    from,
    to,
    seen: report.sight.visible[row * targets.length + column] ?? 1,
  }));
}
