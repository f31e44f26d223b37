import { describe, expect, it } from 'vitest';
import { hubCostOf, type HubPart } from '../../../../src-main/model/judge/hub-cost.ts';

const part = (name: string, minor: number | null, netG: number, currency = 'EUR'): HubPart => ({
  part: name,
  price: minor === null ? null : { minor, currency },
  netG,
  frontWheelShare: 1,
});

describe('hubCostOf()', () => {
  it('comes to nothing without parts', () => {
    expect(hubCostOf([], 'EUR')).toEqual({
      lines: [],
      total: { minor: 0, currency: 'EUR' },
      notConverted: [],
      netG: 0,
      frontWheelG: 0,
    });
  });

  it('adds up prices, and grams net of what comes off', () => {
    const cost = hubCostOf(
      [part('Hub', 11_000, 460), part('Old hub', null, -150), part('Labour', 6000, 0)],
      'EUR',
    );
    expect(cost).toMatchObject({ total: { minor: 17_000 }, netG: 310, frontWheelG: 310 });
    expect(cost.lines.map(({ part: name }) => name)).toEqual(['Hub', 'Old hub', 'Labour']);
  });

  it('counts on the front wheel only the share that rides there', () => {
    const converter = { ...part('Converter', 8600, 90), frontWheelShare: 0.8 };
    expect(hubCostOf([converter], 'EUR').frontWheelG).toBe(72);
  });

  it('leaves out a part that neither costs nor weighs', () => {
    expect(hubCostOf([part('Rim', 0, 0), part('Old rim', null, 0)], 'EUR').lines).toEqual([]);
  });

  it('names a price in another currency apart', () => {
    const cost = hubCostOf([part('Hub', 100, 1), part('Labour', 900, 0, 'JPY')], 'EUR');
    expect(cost.total.minor).toBe(100);
    expect(cost.notConverted).toEqual([{ minor: 900, currency: 'JPY' }]);
  });
});
