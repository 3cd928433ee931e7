/** The tree beside the plan, by the keyboard alone and as a screen reader hears it. */

import { expect, test } from './editor.ts';

test('the tree is walked, opened, closed and searched by letters, and tells where things are and what is amiss', async ({
  editor,
  page,
}) => {
  const { keyboard } = page;
  await editor.showSetup('2b Hedgerow Dances');
  const row = (name: RegExp) => editor.items.getByRole('treeitem', { name });
  const active = () =>
    editor.items.evaluate(
      (tree) => document.getElementById(tree.getAttribute('aria-activedescendant') ?? '')?.ariaLabel ?? '',
    );

  await keyboard.press('Control+l');
  await expect(editor.items).toBeFocused();
  await keyboard.press('Home');
  await expect(row(/^Platform/)).toHaveAttribute('aria-selected', 'true');
  await keyboard.press('End');
  const last = editor.items.getByRole('treeitem').last();
  await expect(last).toHaveAttribute('aria-selected', 'true');
  await expect(last).toHaveAttribute('aria-posinset', (await last.getAttribute('aria-setsize')) ?? '');

  // Letters lead to names, and do not act on the plan: "v" is no hand here.
  await editor.typeAtOnce('vio');
  await expect.poll(active).toMatch(/^Viola \(player 2\), \d+ S[LR], \d+ US/);
  await expect(row(/^Viola/)).toHaveAccessibleName(/, \d+ findings, the gravest: Fails$/);
  // And what they say, of the row that the keys are at.
  await expect(row(/^Viola/)).toHaveAccessibleDescription(
    /places do not see Viola \(player 2\) well\. Viola/,
  );
  await expect(row(/^Clarinet/)).toHaveAccessibleDescription('');

  // Two things become a group, which opens, closes and leads to its members.
  await keyboard.press('Shift+ArrowDown');
  await keyboard.press('Control+g');
  const group = row(/^group 1, 2 things/);
  await expect(group).toHaveAttribute('aria-expanded', 'true');
  await expect(row(/in group 1/)).toHaveCount(2);
  await expect(row(/in group 1/).first()).toHaveAttribute('aria-level', '2');
  await keyboard.press('ArrowLeft');
  await expect.poll(active).toMatch(/^group 1/);
  await keyboard.press('ArrowLeft');
  await expect(group).toHaveAttribute('aria-expanded', 'false');
  await expect(row(/in group 1/)).toHaveCount(0);
  await expect(group).toHaveAttribute('aria-selected', 'true');
  await keyboard.press('ArrowRight');
  await keyboard.press('ArrowRight');
  await expect.poll(active).toMatch(/in group 1/);
  await expect(group).toHaveAttribute('aria-selected', 'false');
  // A member that was taken out of the tree's group by hand moves alone.
  await keyboard.press('F6');
  await keyboard.press('ArrowUp');
  await expect(page.getByRole('button', { name: /^Undo move \D/ })).toBeVisible();
});

test('Delete in the tree takes out what has the focus, the next row has it then, and undo brings it back', async ({
  editor,
  page,
}) => {
  const { keyboard } = page;
  const rows = editor.items.getByRole('treeitem');
  const stands = editor.items.getByRole('treeitem', { name: /^stand \d/ });
  const count = await stands.count();
  const names = await rows.evaluateAll((all) => all.map((one) => one.ariaLabel ?? ''));
  const at = names.findIndex((name) => name.startsWith('stand 1'));
  const next = (names[at + 1] ?? '').replace(/^(stand) 2/, 'stand 1').split(',')[0] ?? '';
  await keyboard.press('Control+l');
  await editor.typeAtOnce('stand 1');
  await expect(editor.items.getByRole('treeitem', { selected: true })).toHaveAccessibleName(/^stand 1/);
  await keyboard.press('Delete');
  await expect(stands).toHaveCount(count - 1);
  await expect(editor.items).toBeFocused();
  await expect(page.getByRole('button', { name: 'Undo remove stand 1' })).toBeVisible();
  await expect(editor.items.getByRole('treeitem', { selected: true })).toHaveAccessibleName(
    new RegExp(`^${next.replace(/[()]/g, '\\$&')}`),
  );
  await keyboard.press('Control+z');
  await expect(stands).toHaveCount(count);

  // The platform cannot go; that is said, and it keeps the focus.
  await keyboard.press('Home');
  await keyboard.press('Delete');
  await expect(page.getByRole('alert')).toContainText('platform cannot be removed');
  await expect(editor.items.getByRole('treeitem', { name: /^Platform/ })).toHaveAttribute(
    'aria-selected',
    'true',
  );
});
