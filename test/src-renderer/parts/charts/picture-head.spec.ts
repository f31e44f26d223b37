import { describe, expect, it } from 'vitest';
import type { LegendEntry } from '../../../../src-renderer/parts/charts/legend.ts';
import { marginPx, pictureHead } from '../../../../src-renderer/parts/charts/picture-head.ts';

/** As in faces of even width: 10 and 6 px a letter. */
const measure = { title: (text: string) => text.length * 10, small: (text: string) => text.length * 6 };
const entry = (label: string): LegendEntry => ({ label, colour: '--hub', mark: 'line', dash: [] });
const widthPx = 400;
const head = (title: string, subtitle: string, labels: readonly string[]) =>
  pictureHead({ title, subtitle, legend: labels.map(entry) }, widthPx, measure);

describe('pictureHead()', () => {
  it('goes on below where title and subtitle are long', () => {
    const short = head('Short', 'Short too', ['One']);
    const long = head('word '.repeat(20).trim(), 'x'.repeat(150), ['One']);
    expect([long.title.length, long.subtitle.length]).toEqual([3, 3]);
    expect(long.title.map(({ text }) => text).join(' ')).toBe('word '.repeat(20).trim());
    expect(long.subtitle[0]!.y).toBeGreaterThan(long.title[2]!.y);
    expect(long.legend[0]!.y).toBeGreaterThan(long.subtitle[2]!.y);
    expect(long.heightPx).toBeGreaterThan(short.heightPx);
  });

  it('starts a further row where the legend is full', () => {
    const { legend, heightPx } = head('Title', 'Subtitle', ['A'.repeat(30), 'B'.repeat(30), 'C']);
    expect(legend.map(({ x, y }) => [x === marginPx, y - legend[0]!.y])).toEqual([
      [true, 0],
      [true, 20],
      [false, 20],
    ]);
    expect(heightPx).toBeGreaterThan(legend[2]!.y);
  });

  it('lets no line out of the picture', () => {
    const { title, subtitle, legend } = head('T'.repeat(90), 'S'.repeat(200), ['L'.repeat(140), 'M']);
    expect(title.every(({ text }) => measure.title(text) <= widthPx)).toBe(true);
    const small = [...subtitle, ...legend.flatMap(({ label }) => label)];
    expect(small.every(({ x, text }) => x + measure.small(text) <= marginPx + widthPx)).toBe(true);
    expect(legend[0]!.label).toHaveLength(3);
    expect(legend[1]!.y).toBeGreaterThan(legend[0]!.label[2]!.y);
  });
});
