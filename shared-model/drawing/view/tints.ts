/** The palette's colours for what only a picture shows. */

import type { Palette } from '../palette.ts';
import { brightness, mixed } from './shade.ts';

export interface Tints {
  readonly coat: string;
  readonly trousers: string;
  readonly shoe: string;
  readonly hair: string;
  readonly skin: string;
  /** Stands, rods and feet. */
  readonly metal: string;
  readonly desk: string;
  readonly page: string;
  /** Staves on a page. */
  readonly print: string;
  readonly seat: string;
  readonly chairFrame: string;
  readonly lid: string;
  readonly cloth: string;
  readonly keys: string;
  /** Tubes under bars. */
  readonly pipe: string;
  readonly column: string;
  /** Lines on the floor. */
  readonly board: string;
  /** Where something stands on a floor. */
  readonly platformShade: string;
  readonly riserShade: string;
  /** Sides of the platform and of risers. */
  readonly side: string;
  readonly houseFloor: string;
  readonly listener: string;
  readonly listenerHead: string;
  readonly outline: string;
  readonly crease: string;
}

export function tintsOf(palette: Palette): Tints {
  const { paper, ink, wood, building, houseSeatLine, metal, platform, riser } = palette;
  return {
    ...(isDark(palette) ? onDark(palette) : onLight(palette)),
    metal: mixed(metal, ink, 0.2),
    seat: mixed(wood, building, 0.35),
    chairFrame: mixed(metal, paper, 0.15),
    lid: mixed(wood, ink, 0.12),
    cloth: mixed(wood, paper, 0.35),
    pipe: mixed(metal, paper, 0.5),
    column: mixed(building, paper, 0.45),
    board: mixed(platform, ink, 0.12),
    side: mixed(riser, platform, 0.3),
    houseFloor: mixed(paper, houseSeatLine, 0.1),
    listener: mixed(paper, houseSeatLine, 0.24),
    listenerHead: mixed(paper, houseSeatLine, 0.38),
  };
}

/** Whether ink is brighter than paper. */
export function isDark({ paper, ink }: Palette): boolean {
  return brightness(ink) > brightness(paper);
}

type OfGround =
  | 'coat'
  | 'trousers'
  | 'shoe'
  | 'hair'
  | 'skin'
  | 'desk'
  | 'page'
  | 'print'
  | 'keys'
  | 'platformShade'
  | 'riserShade'
  | 'outline'
  | 'crease';

function onLight({
  paper,
  ink,
  player,
  playerHead,
  page,
  desk,
  platform,
  riser,
}: Palette): Pick<Tints, OfGround> {
  return {
    coat: player,
    trousers: mixed(player, playerHead, 0.6),
    shoe: mixed(playerHead, ink, 0.4),
    hair: playerHead,
    skin: mixed(player, page, 0.6),
    desk,
    page,
    print: mixed(page, ink, 0.55),
    keys: page,
    platformShade: mixed(platform, ink, 0.12),
    riserShade: mixed(riser, ink, 0.12),
    outline: mixed(ink, paper, 0.12),
    crease: mixed(ink, paper, 0.5),
  };
}

/** What is bright in a lit hall is bright here too: faces before hair, pages before desks. */
function onDark({
  paper,
  ink,
  player,
  playerHead,
  page,
  desk,
  platform,
  riser,
}: Palette): Pick<Tints, OfGround> {
  const bright = mixed(page, ink, 0.65);
  return {
    coat: mixed(player, playerHead, 0.12),
    trousers: mixed(player, paper, 0.35),
    shoe: mixed(player, paper, 0.7),
    hair: mixed(player, paper, 0.45),
    skin: mixed(playerHead, paper, 0.22),
    desk: mixed(desk, paper, 0.62),
    page: bright,
    print: mixed(bright, paper, 0.7),
    keys: bright,
    platformShade: mixed(platform, paper, 0.45),
    riserShade: mixed(riser, paper, 0.4),
    outline: mixed(ink, paper, 0.3),
    crease: mixed(ink, paper, 0.62),
  };
}
