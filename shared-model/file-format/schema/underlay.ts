/** Schema of a picture or drawing under the plan. */

import * as v from 'valibot';
import {
  degreesBetween,
  field,
  fields,
  line,
  listOf,
  numberBetween,
  oneOf,
  share,
  textLike,
  wholeBetween,
  yesOrNo,
  type Advice,
} from '../fields.ts';
import {
  LONGEST_NAME,
  MOST_LINE_NUMBERS,
  MOST_PICTURE_TEXT,
  MOST_PIXELS_ACROSS,
  MOST_UNDERLAY_LINES,
} from '../limits.ts';
import { common, position } from './common.ts';
import { t } from '../../words/say.ts';

const pictureOrLines: Advice = () => t`give "picture" or "lines"`;

const picture = fields({
  type: field('Type', 'A picture.', v.literal('picture', pictureOrLines)),
  media: field('Media type', 'What the bytes are.', oneOf(['image/png', 'image/jpeg'])),
  width: field('Width', 'Pixels.', wholeBetween(1, MOST_PIXELS_ACROSS)),
  height: field('Height', 'Pixels.', wholeBetween(1, MOST_PIXELS_ACROSS)),
  base64: field(
    'Bytes',
    'The bytes of the picture in base64.',
    v.pipe(
      textLike(/^[A-Za-z0-9+/]+={0,2}$/, () => t`give the bytes of a picture in base64`),
      v.maxLength(MOST_PICTURE_TEXT, () => t`the picture is too large; make it smaller`),
    ),
  ),
});

const LONGEST_EXTENT = 1e9;
const extent = numberBetween(0, LONGEST_EXTENT, () => t`give a length from 0 to ${LONGEST_EXTENT}`);

const lines = fields({
  type: field('Type', 'A drawing.', v.literal('lines', pictureOrLines)),
  width: field('Width', 'Extent of the drawing in its own units.', extent),
  height: field('Height', 'Extent of the drawing in its own units.', extent),
  lines: field(
    'Lines',
    'Each as x, y, x, y, ... from the lower left corner, y upwards, in the drawing’s own units.',
    listOf(listOf(extent, 4, MOST_LINE_NUMBERS), 0, MOST_UNDERLAY_LINES),
  ),
});

export const underlay = fields({
  ...common('underlay'),
  ...position,
  turn: v.optional(
    field(
      'Turn',
      'Degrees anticlockwise about its lower left corner, which lies at (x, y).',
      degreesBetween(-360, 360),
    ),
    0,
  ),
  scale: field(
    'Scale',
    'Millimetres on the platform for each unit of its own: a pixel, or a unit of the drawing.',
    numberBetween(1e-6, 1e6, () => t`give a number from 0.000001 to 1000000`),
  ),
  opacity: v.optional(field('Opacity', 'From 0 to 1.', share()), 0.5),
  shown: v.optional(field('Shown', 'Whether it can be seen.', yesOrNo()), true),
  source: v.optional(field('Source', 'Name of the file that it came from.', line(LONGEST_NAME)), ''),
  content: field(
    'Content',
    'A picture or lines.',
    v.variant('type', [picture, lines], () => t`give {"type": "picture", ...} or {"type": "lines", ...}`),
  ),
});
