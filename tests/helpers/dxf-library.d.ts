/** The library comes without types; these are of what the tests use. */
declare module 'dxf' {
  export interface Entity {
    readonly type: string;
    readonly layer: string;
    readonly block?: string;
    readonly x?: number;
    readonly y?: number;
    readonly rotation?: number;
    readonly string?: string;
    readonly closed?: boolean;
    readonly vertices?: readonly { readonly x: number; readonly y: number }[];
    readonly transforms?: readonly { readonly x: number; readonly y: number; readonly rotation?: number }[];
  }

  interface Parsed {
    readonly header: Readonly<Record<string, unknown>>;
    readonly tables: { readonly layers: Readonly<Record<string, unknown>> };
    readonly entities: readonly Entity[];
  }

  export function parseString(text: string): Parsed;
  export class Helper {
    constructor(text: string);
    toPolylines(): { readonly polylines: readonly { readonly vertices: readonly (readonly number[])[] }[] };
  }

  export function denormalise(parsed: Parsed): readonly Entity[];
}
