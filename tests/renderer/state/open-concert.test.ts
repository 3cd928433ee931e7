import type { Proposal } from '#model/commands/command.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord } from '#model/document/records.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as concerts from '../../../renderer/state/open-concert.ts';
import { aDocument, aPlayer, aSetup, aStand, SETUP } from '../../helpers/build.ts';

const start = concerts.opened(aDocument(aPlayer(), aStand()), true);

function change(before: AnyRecord | null, after: AnyRecord | null, select?: string[]): Proposal {
  const id = (after ?? before)?.id ?? '';
  return {
    ok: true,
    label: `change ${id}`,
    diff: new Map([[id, { before, after }]]),
    ...(select ? { select } : {}),
  };
}

const moved = (x: number): Proposal => change(aStand(), aStand({ x }));

describe('open concert', () => {
  it('shows a draft, keeps it as one entry or drops it without a trace', () => {
    const drafting = concerts.drafted(concerts.drafted(start, moved(100)), moved(200));
    expect(concerts.shownDocument(drafting).records.get('stand-1')).toMatchObject({ x: 200 });
    expect(drafting.history.document).toBe(start.history.document);
    expect(concerts.draftDropped(drafting)).toEqual(start);
    const kept = concerts.draftKept(drafting);
    expect(kept.history.past).toHaveLength(1);
    expect(kept.draft).toBeNull();
  });

  it('is dirty exactly while it differs from the file by its history', () => {
    expect(concerts.isDirty(start)).toBe(false);
    const changed = concerts.carriedOut(start, moved(100));
    expect(concerts.isDirty(changed)).toBe(true);
    expect(concerts.isDirty(concerts.undone(changed))).toBe(false);
    const written = concerts.saved(changed, concerts.lastEntry(changed));
    expect(concerts.isDirty(written)).toBe(false);
    expect(concerts.isDirty(concerts.undone(written))).toBe(true);
    expect(concerts.isDirty(concerts.redone(concerts.undone(written)))).toBe(false);
  });

  it('stays dirty when it was changed while it was being written', () => {
    const changed = concerts.carriedOut(start, moved(100));
    const writtenAt = concerts.lastEntry(changed);
    const further = concerts.carriedOut(changed, change(aPlayer(), aPlayer({ x: 50 })));
    expect(concerts.isDirty(concerts.saved(further, writtenAt))).toBe(true);
  });

  it('is dirty from the start when it lies in no file', () => {
    expect(concerts.isDirty(concerts.opened(aDocument(), false))).toBe(true);
  });

  it('forgets what is selected when it is not part of the setup shown', () => {
    const second = aSetup({ id: 'setup-2', order: 2 });
    const pillar = { ...aStand({ id: 'stand-9' }), setup: null };
    const open = concerts.selected(concerts.opened(aDocument(second, aStand(), pillar), true), [
      'stand-1',
      'stand-9',
      'platform-1',
    ]);
    const shown = concerts.setupShown(open, asId('setup-2'));
    expect(shown.history.selection).toEqual(['stand-9', 'platform-1']);
    expect(shown.setup).toBe('setup-2');
  });

  it('shows the first setup when the one in view is removed', () => {
    const second = aSetup({ id: 'setup-2', order: 2 });
    const open = concerts.setupShown(concerts.opened(aDocument(second), true), asId('setup-2'));
    const without = concerts.carriedOut(open, change(second, null));
    expect(without.setup).toBe(SETUP);
    expect(concerts.setupShown(concerts.undone(without), asId('setup-2')).setup).toBe('setup-2');
  });

  it('hides from the selection what the shown document does not have', () => {
    const open = concerts.selected(start, ['stand-1', 'gone']);
    expect(concerts.shownSelection(open)).toEqual(['stand-1']);
  });

  it('undoes any run of changes to the first document', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -3000, max: 3000 }), { maxLength: 20 }), (places) => {
        let open = start;
        for (const x of places) {
          const before = concerts.shownDocument(open).records.get('stand-1') ?? null;
          open = concerts.carriedOut(open, change(before, aStand({ x })));
        }
        for (const _ of places) open = concerts.undone(open);
        expect([...concerts.shownDocument(open).records]).toEqual([...start.history.document.records]);
        expect(concerts.isDirty(open)).toBe(false);
      }),
    );
  });
});
