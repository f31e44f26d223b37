import type { Comparison } from '../../shared-types/comparison.ts';
import { marginFigure } from '../../shared-types/figures.ts';

/** The energy margins before and after, scenario by scenario, in a sentence. */
export function marginChanges(before: Comparison, after: Comparison, locale?: string): string {
  if (before.tour.id !== after.tour.id) return 'Another tour is compared now.';
  const parts = after.scenarios.flatMap(({ id, label, margin }) => {
    const former = before.scenarios.find((each) => each.id === id);
    if (former === undefined) return [];
    const [was, is] = [marginFigure(former.margin, locale), marginFigure(margin, locale)];
    return [was === is ? `${label} ${is} as before` : `${label} ${was} before, ${is} now`];
  });
  return parts.length === 0 ? 'No scenario was compared before.' : `Energy margins: ${parts.join('; ')}.`;
}
