/** Solids as a picture: looked at, cut to the paper, ordered, painted, bundled by what they belong to. */

import type { Palette } from '../palette.ts';
import type { GroupPrimitive, PathPrimitive } from '../primitives.ts';
import { frustumOf, type Camera } from './camera.ts';
import { partBefore } from './clip.ts';
import type { Face } from './face.ts';
import { paintOrderOfSolids } from './lumps.ts';
import type { Solid } from './mesh.ts';
import { paintFace, pensOf } from './paint-faces.ts';
import { seenFaces } from './seen-faces.ts';
import { lightOf } from './shade.ts';
import { tintsOf } from './tints.ts';

/**
 * Groups in painting order. A solid that has others both before and behind parts of it comes in several groups of the
 * same subject, the first of which has the description.
 */
export function pictureOf(
  solids: readonly Solid[],
  camera: Camera,
  palette: Palette,
  describe: (subject: string) => string,
): GroupPrimitive[] {
  const faces = facesInPicture(solids, camera, palette);
  const pens = pensOf(tintsOf(palette));
  const described = new Set<string>();
  return runsOf(paintOrderOfSolids(faces, camera.eye), solids).map(({ subject, run }): GroupPrimitive => {
    const description = described.has(subject) ? {} : { description: describe(subject) };
    described.add(subject);
    const children: PathPrimitive[] = [];
    for (const face of run) for (const path of paintFace(face, camera, pens)) children.push(path);
    return { kind: 'group', subject, children, ...description };
  });
}

/** Every face that looks to the eye, as far as it falls on the paper. */
export function facesInPicture(solids: readonly Solid[], camera: Camera, palette: Palette): Face[] {
  const frustum = frustumOf(camera);
  const faces: Face[] = [];
  let bodies = 0;
  const onlooker = {
    eye: camera.eye,
    light: lightOf(camera, palette),
    nextBody: () => bodies++,
  };
  solids.forEach((solid, index) => {
    for (const face of seenFaces(solid, index, onlooker)) {
      let part: Face | null = face;
      for (const plane of frustum) part &&= partBefore(part, plane);
      if (part) faces.push(part);
    }
  });
  return faces;
}

interface Run {
  readonly subject: string;
  readonly run: Face[];
}

function runsOf(faces: readonly Face[], solids: readonly Solid[]): Run[] {
  const runs: Run[] = [];
  for (const face of faces) {
    const subject = solids[face.solid]?.subject ?? '';
    const last = runs.at(-1);
    if (last?.subject === subject) last.run.push(face);
    else runs.push({ subject, run: [face] });
  }
  return runs;
}
