import { program, type SheetMatter } from './matter.ts';

/** Says what the file is, so that a program (and this one, asked to take it in) knows it at once. */
export const sheetFormat = 'chargewright-comparison';
/** Raised when a reader of the last version would misread a file of this one. */
const sheetFormatVersion = 1;

/**
 * The comparison whole, with what it was made from: figures unrounded, amounts of money in minor units, shares of 1, energy in
 * Wh. A figure that is not known is null.
 */
export function comparisonJson({ comparison, swings, inputs, stamp }: SheetMatter): string {
  const { madeOn, version } = stamp;
  const whole = {
    format: sheetFormat,
    formatVersion: sheetFormatVersion,
    program: `${program} ${version}`,
    madeOn,
    comparison,
    swings,
    inputs,
  };
  return `${JSON.stringify(whole, null, 1)}\n`;
}
