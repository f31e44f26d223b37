import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios } from '../../../../db/demo/demo.ts';
import type { Assumption } from '../../../../shared-types/comparison.ts';
import type { KeptEstimate } from '../../../../shared-types/field-log.ts';
import type { Item, ItemOf } from '../../../../shared-types/item.ts';
import { kitAssumptions } from '../../../../src-main/workbench/assemble/assumptions.ts';
import { usesFromReadings } from '../../../../src-main/workbench/assemble/from-readings.ts';
import { hubAssumptions } from '../../../../src-main/workbench/assemble/ride-assumptions.ts';

const plain = (text: string): string => text.replaceAll(/\s/gu, ' ');
const item = (id: string): Item => demoItems.find((each) => each.id === id)!;
const on = '2027-05-03';
const bank: ItemOf<'bank'> = {
  ...(item('demo-bank-20') as ItemOf<'bank'>),
  measuredDeliverableWh: { value: 64, on },
};
const phone = item('demo-phone') as ItemOf<'device'>;
const hub = item('demo-hub-3') as ItemOf<'generator-hub'>;

const kept = (changes: Partial<KeptEstimate>): KeptEstimate => ({
  ...{ itemId: bank.id, measure: 'bank-delivery', value: 64, low: 61.2, high: 68, readings: 6, on },
  ...changes,
});

const ofBank = (of: ItemOf<'bank'>, ...estimates: readonly KeptEstimate[]): readonly Assumption[] =>
  kitAssumptions(demoScenarios[0]!, [{ item: of, carried: 1 }], estimates).filter(
    ({ name }) => name === of.label,
  );

describe('the source of a measured value', () => {
  it('names no readings of a value that was typed since', () => {
    const [typed] = ofBank({ ...bank, measuredDeliverableWh: { value: 63, on } }, kept({}));
    expect(typed).toMatchObject({ basis: 'measured', source: 'measured on 3 May 2027' });
  });

  it('names no readings of another item', () => {
    expect(ofBank(bank, kept({ itemId: 'other' }))[0]!.source).toBe('measured on 3 May 2027');
  });

  it('says date, number of readings and interval of a value stored from them', () => {
    expect(ofBank(bank, kept({}))[0]!.source).toBe('measured on 3 May 2027, from 6 readings, 61.2 to 68 Wh');
  });
});

describe('a figure that has no date of its own', () => {
  const efficiency = kept({
    ...{ measure: 'bank-efficiency', value: bank.efficiencyIn, low: 0.81, high: 0.93, readings: 7 },
  });

  it('is the label’s once it was typed anew', () => {
    expect(ofBank({ ...bank, efficiencyIn: 0.77 }, efficiency)).toHaveLength(1);
  });

  it('counts as measured while it is the one stored from readings', () => {
    const [, measured] = ofBank(bank, efficiency);
    expect(measured!.basis).toBe('measured');
    expect(plain(measured!.source)).toBe('measured on 3 May 2027, from 7 readings, 81 % to 93 %');
    expect(measured!.value).toMatch(/^efficiency in: /);
  });

  it('is told once, and not by the label too', () => {
    const [label, measured] = ofBank({ ...bank, measuredDeliverableWh: null }, efficiency);
    expect([label!.basis, measured!.basis]).toEqual(['label', 'measured']);
    expect(label!.value).not.toContain(' in, ');
  });

  it('may be the use of a device', () => {
    const use = { as: 'activity', ridingW: 0.62, stopW: 0.5, eveningW: 0.5, nightW: 0 } as const;
    const read = kept({ itemId: phone.id, measure: 'device-riding', value: 0.62, low: 0.55, high: 0.7 });
    expect(usesFromReadings([{ ...phone, use }], [read])).toEqual([
      {
        name: phone.label,
        value: 'riding: 0.62 W',
        basis: 'measured',
        source: 'measured on 3 May 2027, from 6 readings, 0.55 to 0.7 W',
      },
    ]);
    expect(usesFromReadings([{ ...phone, use: { ...use, ridingW: 0.6 } }], [read])).toEqual([]);
  });
});

describe('the yield of a hub', () => {
  const of = (of: ItemOf<'generator-hub'>) =>
    hubAssumptions([{ item: of, carried: 1 }], demoScenarios[0]!.rules, [
      kept({ itemId: hub.id, measure: 'hub-yield', value: 0.87, low: 0.82, high: 0.92 }),
    ]).filter(({ name }) => name === hub.label);

  it('is not told where none was measured', () => {
    expect(of(hub)).toHaveLength(1);
  });

  it('is told beside its rating, with its readings', () => {
    const [rating, measured] = of({ ...hub, measuredYield: { value: 0.87, on } });
    expect(rating!.basis).toBe('label');
    expect(measured!.basis).toBe('measured');
    expect(plain(measured!.value)).toMatch(/^yield at the plug 87 % of its rating/);
    expect(plain(measured!.source)).toBe('measured on 3 May 2027, from 6 readings, 82 % to 92 %');
  });
});
