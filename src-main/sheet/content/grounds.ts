import { allAssumptions, basisWords } from '../../../shared-types/all-assumptions.ts';
import type { Comparison } from '../../../shared-types/comparison.ts';
import type { Section } from './content.ts';

/** What can hurt or fail. */
export function cautionSection({ cautions }: Comparison): Section {
  return { heading: 'Cautions', blocks: [{ as: 'list', title: null, look: 'caution', items: cautions }] };
}

/** The figures the answer rests on, each with where it comes from, and with whose it is where not all scenarios rest on it. */
export function assumptionSection(comparison: Comparison): Section {
  const items = allAssumptions(comparison).map(({ name, value, basis, source, usedBy }) => {
    const whose = usedBy === null ? '' : `; ${usedBy.join(', ')}`;
    return `${name}: ${value} (${basisWords[basis].toLowerCase()}: ${source}${whose})`;
  });
  return { heading: 'Assumptions', blocks: [{ as: 'list', title: null, look: 'reference', items }] };
}
