import { describe, expect, it } from 'vitest';
import { area, bar, course, disc, frame, line, svg, text } from '../../../../src-main/sheet/figures/svg.ts';
import { tagsOf, textsIn } from './read-svg.ts';

const stroke = { colour: '#123456', widthPt: 0.5 };

describe('a drawing’s text', () => {
  it.each(['A & B', '<script>alert(1)</script>', '"x" onload=\'y\'', ']]>', '&lt;', '電池 Łódź'])(
    'stays text: %s',
    (words) => {
      const drawn = svg(10, 10, [text(1, 2, words, { sizePt: 6, colour: '#000000' })]);
      expect(textsIn(drawn)).toEqual([words]);
      expect(tagsOf(drawn).map(({ name }) => name)).toEqual(['svg', 'text']);
    },
  );
});

describe('marks', () => {
  it('are rounded to a hundredth of a point', () => {
    expect(line(1 / 3, 0, 2 / 3, 1e-9, stroke)).toContain('x1="0.33" y1="0" x2="0.67" y2="0"');
  });

  it('are dashed only when they are asked to be', () => {
    expect(line(0, 0, 1, 1, stroke)).not.toContain('dasharray');
    expect(line(0, 0, 1, 1, { ...stroke, dash: [1.5, 2] })).toContain('stroke-dasharray="1.5 2"');
  });

  it('are well-formed together, each with its own element', () => {
    const points = [
      [0, 0],
      [1, 2],
    ] as const;
    const marks = [
      line(0, 0, 1, 1, stroke),
      bar(0, 0, 1, 1, '#000000', 0.5),
      frame(0, 0, 1, 1, stroke),
      course(points, stroke),
      area(points, '#000000'),
      disc(1, 1, 1, '#000000'),
    ];
    expect(tagsOf(svg(10, 20, marks)).map(({ name }) => name)).toEqual([
      ...['svg', 'line', 'rect', 'rect', 'path', 'path', 'circle'],
    ]);
    expect(svg(10, 20, [])).toContain('width="10" height="20" viewBox="0 0 10 20"');
    expect(course(points, stroke)).toContain('d="M0 0 L1 2"');
    expect(area(points, '#000000')).toContain('d="M0 0 L1 2 Z"');
  });
});
