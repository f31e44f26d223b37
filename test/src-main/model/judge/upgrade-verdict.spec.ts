import { describe, expect, it } from 'vitest';
import { verdictOf, type Weighed } from '../../../../src-main/model/judge/upgrade-verdict.ts';
import { eur, jpy } from '../../../support/priced-line.ts';
import { upgradeOnTour } from '../../../support/upgrade-fixture.ts';

const money = {
  toBuy: eur(8400),
  resale: eur(0),
  net: eur(8400),
  resaleUnknown: [],
  apart: { toBuy: [], resale: [] },
};
const weighed = (changes: Partial<Weighed> = {}): Weighed => ({
  money,
  grams: { before: 900, after: 1300 },
  frontWheelGrams: { before: 40, after: 40 },
  tours: [upgradeOnTour('Alps'), upgradeOnTour('Coast')],
  ...changes,
});
const effects = (...all: readonly ('helps' | 'not-enough' | 'no-odds' | 'hurts' | 'not-known')[]) =>
  weighed({ tours: all.map((effect, at) => upgradeOnTour(['Alps', 'Coast', 'Plain'][at]!, { effect })) });

describe('the verdict on a change', () => {
  it.each([
    ['No verdict', effects('not-known', 'not-known')],
    ['Not for this tour', effects('hurts')],
    ['Not for these tours', effects('not-enough', 'no-odds')],
    ['Only for Alps', effects('helps', 'hurts')],
    ['Only for Alps and Coast', effects('helps', 'helps', 'not-known')],
    ['Worth it', effects('helps', 'helps')],
  ])('is "%s"', (heading, of) => {
    expect(verdictOf(of).heading).toBe(heading);
  });

  it('rests on cost, grams and tours', () => {
    expect(verdictOf(effects('helps', 'not-enough', 'hurts')).why).toBe(
      'It costs 84\u00a0EUR and adds 400\u00a0g, none on the front wheel. On Alps it helps; on Coast it is better but the plan is still not carried; on Plain it leaves you worse off.',
    );
  });

  it('does not name the only tour', () => {
    expect(verdictOf(effects('helps')).why).toMatch(/On this tour it helps\.$/);
  });

  it('tells what is saved, taken off and not converted', () => {
    const why = verdictOf(
      weighed({
        money: { ...money, net: eur(-500), apart: { toBuy: [jpy(900)], resale: [] } },
        grams: { before: 900, after: 800 },
        frontWheelGrams: { before: 40, after: 10 },
      }),
    ).why;
    expect(why).toMatch(
      /^It saves 5\u00a0EUR \(and 900\u00a0JPY, not converted\) and takes off 100\u00a0g, −30\u00a0g on/,
    );
  });

  it('never calls free what is paid in another currency', () => {
    const apart = { toBuy: [jpy(900)], resale: [] };
    const { why } = verdictOf(weighed({ money: { ...money, net: eur(0), apart } }));
    expect(why).toMatch(/^It costs 900\u00a0JPY, not converted, and adds 400/);
  });

  it('tells of a change that costs and weighs nothing', () => {
    const why = verdictOf(
      weighed({ money: { ...money, net: eur(0) }, grams: { before: 900, after: 900 } }),
    ).why;
    expect(why).toMatch(/^It costs nothing and weighs as much as before, none on the front wheel\./);
  });
});
