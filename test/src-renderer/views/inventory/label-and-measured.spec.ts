import { describe, expect, it } from 'vitest';
import type { Item } from '../../../../shared-types/item.ts';
import { usualItem } from '../../../../shared-types/usual-item.ts';
import { labelAndMeasured } from '../../../../src-renderer/views/inventory/label-and-measured.ts';

const facts = (item: object): readonly string[] | undefined =>
  labelAndMeasured({ id: 'a', ...item } as Item, 'en-GB')?.map(({ name, value }) =>
    `${name}: ${value}`.replaceAll(/\s/g, ' '),
  );

const on = '2026-03-14';

describe('labelAndMeasured()', () => {
  it('has nothing to say of a kind that is not measured', () => {
    expect(facts(usualItem('device', 'EUR'))).toBeUndefined();
  });

  it('says how the comparison reckons a bank that was not measured', () => {
    expect(facts({ ...usualItem('bank', 'EUR'), health: 0.9 })).toEqual([
      'On the label: 37 Wh in the cells',
      'By the label at the plug: 28 Wh',
      'Measured at the plug: not yet',
      'The comparison uses: 28 Wh at the plug: label × 90 % health × 85 % efficiency out',
    ]);
  });

  it('puts a measured bank beside what its label promises at the plug', () => {
    const [, , measured, used] = facts({
      ...usualItem('bank', 'EUR'),
      measuredDeliverableWh: { value: 26, on },
    })!;
    // 37 Wh x 0.85 at the plug: 26 of 31.45 Wh.
    expect(measured).toBe('Measured at the plug: 26 Wh, 83 % of that, 14 March 2026');
    expect(used).toBe('The comparison uses: what you measured');
  });

  it('multiplies what a hub promises by the yield that was measured', () => {
    const hub = usualItem('generator-hub', 'EUR');
    expect(facts(hub)).toEqual([
      'On the label: 3 W at 15 km/h',
      'Measured at the plug: not yet',
      'The comparison uses: the rating',
    ]);
    expect(facts({ ...hub, measuredYield: { value: 0.87, on } })?.slice(1)).toEqual([
      'Measured at the plug: 87 % of what the rating promises, 14 March 2026',
      'The comparison uses: the rating × 87 %',
    ]);
  });

  it('does the same for a panel', () => {
    expect(facts(usualItem('panel', 'EUR'))?.at(-1)).toBe(
      'The comparison uses: the rating × 85 % regulator efficiency',
    );
    expect(facts({ ...usualItem('panel', 'EUR'), measuredRatedW: { value: 10.2, on } })).toEqual([
      'On the label: 15 W of the cells in full sun',
      'By the label at the plug: 12.8 W',
      'Measured at the plug: 10.2 W, 80 % of that, 14 March 2026',
      'The comparison uses: what you measured, the regulator’s loss in it',
    ]);
  });
});
