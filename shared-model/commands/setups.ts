/** Adds, copies, renames, orders and removes setups. */

import { programmeOf, setupsOf, type Document } from '../document/document.ts';
import { asId, type Id } from '../document/ids.ts';
import type { AnyRecord, Kind, Setup } from '../document/records.ts';
import { t } from '../words/say.ts';
import { copiesOf } from './clone.ts';
import { refuse, type Command, type Outcome } from './command.ts';
import { freshId } from './fresh-id.ts';
import { editsOf, propose } from './propose.ts';
import { removalOf } from './remove.ts';
import { theRecord } from './targets.ts';
import { nameOf } from './words.ts';

export interface AddSetup {
  readonly name: string;
}

/** An empty setup at the end of the programme. */
export const addSetup: Command<AddSetup> = (document, { name }) => {
  const setups = setupsOf(document);
  const added: Setup = {
    id: freshId(document, 'setup'),
    kind: 'setup',
    name,
    order: 0,
    notes: '',
    needNotSee: [],
    variantOf: null,
    changeTime: null,
  };
  return propose(document, editsOf(inOrder([...setups, added])), {
    label: name.trim() === '' ? t`add setup` : t`add setup ${name.trimEnd()}`,
    select: [],
  });
};

export interface CopySetup {
  readonly setup: Id<'setup'>;
  readonly name: string;
}

/** The setup once more, right after it in the programme, with copies of all that stands only there. */
export const copySetup: Command<CopySetup> = (document, { setup, name }) => {
  const target = theRecord(document, setup, 'setup');
  if (!target.ok) return target;
  const { name: original } = target.record;
  const label = original.trim() === '' ? t`copy setup` : t`copy setup ${original.trimEnd()}`;
  return copied(document, target.record, { fields: { name }, label });
};

/** Another version of the setup, to be compared with it: a copy that stands behind it and is not in the programme. */
export const varySetup: Command<CopySetup> = (document, { setup, name }) => {
  const target = theRecord(document, setup, 'setup');
  if (!target.ok) return target;
  const variantOf = target.record.variantOf ?? setup;
  const { name: original } = target.record;
  const label = original.trim() === '' ? t`vary setup` : t`vary setup ${original.trimEnd()}`;
  return copied(document, target.record, { fields: { name, variantOf, changeTime: null }, label });
};

interface Copying {
  readonly fields: Partial<Setup>;
  readonly label: string;
}

function copied(document: Document, original: Setup, { fields, label }: Copying): Outcome {
  const stays = <K extends Kind>(id: Id<K>): Id<K> => id;
  const copies = copiesOf(document, [original, ...itemsOf(document, original.id)], stays).records.map(
    (record) => (record.kind === 'setup' ? { ...record, ...fields } : record),
  );
  const setups = setupsOf(document);
  setups.splice(setups.indexOf(original) + 1, 0, ...copies.filter((record) => record.kind === 'setup'));
  return propose(document, editsOf([...copies, ...inOrder(setups)]), { label, select: [] });
}

export interface ChooseVariant {
  readonly setup: Id<'setup'>;
}

/** The variant takes the place of what it is a variant of, with the time there is for it; that becomes its variant. */
export const chooseVariant: Command<ChooseVariant> = (document, { setup }) => {
  const target = theRecord(document, setup, 'setup');
  if (!target.ok) return target;
  const original = setupsOf(document).find(({ id }) => id === target.record.variantOf);
  const name = nameOf(document, target.record);
  if (!original) return refuse(t`${name} is in the programme already.`);
  const { changeTime, order } = original;
  const setups = setupsOf(document).map((each): Setup => {
    if (each.id === setup) return { ...each, variantOf: null, changeTime, order };
    if (each.id === original.id)
      return { ...each, variantOf: setup, changeTime: null, order: target.record.order };
    return each.variantOf === original.id ? { ...each, variantOf: setup } : each;
  });
  const sorted = setups.toSorted((a, b) => a.order - b.order);
  return propose(document, editsOf(inOrder(sorted)), { label: t`choose ${name}` });
};

export interface SetChangeTime {
  readonly setup: Id<'setup'>;
  /** Seconds there are to set it after what comes before; null: not known. */
  readonly seconds: number | null;
}

/** A variant has the time of what it is a variant of. */
export const setChangeTime: Command<SetChangeTime> = (document, { setup, seconds }) => {
  const target = theRecord(document, setup, 'setup');
  if (!target.ok) return target;
  if (target.record.variantOf !== null)
    return refuse(t`Give the time of the setup in the programme: its variants have the same.`);
  const name = nameOf(document, target.record);
  return propose(document, editsOf([{ ...target.record, changeTime: seconds }]), {
    label: t`change time before ${name}`,
  });
};

/** The setup that an outcome brings into being, so that it can be shown; null when there is none. */
export function setupAddedBy(outcome: Outcome): Id<'setup'> | null {
  if (!outcome.ok) return null;
  for (const [id, { before, after }] of outcome.diff) if (!before && after?.kind === 'setup') return asId(id);
  return null;
}

export interface RemoveSetup {
  readonly setup: Id<'setup'>;
}

/** The setup and all that stands only there. The last one stays. */
export const removeSetup: Command<RemoveSetup> = (document, { setup }) => {
  const target = theRecord(document, setup, 'setup');
  if (!target.ok) return target;
  const others = setupsOf(document).filter(({ id }) => id !== setup);
  if (others.length === 0) return refuse(t`The only setup cannot be removed: a concert has at least one.`);
  const removal = removalOf(document, [target.record]);
  // Its variants let go of it and close up, too.
  const left = others.map((other) => {
    const edited = removal.get(other.id);
    return edited?.kind === 'setup' ? edited : other;
  });
  const edits = new Map([...removal, ...editsOf(inOrder(left))]);
  const name = nameOf(document, target.record);
  return propose(document, edits, { label: t`remove ${name}`, select: [] });
};

export interface RenameSetup {
  readonly setup: Id<'setup'>;
  readonly name: string;
}

export const renameSetup: Command<RenameSetup> = (document, { setup, name }) => {
  const target = theRecord(document, setup, 'setup');
  if (!target.ok) return target;
  const before = nameOf(document, target.record);
  return propose(document, editsOf([{ ...target.record, name }]), { label: t`rename ${before}` });
};

export interface ReorderSetup {
  readonly setup: Id<'setup'>;
  /** Its new place in the programme, from 1. */
  readonly to: number;
}

/** Puts a setup elsewhere in the programme, its variants behind it; the others close up. */
export const reorderSetup: Command<ReorderSetup> = (document, { setup, to }) => {
  const target = theRecord(document, setup, 'setup');
  if (!target.ok) return target;
  const { record } = target;
  const name = nameOf(document, record);
  if (record.variantOf !== null)
    return refuse(t`${name} is a variant: it goes with the setup that it is a variant of.`);
  const others = programmeOf(document).filter(({ id }) => id !== setup);
  if (!Number.isInteger(to) || to < 1 || to > others.length + 1) {
    return refuse(t`Give a place in the programme from 1 to ${others.length + 1}.`);
  }
  others.splice(to - 1, 0, record);
  const variants = setupsOf(document).filter(({ variantOf }) => variantOf !== null);
  return propose(document, editsOf(inOrder([...others, ...variants])), {
    label: t`reorder ${name}`,
  });
};

/** Numbered from 1 in this order, but every variant right behind what it is a variant of. */
function inOrder(setups: readonly Setup[]): Setup[] {
  const played = setups.filter(({ variantOf }) => variantOf === null);
  const grouped = played.flatMap((setup) => [
    setup,
    ...setups.filter(({ variantOf }) => variantOf === setup.id),
  ]);
  return grouped.map((setup, index) => ({ ...setup, order: index + 1 }));
}

function itemsOf(document: Document, setup: Id<'setup'>): AnyRecord[] {
  return [...document.records.values()].filter((record) => 'setup' in record && record.setup === setup);
}
