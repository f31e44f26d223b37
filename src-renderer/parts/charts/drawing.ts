import type { ChartConfiguration } from 'chart.js';
import type { Palette } from './palette.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Bars and lines, by category or along a measured axis. */
export type Drawing = ChartConfiguration<'bar' | 'line', (number | null)[] | Point[], string>;

export type Series = Drawing['data']['datasets'][number];

export type Draw = (palette: Palette) => Drawing;
