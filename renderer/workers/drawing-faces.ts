/** The drawing's letters for a worker, which does not see the style sheets of the window. */

/// <reference types="vite/client" />

import bold from '@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf?url';
import regular from '@expo-google-fonts/atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf?url';
import { DRAWING_FACE } from '../canvas/painter.ts';

let loading: Promise<void> | null = null;

/** Once for a worker. A face that cannot be had is replaced by the system's, as in the window. */
export function drawingFaces(): Promise<void> {
  return (loading ??= load());
}

async function load(): Promise<void> {
  const { fonts } = globalThis as unknown as { readonly fonts: FontFaceSet };
  const faces = [
    new FontFace(DRAWING_FACE, `url(${regular})`, { weight: '400' }),
    new FontFace(DRAWING_FACE, `url(${bold})`, { weight: '700' }),
  ];
  for (const face of faces) fonts.add(face);
  await Promise.allSettled(faces.map((face) => face.load()));
}
