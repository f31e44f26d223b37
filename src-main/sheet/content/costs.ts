import type { Comparison } from '../../../shared-types/comparison.ts';
import { amountLines, paidNightLines, resaleLines } from '../../../shared-types/cost-words.ts';
import { wordsLocale } from '../../../shared-types/figures.ts';
import { cell, paragraph, type Cell, type Column, type Section } from './content.ts';

function stacked([text = '', ...under]: readonly string[]): Cell {
  return cell(text, under);
}

const meaning =
  'A tour-day: price less resale of all that is carried, owned or not, spread over its life and your touring days a year. Nights that need a wall: so many of this tour, for the plan to be carried.';

/** What each scenario costs, now and over its life. */
export function costSection({ scenarios, currency }: Comparison): Section {
  const figure = (head: string): Column => ({ head, align: 'right', width: 14 });
  const inCurrency = (head: string): Column => figure(`${head}, ${currency}`);
  return {
    heading: 'What each scenario costs',
    blocks: [
      {
        as: 'table',
        title: null,
        size: 'reading',
        columns: [
          { head: 'Scenario', align: 'left', width: 30 },
          ...['To buy', 'Of it wheel building', 'A tour-day over its life', 'Resale in the end'].map(
            inCurrency,
          ),
          { ...figure('Nights that need a wall'), width: 20 },
        ],
        rows: scenarios.map(({ label, method, cost }) => ({
          method,
          cells: [
            cell(label),
            stacked(amountLines(cost.toBuy, cost.notConverted, wordsLocale)),
            stacked(amountLines(cost.building, cost.apart.building, wordsLocale)),
            stacked(amountLines(cost.perTourDay, cost.apart.perTourDay, wordsLocale)),
            stacked(resaleLines(cost.resale, cost.apart.resale, wordsLocale)),
            cell(paidNightLines(cost.paidNights, wordsLocale).join(', ')),
          ],
        })),
      },
      paragraph(meaning, 'quiet'),
    ],
  };
}
