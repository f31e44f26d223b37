import { describe, expect, it } from 'vitest';
import { stripDrawing, type Strip } from '../../../../src-main/sheet/figures/strip.ts';
import { attributesOf, numbersOf, tagsOf } from './read-svg.ts';

const strip: Strip = {
  scale: { from: 0, to: 100 },
  limits: { satisfied: 10, unacceptable: 90, weight: 1 },
  value: 50,
  reach: null,
  method: 'hub',
};

function drawn(changes: Partial<Strip>): string {
  return stripDrawing({ ...strip, ...changes }).svg(100);
}

function names(drawing: string): readonly string[] {
  return tagsOf(drawing).map(({ name }) => name);
}

describe('stripDrawing', () => {
  it.each([Number.NaN, Infinity])('has no mark for %d, which is not known', (value) => {
    const drawing = drawn({ value, reach: 60 });
    for (const number of numbersOf(drawing)) expect(number).not.toBeNaN();
    // Axis and two limits only.
    expect(names(drawing)).toEqual(['svg', 'line', 'line', 'line']);
  });

  it('keeps what lies outside its scale at its edge', () => {
    const far = numbersOf(drawn({ value: 1e9, reach: -1e9 }));
    for (const number of far) expect(number).toBeLessThanOrEqual(100);
  });

  it('marks each method by a shape of its own, not by its colour alone', () => {
    const shapes = (['banks', 'panel', 'hub', 'mix'] as const).map((method) => {
      const { name, attributes } = tagsOf(drawn({ method })).at(-1)!;
      return `${name} ${attributes['d'] ?? ''}`;
    });
    expect(new Set(shapes).size).toBe(shapes.length);
  });

  it('draws both limits, the unacceptable one in dots, and a bar to where the value reaches', () => {
    const lines = attributesOf(drawn({ reach: 70 }), 'line');
    expect(lines).toHaveLength(4);
    // 6 % of the width at each edge: 10 of 100 stands at 6 + 0.1 × 88.
    expect([lines[1]!['x1'], lines[1]!['stroke-dasharray']]).toEqual(['14.8', undefined]);
    expect([lines[2]!['x1'], lines[2]!['stroke-dasharray']]).toEqual(['85.2', '1.2 1.2']);
    expect([lines[3]!['x1'], lines[3]!['x2']]).toEqual(['50', '67.6']);
  });
});
