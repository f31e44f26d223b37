import { allLegNotes } from '../../../shared-types/all-leg-notes.ts';
import type { Comparison } from '../../../shared-types/comparison.ts';
import { hubCostLines, roadLines } from '../ride-lines.ts';
import type { Section } from './content.ts';

/** What each scenario costs on the road, what a hub really costs, and what to know of the legs before trusting their sun. */
export function roadSection(comparison: Comparison): Section {
  const items = [
    ...roadLines(comparison),
    ...hubCostLines(comparison),
    ...allLegNotes(comparison.scenarios[0]?.legs ?? []),
  ];
  return { heading: 'On the road', blocks: [{ as: 'list', title: null, look: 'plain', items }] };
}
