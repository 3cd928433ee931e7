/**
 * Everything that can be done without pointing at something, with its keys: the menus, the keyboard and the list of
 * commands all come from here.
 */

import { duplicate } from '#model/commands/duplicate.ts';
import { align, distribute, mirror } from '#model/commands/arrange-items.ts';
import { move } from '#model/commands/move.ts';
import { turnBy, turnTowards } from '#model/commands/turn.ts';
import type { Outcome } from '#model/commands/command.ts';
import { belongsTo } from '#model/document/document.ts';
import { isPlaced } from '#model/document/records.ts';
import { LANGUAGES } from '#model/words/languages.ts';
import { wayBeside } from '../canvas/placing.ts';
import { FaceTowards } from '../canvas/gestures/face-towards.svelte.ts';
import type { Editor } from '../state/editor.svelte.ts';
import { isSingle } from './key-press.ts';
import { text } from './text.ts';
import { pasteByHand } from './clipboard.ts';
import * as grouping from './grouping.ts';
import * as looking from './looking.ts';
import * as filing from './filing.ts';
import { removeFrom } from './removing.ts';
import { HELP_ACTIONS, HELP_PAGE_ACTIONS } from './help/help-actions.ts';
import { showMusic } from './music/giving-music.ts';
import { toggleStrip } from './strip/showing-strip.ts';
import { toggleTurns } from './turns/showing-turns.ts';
import { askForSetupName, addSetupCopy, addEmptySetup } from './setup-actions.ts';
import { toggleProgramme } from './programme/showing-programme.ts';
import { changeSharing, maySharing } from './programme/sharing.ts';
import { STEPS, type Steps } from './steps.ts';
import { exportFile } from './underlay/exporting.ts';
import { traceThePlatform } from './underlay/setting-right.ts';

export interface Action {
  readonly id: string;
  readonly words: (editor: Editor) => string;
  /** The first is shown. `Mod` is Ctrl, on a Mac Cmd. */
  readonly keys: readonly string[];
  /** The browser listens to these keys by itself, for only so does the clipboard reach other windows. */
  readonly byBrowser: boolean;
  /** Keys count only while the plan has the focus, single letters and signs anywhere but in fields and menus. */
  readonly onPlan: boolean;
  readonly may: (editor: Editor) => boolean;
  readonly run: (editor: Editor) => void;
}

interface Sketch {
  readonly id: string;
  readonly words: string | ((editor: Editor) => string);
  readonly keys?: readonly string[];
  readonly onPlan?: boolean;
  readonly byBrowser?: boolean;
  readonly may?: (editor: Editor) => boolean;
  readonly run: (editor: Editor) => unknown;
}

function action({
  id,
  words,
  keys = [],
  onPlan = false,
  byBrowser = false,
  may = () => true,
  run,
}: Sketch): Action {
  return {
    id,
    words: typeof words === 'string' ? () => words : words,
    keys,
    onPlan,
    byBrowser,
    may,
    run: (editor) => void run(editor),
  };
}

const selects = (least: number) => (editor: Editor) => placedSelection(editor).length >= least;

const onSelection =
  (command: (document: Editor['session']['settled'], ids: readonly string[]) => Outcome) =>
  (editor: Editor) =>
    editor.carryOut(command(editor.session.settled, placedSelection(editor)));

/** `right` and `up` are -1, 0 or 1: stage left and upstage are positive. */
const nudge = (size: keyof Steps, right: number, up: number) => (editor: Editor) => {
  const ids = placedSelection(editor);
  if (ids.length === 0) return looking.panBy(editor, right, up);
  const step = STEPS[editor.units][size];
  const [dx, dy] = [right * step, up * step];
  if (editor.carryOut(move(editor.session.settled, { ids, dx, dy }))) looking.tellWhere(editor);
};

/** A whole group turns as one. */
const turn = (by: number) => (editor: Editor) => {
  const about = grouping.groupSelected(editor) ? 'common' : 'own';
  return editor.carryOut(turnBy(editor.session.settled, { ids: placedSelection(editor), by, about }));
};

const w = text.commands;

/** The sides of things that can be put in line. */
export const SIDES = [
  { side: 'stageLeft', axis: 'x', at: 'greatest' },
  { side: 'stageRight', axis: 'x', at: 'least' },
  { side: 'upstage', axis: 'y', at: 'greatest' },
  { side: 'downstage', axis: 'y', at: 'least' },
] as const;

export const ACTIONS: readonly Action[] = [
  action({
    id: 'help.commands',
    words: text.bar.commands,
    keys: ['Mod+K'],
    run: (e) => e.questions.ask('commands', null),
  }),
  ...HELP_ACTIONS.map(action),
  action({ id: 'file.new', words: text.bar.new, keys: ['Mod+Alt+N'], run: filing.startNew }),
  action({ id: 'file.open', words: text.bar.open, keys: ['Mod+O'], run: (e) => e.desk.chooseAndOpen() }),
  action({ id: 'file.demo', words: text.bar.demo, run: filing.openDemo }),
  action({ id: 'file.save', words: text.bar.save, keys: ['Mod+S'], run: (e) => e.desk.save() }),
  action({ id: 'file.saveAs', words: text.bar.saveAs, keys: ['Mod+Shift+S'], run: (e) => e.desk.saveAs() }),
  action({
    id: 'file.print',
    words: text.bar.print,
    keys: ['Mod+P'],
    run: (e) => e.questions.ask('print', null),
  }),
  ...(['dxf', 'marks', 'inventory'] as const).map((what) =>
    action({ id: `export.${what}`, words: text.exports[what], run: (e) => exportFile(e, what) }),
  ),
  action({
    id: 'underlay.add',
    words: text.underlay.action,
    run: (e) => e.questions.ask('underlay', null),
  }),
  action({ id: 'platform.trace', words: text.underlay.trace, run: traceThePlatform }),
  action({
    id: 'file.pack',
    words: text.pack.action,
    keys: ['Mod+Shift+P'],
    run: (e) => e.questions.ask('pack', null),
  }),
  action({
    id: 'concert.contacts',
    words: text.pack.contactsAction,
    run: (e) => e.questions.ask('concert', null),
  }),
  action({ id: 'concert.edit', words: text.bar.concert, run: (e) => e.questions.ask('concert', null) }),
  action({ id: 'house.other', words: text.platform.otherHouse, run: filing.takeOtherHouse }),

  action({
    id: 'edit.undo',
    words: ({ session }) => text.bar.undo(session.undoName),
    keys: ['Mod+Z'],
    may: ({ session }) => session.undoName !== null,
    run: looking.undo,
  }),
  action({
    id: 'edit.redo',
    words: ({ session }) => text.bar.redo(session.redoName),
    keys: ['Mod+Shift+Z', 'Mod+Y'],
    may: ({ session }) => session.redoName !== null,
    run: looking.redo,
  }),
  action({ id: 'edit.selectAll', words: w.selectAll, keys: ['Mod+A'], onPlan: true, run: selectAll }),
  action({ id: 'edit.deselect', words: w.deselect, keys: ['Escape'], onPlan: true, run: looking.letGo }),
  action({
    id: 'edit.remove',
    words: w.remove,
    keys: ['Delete', 'Backspace'],
    onPlan: true,
    may: ({ session }) => session.selection.length > 0,
    run: (e) => removeFrom(e, e.session.selection),
  }),
  action({
    id: 'edit.copy',
    words: w.copy,
    keys: ['Mod+C'],
    byBrowser: true,
    may: selects(1),
    run: () => document.execCommand('copy'),
  }),
  action({
    id: 'edit.cut',
    words: w.cut,
    keys: ['Mod+X'],
    byBrowser: true,
    may: selects(1),
    run: () => document.execCommand('cut'),
  }),
  action({
    id: 'edit.duplicate',
    words: w.duplicate,
    keys: ['Mod+D'],
    may: selects(1),
    run: duplicateSelection,
  }),
  action({ id: 'edit.paste', words: w.paste, keys: ['Mod+V'], byBrowser: true, run: (e) => pasteByHand(e) }),
  action({
    id: 'edit.group',
    words: w.group,
    keys: ['Mod+G'],
    may: grouping.mayGroup,
    run: grouping.groupSelection,
  }),
  action({
    id: 'edit.ungroup',
    words: w.ungroup,
    keys: ['Mod+Shift+G'],
    may: grouping.mayUngroup,
    run: grouping.ungroupSelection,
  }),
  action({
    id: 'edit.enter',
    words: w.enterGroup,
    keys: ['Enter'],
    onPlan: true,
    may: grouping.mayEnter,
    run: (e) => grouping.enterGroup(e, e.session.selection[0] ?? ''),
  }),
  action({
    id: 'edit.lock',
    words: (e) => (grouping.isSelectionLocked(e) ? w.unlock : w.lock),
    keys: ['L'],
    onPlan: true,
    may: grouping.mayMark,
    run: grouping.toggleLock,
  }),
  action({
    id: 'edit.hide',
    words: (e) => (grouping.isSelectionHidden(e) ? w.unhide : w.hide),
    keys: ['X'],
    onPlan: true,
    may: grouping.mayMark,
    run: grouping.toggleHidden,
  }),
  action({
    id: 'edit.showHidden',
    words: w.showHidden,
    keys: ['Shift+X'],
    onPlan: true,
    may: (e) => grouping.hiddenCount(e) > 0,
    run: grouping.showHidden,
  }),
  action({
    id: 'edit.mirror',
    words: w.mirror,
    keys: ['M'],
    onPlan: true,
    may: selects(1),
    run: onSelection((document, ids) => mirror(document, { ids })),
  }),
  ...SIDES.map(({ side, axis, at }) =>
    action({
      id: `edit.align.${side}`,
      words: w.alignSide[side],
      may: selects(2),
      run: onSelection((document, ids) => align(document, { ids, axis, at })),
    }),
  ),
  ...(['x', 'y'] as const).flatMap((axis) => [
    action({
      id: `edit.align.${axis}`,
      words: axis === 'x' ? w.alignDepth : w.alignAcross,
      may: selects(2),
      run: onSelection((document, ids) => align(document, { ids, axis, at: 'middle' })),
    }),
    action({
      id: `edit.distribute.${axis}`,
      words: axis === 'x' ? w.spreadAcross : w.spreadDepth,
      may: selects(3),
      run: onSelection((document, ids) => distribute(document, { ids, axis })),
    }),
  ]),
  action({
    id: 'edit.faceHouse',
    words: w.faceHouse,
    keys: ['H'],
    onPlan: true,
    may: selects(1),
    run: onSelection((document, ids) => turnTowards(document, { ids, towards: 'house' })),
  }),
  action({
    id: 'edit.faceThere',
    words: w.faceThere,
    keys: ['F'],
    onPlan: true,
    may: selects(1),
    run: turnThere,
  }),
  action({ id: 'turn.left', words: w.turnLeft, keys: ['['], onPlan: true, may: selects(1), run: turn(5) }),
  action({ id: 'turn.right', words: w.turnRight, keys: [']'], onPlan: true, may: selects(1), run: turn(-5) }),
  action({
    id: 'turn.leftFar',
    words: w.turnLeftFar,
    keys: ['{'],
    onPlan: true,
    may: selects(1),
    run: turn(45),
  }),
  action({
    id: 'turn.rightFar',
    words: w.turnRightFar,
    keys: ['}'],
    onPlan: true,
    may: selects(1),
    run: turn(-45),
  }),
  action({
    id: 'move.left',
    words: w.moveStageLeft,
    keys: ['ArrowRight'],
    onPlan: true,
    run: nudge('fine', 1, 0),
  }),
  action({
    id: 'move.right',
    words: w.moveStageRight,
    keys: ['ArrowLeft'],
    onPlan: true,
    run: nudge('fine', -1, 0),
  }),
  action({ id: 'move.up', words: w.moveUpstage, keys: ['ArrowUp'], onPlan: true, run: nudge('fine', 0, 1) }),
  action({
    id: 'move.down',
    words: w.moveDownstage,
    keys: ['ArrowDown'],
    onPlan: true,
    run: nudge('fine', 0, -1),
  }),
  action({
    id: 'move.leftFar',
    words: w.moveStageLeftFar,
    keys: ['Shift+ArrowRight'],
    onPlan: true,
    run: nudge('coarse', 1, 0),
  }),
  action({
    id: 'move.rightFar',
    words: w.moveStageRightFar,
    keys: ['Shift+ArrowLeft'],
    onPlan: true,
    run: nudge('coarse', -1, 0),
  }),
  action({
    id: 'move.upFar',
    words: w.moveUpstageFar,
    keys: ['Shift+ArrowUp'],
    onPlan: true,
    run: nudge('coarse', 0, 1),
  }),
  action({
    id: 'move.downFar',
    words: w.moveDownstageFar,
    keys: ['Shift+ArrowDown'],
    onPlan: true,
    run: nudge('coarse', 0, -1),
  }),
  action({
    id: 'select.next',
    words: w.selectNext,
    keys: ['N'],
    onPlan: true,
    run: (e) => looking.selectBeside(e, 1),
  }),
  action({
    id: 'select.before',
    words: w.selectBefore,
    keys: ['Shift+N'],
    onPlan: true,
    run: (e) => looking.selectBeside(e, -1),
  }),

  action({
    id: 'view.in',
    words: text.plan.zoomIn,
    keys: ['Mod++', 'Mod+=', '+', '='],
    run: (e) => looking.zoomBy(e, 1.25),
  }),
  action({
    id: 'view.out',
    words: text.plan.zoomOut,
    keys: ['Mod+-', '-'],
    run: (e) => looking.zoomBy(e, 0.8),
  }),
  action({ id: 'view.fit', words: text.plan.fit, keys: ['Mod+0', '0'], run: looking.showEverything }),
  action({ id: 'view.stage', words: text.plan.fitStage, keys: ['Mod+1', '1'], run: looking.showStage }),
  action({
    id: 'view.selection',
    words: text.plan.fitSelection,
    keys: ['Mod+2', '2'],
    may: ({ session }) => session.selection.length > 0,
    run: looking.showSelection,
  }),
  action({ id: 'view.actual', words: text.plan.actualSize, run: looking.showActualSize }),
  action({
    id: 'view.hand',
    words: text.plan.panHand,
    keys: ['V'],
    onPlan: true,
    run: ({ view }) => (view.hand = view.hand === 'pan' ? 'arrange' : 'pan'),
  }),
  action({
    id: 'view.names',
    words: w.toggle(text.bar.names),
    run: ({ view }) => (view.names = !view.names),
  }),
  action({
    id: 'view.marks',
    words: w.toggle(text.bar.marks),
    run: ({ view }) => (view.marks = !view.marks),
  }),
  action({
    id: 'view.grid',
    words: w.toggle(text.bar.grid),
    keys: ['G'],
    onPlan: true,
    run: ({ view }) => (view.grid = !view.grid),
  }),
  action({
    id: 'view.reach',
    words: w.toggle(text.bar.reach),
    keys: ['R'],
    onPlan: true,
    run: ({ view }) => (view.reach = !view.reach),
  }),
  action({
    id: 'view.routes',
    words: w.toggle(text.bar.routes),
    keys: ['W'],
    onPlan: true,
    run: ({ view }) => (view.routes = !view.routes),
  }),
  action({
    id: 'view.section',
    words: w.toggle(text.plan.section),
    keys: ['S'],
    onPlan: true,
    run: ({ view }) => (view.section = !view.section),
  }),
  action({
    id: 'view.nextPlace',
    words: w.nextPlace,
    keys: ['.'],
    onPlan: true,
    may: looking.mayLookFromPlaces,
    run: (editor) => looking.lookFromPlace(editor, 1),
  }),
  action({
    id: 'view.placeBefore',
    words: w.placeBefore,
    keys: [','],
    onPlan: true,
    may: looking.mayLookFromPlaces,
    run: (editor) => looking.lookFromPlace(editor, -1),
  }),
  action({ id: 'view.seen', words: text.seen.large, may: looking.mayLookFrom, run: looking.lookFrom }),
  action({
    id: 'view.left',
    words: w.toggle(text.bar.leftPanel),
    keys: ['F8'],
    run: ({ view }) => (view.leftOpen = !view.leftOpen),
  }),
  action({
    id: 'view.right',
    words: w.toggle(text.bar.rightPanel),
    keys: ['F9'],
    run: ({ view }) => (view.rightOpen = !view.rightOpen),
  }),
  ...(['light', 'dark', 'system'] as const).map((theme) =>
    action({
      id: `theme.${theme}`,
      words: w.theme(text.bar.themes[theme]),
      run: (e) => e.changeSettings({ theme }),
    }),
  ),

  ...(['system', ...LANGUAGES] as const).map((language) =>
    action({
      id: `language.${language}`,
      words: w.language(text.bar.languages[language]),
      run: (e) => e.changeLanguage(language),
    }),
  ),

  action({
    id: 'keys.single',
    words: (e) => (e.settings.singleKeys ? w.singleKeysOff : w.singleKeysOn),
    run: (e) => e.changeSettings({ singleKeys: !e.settings.singleKeys }),
  }),
  action({ id: 'go.plan', words: w.goPlan, keys: ['F6'], run: () => looking.focusOn('plan') }),
  action({ id: 'go.store', words: w.goStore, keys: ['Mod+I'], run: (e) => looking.openAndFocus(e, 'store') }),
  action({
    id: 'go.outline',
    words: w.goOutline,
    keys: ['Mod+L'],
    run: (e) => looking.openAndFocus(e, 'outline'),
  }),
  action({
    id: 'setup.next',
    words: w.setupNext,
    keys: ['Mod+PageDown', 'Alt+ArrowRight'],
    run: (e) => looking.showSetupBeside(e, 1),
  }),
  action({
    id: 'setup.before',
    words: w.setupBefore,
    keys: ['Mod+PageUp', 'Alt+ArrowLeft'],
    run: (e) => looking.showSetupBeside(e, -1),
  }),
  action({ id: 'setup.music', words: text.music.action, run: showMusic }),
  action({ id: 'setup.turns', words: text.turns.action, run: toggleTurns }),
  action({ id: 'setup.strip', words: text.strip.action, keys: ['T'], onPlan: true, run: toggleStrip }),
  action({
    id: 'setup.ensemble',
    words: text.ensemble.action,
    keys: ['Mod+E'],
    run: (e) => e.questions.ask('ensemble', null),
  }),
  action({ id: 'programme.show', words: text.programme.action, keys: ['F7'], run: toggleProgramme }),
  ...(['share', 'unshare'] as const).map((what) =>
    action({
      id: `edit.${what}`,
      words: text.programme[what],
      may: (e) => maySharing(e, what),
      run: (e) => changeSharing(e, what),
    }),
  ),
  action({ id: 'setup.add', words: w.setupAdd, run: addEmptySetup }),
  action({ id: 'setup.copy', words: w.setupCopy, run: addSetupCopy }),
  action({ id: 'setup.rename', words: w.setupRename, run: askForSetupName }),
  ...HELP_PAGE_ACTIONS.map(action),
];

/** The keys of an action that do something: without the single letters and signs when those are switched off. */
export function keysOf({ keys }: Action, { settings }: Editor): readonly string[] {
  return settings.singleKeys ? keys : keys.filter((each) => !isSingle(each));
}

const byId = new Map(ACTIONS.map((one) => [one.id, one]));

export function actionNamed(id: string): Action {
  const found = byId.get(id);
  if (!found) throw new Error(`no action ${id}`);
  return found;
}

/** What of the selection stands at a spot. */
function placedSelection({ session: { settled, selection } }: Editor): string[] {
  return selection.filter((id) => {
    const record = settled.records.get(id);
    return record && (isPlaced(record) || ['seatBlock', 'place', 'storage'].includes(record.kind));
  });
}

function turnThere(editor: Editor): void {
  editor.view.tool = new FaceTowards(editor, placedSelection(editor));
  looking.focusOn('plan');
}

function duplicateSelection(editor: Editor): void {
  const { settled } = editor.session;
  const ids = placedSelection(editor);
  const spots = ids.flatMap((id) => {
    const record = settled.records.get(id);
    return record && 'x' in record ? record : [];
  });
  const { x, y } = wayBeside(editor, spots);
  editor.carryOut(duplicate(settled, { ids, dx: x, dy: y }));
}

function selectAll({ session }: Editor): void {
  const all = [...session.settled.records.values()].filter(
    (record) =>
      isPlaced(record) && belongsTo(record, session.setup) && !(record.kind === 'shape' && record.fixed),
  );
  session.select(
    grouping.freeOf(
      session.document,
      all.map(({ id }) => id),
    ),
  );
}
