/** What a menu can hold. */

export type MenuEntry =
  | { readonly type: 'rule' }
  | { readonly type: 'words'; readonly words: string }
  | {
      readonly type: 'choice';
      readonly words: string;
      readonly chosen: boolean;
      readonly closes?: boolean;
      readonly run: () => void;
    }
  | { readonly type: 'list'; readonly words: string; readonly entries: readonly MenuEntry[] }
  | {
      readonly type: 'item';
      readonly words: string;
      readonly note?: string;
      readonly keys?: string;
      readonly disabled?: boolean;
      readonly run: () => void;
    };
