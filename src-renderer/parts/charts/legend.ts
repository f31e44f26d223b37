/** One entry of a chart's legend; `colour` names a custom property. */
export interface LegendEntry {
  readonly label: string;
  readonly colour: string;
  readonly mark: 'line' | 'bar' | 'point';
  readonly dash: readonly number[];
}
