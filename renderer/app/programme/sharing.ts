/** What is selected stays for the whole concert, or is each setup's own again. */

import { share, unshare } from '#model/commands/share.ts';
import { isPlaced, type PlacedRecord } from '#model/document/records.ts';
import type { Editor } from '../../state/editor.svelte.ts';

type Sharing = 'share' | 'unshare';

export function maySharing(editor: Editor, what: Sharing): boolean {
  const items = selectedItems(editor);
  return items.length > 0 && items.every(({ setup }) => (setup === null) === (what === 'unshare'));
}

export function changeSharing(editor: Editor, what: Sharing): void {
  const { settled, setup } = editor.session;
  const ids = selectedItems(editor).map(({ id }) => id);
  editor.carryOut(what === 'share' ? share(settled, { ids }) : unshare(settled, { ids, setup }));
}

function selectedItems({ session }: Editor): PlacedRecord[] {
  const records = session.selection.map((id) => session.settled.records.get(id));
  return records.filter((record) => record !== undefined && isPlaced(record));
}
