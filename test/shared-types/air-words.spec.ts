import { describe, expect, it } from 'vitest';
import type { CheckedAirLine } from '../../shared-types/air-check.ts';
import { bankLines, batteryText, deviceLines, toDoTexts } from '../../shared-types/air-words.ts';
import { airFixture } from '../support/air-fixture.ts';

const bank: CheckedAirLine = {
  label: 'Bank',
  kind: 'power-bank',
  count: 1,
  labelWh: 100.27,
  class: 'approval',
  toDo: 'Ask.',
};

describe('batteryText()', () => {
  it('does not round what is over a limit onto it', () => {
    expect(batteryText(bank, 'en-GB')).toBe('Bank: 100.27\u00a0Wh');
  });

  it('says how many, and of a spare whose it is', () => {
    const spares = { ...bank, kind: 'spare-battery', count: 2, labelWh: 8.64 } as const;
    expect(batteryText(spares, 'en-GB')).toBe('2 × Bank, spare battery: 8.64\u00a0Wh each');
  });
});

describe('toDoTexts()', () => {
  it('has nothing to say of nothing', () => expect(toDoTexts([])).toEqual([]));

  it('says once what holds for all', () => {
    expect(toDoTexts([bank, { ...bank, label: 'Other bank' }])).toEqual(['Ask.']);
  });

  it('names the batteries where they differ', () => {
    const phone: CheckedAirLine = { ...bank, label: 'Phone', kind: 'in-device', toDo: 'Cabin.' };
    const spare: CheckedAirLine = { ...bank, label: 'Camera', kind: 'spare-battery', toDo: 'Tape.' };
    expect(toDoTexts([phone, { ...phone, label: 'Camera' }, spare])).toEqual([
      'Phone; Camera: Cabin.',
      'Camera, spare battery: Tape.',
    ]);
  });
});

describe('bankLines() and deviceLines()', () => {
  it('part what a scenario adds from what every one carries', () => {
    const result = { air: airFixture() };
    expect(bankLines(result).map(({ label }) => label)).toEqual(['20 Ah bank, 18 W in']);
    expect(deviceLines([result, result]).map(({ label }) => label)).toEqual(['Phone']);
    expect(deviceLines([])).toEqual([]);
  });
});
