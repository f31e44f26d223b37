import type { LegYield } from './comparison.ts';

/** The notes of all legs, each once, after the names of the legs it is about. */
export function allLegNotes(legs: readonly Pick<LegYield, 'leg' | 'notes'>[]): readonly string[] {
  const about = new Map<string, Set<string>>();
  for (const { leg, notes } of legs) {
    for (const note of notes) about.set(note, (about.get(note) ?? new Set()).add(leg));
  }
  return [...about].map(([note, names]) => `${[...names].join(', ')}: ${note}`);
}
