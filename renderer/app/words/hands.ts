/** Groups, locks and what is hidden. */

import { counted } from './counting.ts';

export const handsWords = {
  hands: {
    group: 'Group',
    ungroup: 'Ungroup',
    lock: 'Lock',
    unlock: 'Unlock',
    hide: 'Hide',
    show: 'Show',
    locked: 'locked',
    hidden: 'hidden',
    inGroup: (name: string) => `in ${name}`,
    groupName: 'Name of the group',
    hiddenCount: (count: number) =>
      `${counted(count, 'thing is', 'things are')} hidden; checks count ${count === 1 ? 'it' : 'them'}`,
    showAll: 'Show all',
    inside: (name: string) => `Inside ${name}`,
    leave: 'Leave it',
    lineUp: 'Line up and spread',
    menuOf: 'What can be done with it',
    clickToFace: 'Click whom or what it should face, or a point',
    toolKeys: 'Without a mouse: arrow keys (Shift: farther, Ctrl: finely), then the space bar',
    pasteByKey: 'The browser hands the clipboard over only to the keys: press Ctrl+V.',
  },
} as const;
