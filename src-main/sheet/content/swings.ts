import { formatNumber, wordsLocale } from '../../../shared-types/figures.ts';
import { flipsText, labelOf, plannedText, swingValueText } from '../../../shared-types/swing-words.ts';
import { swingsFinding } from '../../../shared-types/swings-finding.ts';
import type { Swing, Swings } from '../../../shared-types/swings.ts';
import { leadDrawing, leadRange } from '../figures/lead.ts';
import { hasSwings, type SheetMatter } from '../matter.ts';
import { cell, paragraph, type Column, type Row, type Section } from './content.ts';

/** Every assumption moved alone: by how much the lead swings, and where the first gives up its place. */
export function swingsSection({ swings }: Pick<SheetMatter, 'swings'>): Section {
  const heading = 'What would change the answer';
  if (!hasSwings(swings)) return { heading, blocks: [paragraph(swings.why)] };
  const range = leadRange(swings);
  return {
    heading,
    blocks: [
      paragraph(`${swingsFinding(swings, wordsLocale)}.`),
      {
        as: 'table',
        title: null,
        size: 'reading',
        columns,
        rows: swings.swings.map((swing) => row(swings, swing, range)),
      },
      paragraph(`${leadText(swings)}${leftOutText(swings)}`, 'quiet'),
      paragraph(
        'Pale bar: at its low; solid: at its high. The line is where first and second change places by score, the dots the plan.',
        'drawings',
      ),
    ],
  };
}

function leadText(swings: Swings): string {
  const [first, second] = [swings.firstId, swings.secondId].map((id) => labelOf(swings, id));
  return `Each is moved alone from its low to its high, everything else as planned. Lead: of ${first} over ${second}.`;
}

function leftOutText({ leftOut }: Swings): string {
  const texts = leftOut.map(({ name, why }) => `${name}: ${why}`);
  return texts.length === 0 ? '' : ` Not moved, since nothing here rests on it: ${texts.join('; ')}.`;
}

const columns: readonly Column[] = [
  { head: 'Assumption', align: 'left', width: 19 },
  { head: 'Low to high', align: 'left', width: 22 },
  { head: 'Lead, points of 100', align: 'left', width: 17 },
  { head: '', align: 'left', width: 18 },
  { head: 'The first gives up its place', align: 'left', width: 27 },
  { head: 'Range from', align: 'left', width: 23 },
];

function row(swings: Swings, swing: Swing, range: readonly [number, number]): Row {
  const { name, scale, low, high, source, flips } = swing;
  const value = (at: number): string => swingValueText(scale, at, wordsLocale);
  const points = (at: number): string => formatNumber(at, { digits: 0, signed: true, locale: wordsLocale });
  const because = flips.flatMap((flip) => (flip.because === null ? [] : [`since ${flip.because}`]));
  const planned = plannedText(swing, wordsLocale);
  return {
    method: null,
    cells: [
      cell(name),
      cell(
        `${value(low.value)} to ${value(high.value)}${planned === 'as planned' ? '' : `, planned ${planned}`}`,
      ),
      cell(`${points(low.leadPoints)} to ${points(high.leadPoints)}`),
      { ...cell(''), drawn: leadDrawing(swing, swings.leadPoints, range) },
      cell(flipsText(swings, swing, wordsLocale), because),
      cell('', [source]),
    ],
  };
}
