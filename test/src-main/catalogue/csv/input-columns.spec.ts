import { describe, expect, it } from 'vitest';
import { readItemCsv } from '../../../../src-main/catalogue/item-csv.ts';

const header = 'kind,label,mass_g,capacity_wh,use_wh_per_day,input_standard,input_w,input_cable';

function readPhone(standard: string, powerW: string, cable = '') {
  return readItemCsv(`${header}\ndevice,Phone,190,17,9,${standard},${powerW},${cable}`, 'EUR');
}

describe('an empty cable', () => {
  it.each([
    ['barrel', '18', 'input_standard'],
    ['pd', '', 'input_w'],
    ['pd', '9000', 'input_w'],
  ])('is not blamed for a port of %s with "%s" W', (standard, powerW, column) => {
    const { problems } = readPhone(standard, powerW);
    expect(problems.map((problem) => problem.column)).toEqual([column]);
  });

  it.each([
    ['usb-2', '2.5', 'a-plug'],
    ['bc-1.2', '7.5', 'a-plug'],
    ['type-c-3a', '15', 'c-3a'],
    ['pd', '60', 'c-3a'],
    ['PD', '65', 'c-5a'],
  ])('is the usual one of a port of %s with %s W', (standard, powerW, cable) => {
    expect(readPhone(standard, powerW).lines.map(({ item }) => item)).toMatchObject([{ input: { cable } }]);
  });
});

describe('a cable', () => {
  it('is taken as it is given, even where it holds the port back', () => {
    expect(readPhone('pd', '65', 'A-plug').lines.map(({ item }) => item)).toMatchObject([
      { input: { cable: 'a-plug' } },
    ]);
  });
});
