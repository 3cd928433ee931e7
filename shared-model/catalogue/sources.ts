/** Where the catalogue's numbers come from. Every model carries a source; "common practice" is said, not hidden. */

export const COMMON_PRACTICE = 'common practice, no source';
export const FROM_MEMORY = 'typical of makers’ data, from memory';

/*
 * ANSUR II, where it is named: Gordon et al., 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007
 * (2014), public domain.
 */

export interface Sourced {
  /** Source of every number of the model that `sourceOf` does not name. */
  readonly source: string;
  /** Fields whose numbers have another source than the rest. */
  readonly sourceOf?: Readonly<Record<string, string>>;
}

/** A thing of the catalogue. `id` is what records store in their `model`. */
export interface Model extends Sourced {
  readonly id: string;
  /** Said in the language that is spoken when it is read, so never to be copied while a module is read. */
  readonly name: string;
}

/** A look-up by id over a list of models. */
export function finder<M extends Model>(models: readonly M[]): (id: string) => M | undefined {
  const byId = new Map(models.map((model) => [model.id, model]));
  return (id) => byId.get(id);
}

/** A least, a greatest and a usual value of something that can be set. */
export interface Range {
  readonly least: number;
  readonly most: number;
  readonly usual: number;
}

export const range = (least: number, usual: number, most: number): Range => ({ least, usual, most });
