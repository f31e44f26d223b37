import type { Column, Content } from 'pdfmake/interfaces';
import { allAssumptions, basisWords } from '../../../shared-types/all-assumptions.ts';
import { allLegNotes } from '../../../shared-types/all-leg-notes.ts';
import type { Assumption, Comparison } from '../../../shared-types/comparison.ts';
import { bar, bare, barColumnWidthPt, ink, riderText, section, size } from './look.ts';

const columnGapPt = 14;
const mostAssumptionsKept = 40;
const mostCautionsKept = 12;
const mostNotesKept = 12;

function assumptionLine({ name, value, basis, source }: Assumption): Content {
  return {
    text: [
      riderText(`${name} `),
      riderText(value, { bold: true }),
      riderText(` (${basisWords[basis].toLowerCase()}; ${source})`, { color: ink.quiet }),
    ],
    margin: [0, 0, 0, 1],
  };
}

function half(assumptions: readonly Assumption[]): Column {
  return { stack: assumptions.map(assumptionLine), width: '*' };
}

/** The figures the answer rests on, each with where it comes from. */
export function assumptionList(comparison: Comparison): Content {
  const all = allAssumptions(comparison);
  const middle = Math.ceil(all.length / 2);
  const columns: Content = {
    columns: [half(all.slice(0, middle)), half(all.slice(middle))],
    columnGap: columnGapPt,
    fontSize: size.caution,
  };
  return section('Assumptions', columns, all.length <= mostAssumptionsKept);
}

/** What to know of the legs before trusting their sun: one for all scenarios, nothing where there is nothing to say. */
export function legNoteList({ scenarios }: Comparison): Content[] {
  const notes = allLegNotes(scenarios[0]?.legs ?? []);
  if (notes.length === 0) return [];
  const texts = notes.map((note) => riderText(note, { margin: [0, 0, 0, 1] }));
  return [section('On the legs', { stack: texts, fontSize: size.fine }, notes.length <= mostNotesKept)];
}

/** What can hurt or fail, an ochre bar down the side as on screen. */
export function cautionList({ cautions }: Comparison): Content {
  const texts = cautions.map((caution) => riderText(caution, { margin: [0, 0, 0, 1] }));
  const inside: Content = { stack: texts, fontSize: size.caution, margin: [6, 0, 0, 0] };
  const table: Content = {
    table: { widths: [barColumnWidthPt, '*'], body: [[bar(ink.accent), inside]] },
    layout: bare,
  };
  return section('Cautions', table, cautions.length <= mostCautionsKept);
}
