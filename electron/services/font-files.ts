/** Where the typefaces of the drawings lie: the family itself, and one with a wide repertoire for what it lacks. */

import { createRequire } from 'node:module';
import type { FontWeight } from '#model/drawing/primitives.ts';

const FAMILY = '@expo-google-fonts/atkinson-hyperlegible-next';
const WIDE = 'dejavu-fonts-ttf/ttf';

const MODULES: Readonly<Record<FontWeight, { readonly family: string; readonly wide: string }>> = {
  regular: {
    family: `${FAMILY}/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf`,
    wide: `${WIDE}/DejaVuSans.ttf`,
  },
  bold: {
    family: `${FAMILY}/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf`,
    wide: `${WIDE}/DejaVuSans-Bold.ttf`,
  },
};

export interface FontFiles {
  readonly family: string;
  readonly wide: string;
}

/** Paths of the TrueType files of a weight. */
export function fontFiles(weight: FontWeight): FontFiles {
  const { resolve } = createRequire(import.meta.url);
  const { family, wide } = MODULES[weight];
  return { family: resolve(family), wide: resolve(wide) };
}
