import type { HubCost } from '../../../shared-types/comparison.ts';

/** A hub of 250 EUR and 400 g with its wheel and converter; round, so that a test can tell what belongs together. */
export function hubCost(change: Partial<HubCost> = {}): HubCost {
  const euros = (major: number) => ({ minor: major * 100, currency: 'EUR' });
  return {
    lines: [
      { part: 'Generator hub', price: euros(100), netG: 450 },
      { part: 'Hub that comes off', price: null, netG: -150 },
      { part: 'Labour', price: euros(60), netG: 0 },
      { part: 'Converter', price: euros(90), netG: 100 },
    ],
    total: euros(250),
    notConverted: [],
    netG: 400,
    frontWheelG: 300,
    ...change,
  };
}
