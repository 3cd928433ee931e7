/** Colours. `print` is for paper; `light` and `dark` are the same drawing on a screen. */

export interface Palette {
  readonly paper: string;
  /** Main lines and text. */
  readonly ink: string;
  /** Secondary lines and text; still readable. */
  readonly faint: string;
  /** Grid and rules of tables; never text. */
  readonly hairline: string;
  readonly platform: string;
  readonly riser: string;
  /** Hatching of what belongs to the building. */
  readonly building: string;
  readonly houseSeat: string;
  readonly houseSeatLine: string;
  readonly player: string;
  readonly playerHead: string;
  readonly chair: string;
  readonly desk: string;
  readonly page: string;
  readonly metal: string;
  readonly wood: string;
  readonly instrument: string;
  readonly lamp: string;
  readonly cable: string;
  /** Open edges and everything that somebody could come to harm at. */
  readonly warning: string;
  readonly selection: string;
  readonly reach: string;
  readonly route: string;
  /** Ground of alternate rows in tables. */
  readonly tableTint: string;
}

export type PaletteName = 'print' | 'light' | 'dark';

/** Where figures stand there is no tint: a copier that knows only black and white makes dots of it. */
const PRINT: Palette = {
  paper: '#ffffff',
  ink: '#191d22',
  faint: '#5d656d',
  hairline: '#d3d7da',
  platform: '#ffffff',
  riser: '#ffffff',
  building: '#7b828a',
  houseSeat: '#ffffff',
  houseSeatLine: '#878e95',
  player: '#cfdfe8',
  playerHead: '#2b5570',
  chair: '#ffffff',
  desk: '#434a52',
  page: '#ffffff',
  metal: '#5d656d',
  wood: '#ead3ab',
  instrument: '#b9813f',
  lamp: '#fbe9a6',
  cable: '#5d656d',
  warning: '#a8201a',
  selection: '#0a5fc2',
  reach: '#1f6f5c',
  route: '#5a4a8a',
  tableTint: '#ffffff',
};

const LIGHT: Palette = {
  ...PRINT,
  paper: '#fcfbf9',
  platform: '#f3eee4',
  riser: '#e9e2d4',
  tableTint: '#f3f2ef',
};

const DARK: Palette = {
  paper: '#15181c',
  ink: '#eceef0',
  faint: '#a3abb3',
  hairline: '#353b42',
  platform: '#23272d',
  riser: '#30353c',
  building: '#8a929a',
  houseSeat: '#1b1f24',
  houseSeatLine: '#7d868f',
  player: '#2f4a5c',
  playerHead: '#a9cfe6',
  chair: '#1b1f24',
  desk: '#b3bac1',
  // Dark enough for the lip, drawn in ink, to stand out against it.
  page: '#807c72',
  metal: '#a3abb3',
  wood: '#6a4f2a',
  instrument: '#e0ab68',
  lamp: '#7d6a1f',
  cable: '#a3abb3',
  warning: '#ff8d80',
  selection: '#6db3ff',
  reach: '#6fd0b4',
  route: '#b9a8f0',
  tableTint: '#1c2025',
};

export const PALETTES: Readonly<Record<PaletteName, Palette>> = { print: PRINT, light: LIGHT, dark: DARK };
