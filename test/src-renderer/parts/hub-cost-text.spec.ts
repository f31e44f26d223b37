import { describe, expect, it } from 'vitest';
import { hubCostFinding } from '../../../src-renderer/parts/hub-cost-text.ts';
import { hubCost } from '../support/hub-cost.ts';

const finding = (change: Parameters<typeof hubCost>[0] = {}): string =>
  hubCostFinding(hubCost(change), 'en-GB').replaceAll('\u00a0', ' ');

describe('hubCostFinding()', () => {
  it('names what is priced in another currency beside the sum', () => {
    expect(finding({ notConverted: [{ minor: 5000, currency: 'JPY' }] })).toBe(
      'The hub really costs 250 EUR and 5,000 JPY and 400 g, 300 g of these on the front wheel, net',
    );
  });

  it('gives price, grams and what turns with the wheel', () => {
    expect(finding()).toBe('The hub really costs 250 EUR and 400 g, 300 g of these on the front wheel, net');
  });
});
