/** Heights of the lettering in the drawing, mm: at 1:50, where such plans are mostly printed, 2.4 and 1.8 mm. */
export const LETTERS = { mark: 120, small: 90 } as const;
