import type { BarLook } from './bar-looks.ts';

/** One entry of a chart's legend; `colour` names a custom property. */
export interface LegendEntry {
  readonly label: string;
  readonly colour: string;
  readonly mark: 'line' | 'bar' | 'point';
  readonly dash: readonly number[];
  /** How a bar is filled and edged; a plain one where left out. */
  readonly bar?: BarLook;
}
