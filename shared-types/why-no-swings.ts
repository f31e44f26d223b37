import type { Comparison } from './comparison.ts';

/** Why the answer has nothing that could change; null when it has. */
export function whyNoSwings({ scores }: Pick<Comparison, 'scores'>): string | null {
  if (scores.length < 2) return 'With one scenario there is no order to change: compare two or more.';
  const noneLeft = scores.every(({ excludedBy }) => excludedBy.length > 0);
  return noneLeft ? 'Your limits leave out every scenario: there is no first place to lose.' : null;
}
