import type { Lying } from '../../../../shared-types/leg-sun.ts';
import type { Scenario } from '../../../../shared-types/scenario.ts';

/** One way for the panels to lie, as a chooser offers it. */
export interface LyingOption {
  readonly key: string;
  readonly words: string;
  readonly lying: Lying;
}

export function lyingKey(lying: Lying): string {
  return lying.as === 'scenario' ? `scenario ${lying.scenarioId}` : lying.as;
}

export function lyingOptions(scenarios: readonly Pick<Scenario, 'id' | 'label'>[]): readonly LyingOption[] {
  const open = [
    { words: 'Flat all day', lying: { as: 'flat' } },
    { words: 'Aimed all day', lying: { as: 'aimed' } },
  ] as const;
  const placed = scenarios.map(({ id, label }) => ({
    words: `As in ${label}`,
    lying: { as: 'scenario', scenarioId: id } as const,
  }));
  return [...open, ...placed].map((each) => ({ ...each, key: lyingKey(each.lying) }));
}

/** The words of one way to lie, inside a sentence. */
export function lyingWords(lying: Lying, options: readonly LyingOption[]): string {
  const words = options.find(({ key }) => key === lyingKey(lying))?.words ?? '';
  return words.charAt(0).toLowerCase() + words.slice(1);
}
