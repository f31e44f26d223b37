import { allAssumptions, type UsedAssumption } from '../../../shared-types/all-assumptions.ts';
import { wordsLocale } from '../../../shared-types/figures.ts';
import { flipsText, labelOf } from '../../../shared-types/swing-words.ts';
import type { Swing, SwingEnd, Swings } from '../../../shared-types/swings.ts';
import { hasSwings, type SheetMatter } from '../matter.ts';
import { rounded, shareDecimals, tidyTable, yesNo, type TidyColumns, type TidyTable } from './tidy-table.ts';

const assumptionColumns: TidyColumns<UsedAssumption> = {
  assumption: ({ name }) => name,
  value: ({ value }) => value,
  basis: ({ basis }) => basis,
  source: ({ source }) => source,
  used_by: ({ usedBy }) => (usedBy === null ? 'all' : usedBy.join('; ')),
};

/** A line for each figure that the answer rests on. */
export function assumptionTable({ comparison }: SheetMatter): TidyTable {
  return tidyTable(assumptionColumns, allAssumptions(comparison));
}

interface Swung {
  readonly swings: Swings;
  readonly swing: Swing;
}

function leader(swings: Swings, { leaderId }: SwingEnd): string | null {
  return leaderId === null ? null : labelOf(swings, leaderId);
}

/** Values as `scale` has them: a factor on the plan, luck from -1 to 1, days, a share, a number. */
const swingColumns: TidyColumns<Swung> = {
  assumption: ({ swing }) => swing.name,
  scale: ({ swing }) => swing.scale,
  low: ({ swing }) => rounded(swing.low.value, shareDecimals),
  planned: ({ swing }) => (swing.base === null ? null : rounded(swing.base, shareDecimals)),
  high: ({ swing }) => rounded(swing.high.value, shareDecimals),
  lead_of: ({ swings }) => labelOf(swings, swings.firstId),
  lead_over: ({ swings }) => labelOf(swings, swings.secondId),
  lead_points_planned: ({ swings }) => rounded(swings.leadPoints, shareDecimals),
  lead_points_low: ({ swing }) => rounded(swing.low.leadPoints, shareDecimals),
  lead_points_high: ({ swing }) => rounded(swing.high.leadPoints, shareDecimals),
  first_at_low: ({ swings, swing }) => leader(swings, swing.low),
  first_at_high: ({ swings, swing }) => leader(swings, swing.high),
  changes_sign: ({ swing }) => yesNo(swing.changesSign),
  flip_below: ({ swing }) => flipAt(swing, 'below'),
  flip_above: ({ swing }) => flipAt(swing, 'above'),
  flips: ({ swings, swing }) => flipsText(swings, swing, wordsLocale),
  source: ({ swing }) => swing.source,
};

function flipAt({ flips }: Swing, at: Swing['flips'][number]['side']) {
  const flip = flips.find(({ side }) => side === at);
  return flip === undefined ? null : rounded(flip.value, shareDecimals);
}

/** A line for each assumption that was moved; none where there is nothing that could change. */
export function swingTable({ swings }: SheetMatter): TidyTable {
  const rows = hasSwings(swings) ? swings.swings.map((swing): Swung => ({ swings, swing })) : [];
  return tidyTable(swingColumns, rows);
}
