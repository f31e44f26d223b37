/** Steps as they would be typed: with plain blanks in place of those that keep figure and unit together. */
export function plain(steps: readonly string[]): readonly string[] {
  return steps.map((step) => step.replaceAll(/[\u00a0\u202f]/g, ' '));
}
