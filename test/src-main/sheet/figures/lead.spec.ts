import { describe, expect, it } from 'vitest';
import { leadDrawing, leadRange } from '../../../../src-main/sheet/figures/lead.ts';
import { swingFixture, swingsFixture, wallsFixture } from '../../../support/swings-fixture.ts';
import { attributesOf, numbersOf } from './read-svg.ts';

const end = (leadPoints: number) => ({ value: 0, leadPoints, leaderId: 'demo-panel' });

describe('leadRange', () => {
  it('is never empty', () => {
    expect(leadRange(swingsFixture({ swings: [], leadPoints: 0 }))).toEqual([-1, 1]);
  });

  it('holds every lead, that of the plan and none', () => {
    expect(leadRange(swingsFixture())).toEqual([-9, 70]);
    expect(leadRange(swingsFixture({ swings: [swingFixture()] }))).toEqual([0, 30]);
    expect(leadRange(swingsFixture({ swings: [], leadPoints: -4 }))).toEqual([-4, 0]);
  });
});

describe('leadDrawing', () => {
  it('holds numbers alone where nothing moves', () => {
    const still = swingFixture({ low: end(0), high: end(0) });
    const range = leadRange(swingsFixture({ swings: [still], leadPoints: 0 }));
    for (const value of numbersOf(leadDrawing(still, 0, range).svg(60))) expect(value).not.toBeNaN();
  });

  it('reaches from the plan’s lead to both ends, whichever side they lie on', () => {
    // 79 points on 85 pt less 3 at each edge: a point of a hundred is a point of the drawing.
    const drawing = leadDrawing(wallsFixture, 30, [-9, 70]).svg(85);
    const [high, low] = attributesOf(drawing, 'rect');
    expect([high!['x'], high!['width']]).toEqual(['42', '40']);
    expect([low!['x'], low!['width']]).toEqual(['3', '39']);
    const [zero, plan] = attributesOf(drawing, 'line');
    expect([zero!['x1'], plan!['x1']]).toEqual(['12', '42']);
  });

  it('shows both ends where they lie on the same side', () => {
    const both = swingFixture({ low: end(10), high: end(20) });
    const widths = attributesOf(leadDrawing(both, 0, [0, 30]).svg(36), 'rect').map(({ width }) => width);
    expect(widths).toEqual(['20', '10', '10']);
  });
});
