import { describe, it } from 'vitest';
import { annuityFactor, equivalentAnnualCost } from '../../src-main/model/judge/annual-cost.ts';
import { expectNear } from '../support/near.ts';

/*
 * Equivalent annual cost EAC = I / A(n, r) + m, as an encyclopedia's article of that name works it: two investments at 5 %
 * (copy at liquisearch.com/equivalent_annual_cost/a_practical_example). Printed: annuity factors 2.723 and 6.463, annual costs
 * 31,360 and 30,708. Another copy prints 30,780 for the second, which its own factors do not give: a slip.
 */
const rate = 0.05;
const examples = [
  { name: 'A', price: 50_000, years: 3, upkeep: 13_000, factor: 2.723, annual: 31_360 },
  { name: 'B', price: 150_000, years: 8, upkeep: 7500, factor: 6.463, annual: 30_708 },
] as const;

describe.each(examples)(
  'investment $name of the worked example',
  ({ price, years, upkeep, factor, annual }) => {
    // Printed with three decimals, cut or rounded.
    it('has the printed annuity factor', () =>
      expectNear(annuityFactor(rate, years), factor, 1e-3, 'factor'));

    it('has the printed annual cost', () => {
      // Printed in whole units of money.
      const got = equivalentAnnualCost({ price, resale: 0, years }, rate) + upkeep;
      expectNear(got, annual, 0.5, 'annual cost');
    });
  },
);

/*
 * Two machines at 14 % that bring in a fixed sum a year, in an open corporate finance textbook
 * (pressbooks.pub/tourocorporatefinance, chapter 2.17). Printed: factors 2.3216 and 3.8887; net present values 11,979 and 22,259
 * and equivalent annuities 5,159.89 and 5,724.07, both from the rounded factors.
 */
const textbookRate = 0.14;
const machines = [
  { income: 87_000, price: 190_000, years: 3, factor: 2.3216, value: 11_979, annuity: 5159.89 },
  { income: 98_300, price: 360_000, years: 6, factor: 3.8887, value: 22_259, annuity: 5724.07 },
] as const;

describe.each(machines)('the textbook machine of $years years', (machine) => {
  const { income, price, years, factor, value, annuity } = machine;
  // Half a unit of the last printed place.
  const factorOff = 0.5e-4;

  it('has the printed annuity factor', () => {
    expectNear(annuityFactor(textbookRate, years), factor, factorOff, 'factor');
  });

  it('leaves the printed equivalent annuity', () => {
    // A factor off by half its last place moves the present value by `income` times as much; it is then spread over the factor.
    const slack = (income * factorOff + (value / factor) * factorOff + 0.5) / factor;
    const got = income - equivalentAnnualCost({ price, resale: 0, years }, textbookRate);
    expectNear(got, annuity, slack, 'annuity');
  });
});

/*
 * Furniture bought and sold again, in a textbook of engineering economics, chapter "Annual cash flow analysis", Example 6-2 and
 * page 180 (a copy of the page at issuhub.com/view/index?id=4775&pageIndex=202): 1000 now, 200 back after ten years, 7 %. Printed:
 * (1000 - 200) x 0.1424 + 200 x 0.07 = 127.92.
 */
describe('the furniture of the textbook, sold for what is left of it', () => {
  it('has the printed annual cost', () => {
    // The printed factor is good to half its last place, which counts 800-fold; the sum to half a cent.
    const slack = 800 * 0.5e-4 + 0.005;
    const got = equivalentAnnualCost({ price: 1000, resale: 200, years: 10 }, 0.07);
    expectNear(got, 127.92, slack, 'annual cost');
  });
});
