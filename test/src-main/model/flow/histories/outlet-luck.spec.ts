import { describe, expect, it } from 'vitest';
import { drawOutletLuck } from '../../../../../src-main/model/flow/histories/outlet-luck.ts';
import { expectNear } from '../../../../support/near.ts';

const tour = Float64Array.of(0.2, 0.5, 0.9);

describe('drawOutletLuck()', () => {
  it('takes a tour without stops', () => {
    expect(drawOutletLuck(new Float64Array(0), 2, 1)).toEqual([new Uint8Array(0), new Uint8Array(0)]);
  });

  it('never finds an outlet that is never there, and always one that always is', () => {
    for (const [never, always] of drawOutletLuck(Float64Array.of(0, 1), 500, 1))
      expect([never, always]).toEqual([0, 1]);
  });

  it.each([0, 1, 2])('finds the outlet of stop %d as often as its chance says', (stop) => {
    const histories = 10_000;
    const free = drawOutletLuck(tour, histories, 1981).reduce((sum, luck) => sum + luck[stop]!, 0);
    const chance = tour[stop]!;
    // Four standard errors of a share of 10,000 draws: 0.012 to 0.02.
    const reach = 4 * Math.sqrt((chance * (1 - chance)) / histories);
    expectNear(free / histories, chance, reach, 'share of histories');
  });

  it('draws the stops of a tour apart', () => {
    const even = drawOutletLuck(Float64Array.of(0.5, 0.5), 10_000, 1981);
    const both = even.filter(([first, second]) => first === 1 && second === 1).length;
    // A quarter; four standard errors are 0.0173.
    expectNear(both / even.length, 0.25, 0.0173, 'share of histories with both');
  });

  it('draws the same luck again from the same seed, and other luck from another', () => {
    expect(drawOutletLuck(tour, 20, 3)).toEqual(drawOutletLuck(tour, 20, 3));
    expect(drawOutletLuck(tour, 20, 3)).not.toEqual(drawOutletLuck(tour, 20, 4));
  });

  it('leaves the first histories as they were when more are drawn', () => {
    expect(drawOutletLuck(tour, 30, 3).slice(0, 5)).toEqual(drawOutletLuck(tour, 5, 3));
  });
});
