import { wordsLocale } from '../../../shared-types/figures.ts';

/** A label as it stands in a sentence: it may hold commas of its own. */
export function quoted(label: string): string {
  return `‘${label}’`;
}

/** `‘Phone’`, `2 × ‘Camera’`: each name once, in the order of their first mention. */
export function namesOf(labels: readonly string[]): readonly string[] {
  return [...new Set(labels)].map((label) => {
    const times = labels.filter((other) => other === label).length;
    return times === 1 ? quoted(label) : `${times} × ${quoted(label)}`;
  });
}

export function inList(parts: readonly string[]): string {
  return new Intl.ListFormat(wordsLocale, { type: 'conjunction' }).format(parts);
}
