/** As long as a label may be. */
const longestLabel = 80;
const ending = ' (copy)';

/** The label of a copy, cut where the ending would make it too long. */
export function copyLabel(label: string): string {
  return label.slice(0, longestLabel - ending.length) + ending;
}
