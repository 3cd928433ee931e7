/** Pages of parts as pictures, each drawn once: by the PDF worker, one after the other, the newest wish first. */

import type { Handle } from '#contract/contract.ts';
import type { PdfPages } from '../music/pdf-pages.ts';

/** Null: it cannot be drawn. */
export type PagePicture = HTMLCanvasElement | null;

interface Wish {
  readonly key: string;
  readonly handle: Handle;
  /** From 1. */
  readonly page: number;
  readonly width: number;
}

export interface Surroundings {
  /** Opens a PDF; null: it cannot be shown. */
  readonly open: (handle: Handle) => Promise<PdfPages | null>;
  readonly canvas: () => HTMLCanvasElement;
  /** A picture is there, or is known not to come. */
  readonly arrived: () => void;
}

/** Some 3 MB each. */
const MOST_PICTURES = 16;
/** Older wishes are of sheets that were turned over meanwhile, and come again with them. */
const MOST_WISHES = 4;
/** A little room changes nothing, so that a window that is being resized draws nothing anew. */
const STEP = 128;
const WIDEST = 2048;

export class PagePictures {
  readonly #surroundings: Surroundings;
  readonly #opened = new Map<Handle, Promise<PdfPages | null>>();
  /** The one that was wanted last at the end. */
  readonly #drawn = new Map<string, PagePicture>();
  #wishes: readonly Wish[] = [];
  #busy = false;
  #closed = false;

  constructor(surroundings: Surroundings) {
    this.#surroundings = surroundings;
  }

  /** Undefined: it is on its way, and `arrived` is called. `width`: in the pixels of the canvas that it is painted on. */
  of(handle: Handle, page: number, width: number): PagePicture | undefined {
    const wanted = Math.min(WIDEST, Math.ceil(width / STEP) * STEP);
    const key = `${handle} ${page} ${wanted}`;
    const picture = this.#drawn.get(key);
    if (picture === undefined) this.#wish({ key, handle, page, width: wanted });
    else this.#keep(key, picture);
    return picture;
  }

  close(): void {
    this.#closed = true;
    this.#wishes = [];
    this.#drawn.clear();
    for (const opening of this.#opened.values()) void opening.then((pages) => pages?.close());
    this.#opened.clear();
  }

  #wish(wish: Wish): void {
    if (this.#closed) return;
    const others = this.#wishes.filter(({ key }) => key !== wish.key);
    this.#wishes = [...others, wish].slice(-MOST_WISHES);
    if (this.#busy) return;
    this.#busy = true;
    void this.#fulfil();
  }

  async #fulfil(): Promise<void> {
    for (let wish = this.#wishes.at(-1); wish; wish = this.#wishes.at(-1)) {
      const { key } = wish;
      const picture = await this.#draw(wish);
      this.#wishes = this.#wishes.filter((other) => other.key !== key);
      if (this.#closed) break;
      this.#keep(key, picture);
      this.#surroundings.arrived();
    }
    this.#busy = false;
  }

  async #draw({ handle, page, width }: Wish): Promise<PagePicture> {
    const opening = this.#opened.get(handle) ?? this.#surroundings.open(handle);
    this.#opened.set(handle, opening);
    const pages = await opening;
    if (!pages || this.#closed) return null;
    const canvas = this.#surroundings.canvas();
    return (await pages.draw(page, canvas, width)) ? canvas : null;
  }

  #keep(key: string, picture: PagePicture): void {
    this.#drawn.delete(key);
    this.#drawn.set(key, picture);
    const [oldest] = this.#drawn.keys();
    if (this.#drawn.size > MOST_PICTURES && oldest !== undefined) this.#drawn.delete(oldest);
  }
}
