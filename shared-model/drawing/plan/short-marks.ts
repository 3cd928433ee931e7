/** The marks of plots and tables: the lists of a changeover, which are no drawing, have the same. */

export { letterKey, shortMarks } from '../../document/short-marks.ts';
