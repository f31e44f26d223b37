import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import CostSection from '../../../../src-renderer/views/trade-offs/cost-section.svelte';
import { scenarioFixture } from '../../../support/comparison-fixture.ts';

const eur = (minor: number) => ({ minor, currency: 'EUR' });
const { cost } = scenarioFixture('hub');
const { body } = render(CostSection, {
  props: {
    currency: 'EUR',
    scenarios: [
      scenarioFixture('hub', {
        cost: {
          ...cost,
          toBuy: eur(34_800),
          building: eur(14_000),
          perTourDay: eur(200),
          resale: eur(5000),
          paidNights: { nights: 2, cost: eur(6000) },
          apart: { ...cost.apart, perTourDay: [{ minor: 40, currency: 'JPY' }] },
        },
      }),
    ],
  },
});
const words = body
  .replaceAll(/<!--.*?-->|<[^>]+>/gu, ' ')
  .replaceAll(/\s+/gu, ' ')
  .trim();

describe('the section of costs', () => {
  it('names the currency in the head of each column of money', () => {
    for (const head of ['To buy', 'Of it wheel building', 'A tour-day over its life', 'Resale in the end'])
      expect(words).toContain(`${head}, EUR`);
  });

  it('stands in the order of its heads, with other currencies beneath', () => {
    expect(words).toContain('348 140 2 and 40 JPY 50 2 nights 60 EUR');
  });

  it('says what each figure means and where it is set', () => {
    expect(words).toContain('spread over its life and your touring days a year');
    expect(body).toContain('href="#/about"');
  });
});
