/** The part of fontkit that is used here. */
declare module 'fontkit' {
  export interface GlyphRun {
    /** In font units. */
    readonly advanceWidth: number;
  }

  export interface Font {
    readonly unitsPerEm: number;
    readonly postscriptName: string;
    hasGlyphForCodePoint(codePoint: number): boolean;
    layout(text: string): GlyphRun;
  }

  export function create(data: Uint8Array): Font;
}
