import { describe, expect, it } from 'vitest';
import type { ItemDraft } from '../../../../shared-types/item.ts';
import { readItemCsv } from '../../../../src-main/catalogue/item-csv.ts';

const euro = 'EUR';

function itemsIn(text: string): ItemDraft[] {
  return readItemCsv(text, euro).lines.map(({ item }) => item);
}

function problems(text: string): string[] {
  const { problems: found } = readItemCsv(text, euro);
  return found.map(({ line, column, message }) => `${line} ${column}: ${message}`);
}

describe('a bad cell of a hub or converter', () => {
  it('refuses a hub curve whose speed does not rise', () => {
    const text = 'kind,label,mass_g,power_curve\ngenerator-hub,Hub,460,15:3 5:0.6';
    expect(problems(text)).toEqual([
      '2 power_curve: Allowed is points with rising speed; it says "15:3 5:0.6".',
    ]);
  });

  it('asks who builds the wheel of a hub only considered', () => {
    const text = 'kind,label,state,mass_g,price,rated_w,labour\ngenerator-hub,Hub,considering,460,110,3,';
    expect(problems(text)).toEqual(['2 labour: Allowed is an amount from 0 to 1,000,000 EUR; it is empty.']);
  });

  it.each([
    ['rim_cost', 'dear', 'an amount from 0 to 1,000,000 EUR'],
    ['rim_g', '-1', 'a number from 0 to 3,000 g'],
    ['spokes_replaces_g', '3001', 'a number from 0 to 3,000 g'],
    ['labour', '-60', 'an amount from 0 to 1,000,000 EUR'],
    ['wheel_circumference_m', '9', 'a number from 0.9 to 2.5 m'],
    ['rated_circumference_m', '26', 'a number from 0.9 to 2.5 m'],
  ])('tells what is allowed in %s of a hub instead of "%s"', (column, text, allowed) => {
    const file = `kind,label,mass_g,rated_w,${column}\ngenerator-hub,Hub,460,3,${text}`;
    expect(problems(file)).toEqual([`2 ${column}: Allowed is ${allowed}; it says "${text}".`]);
  });

  it('refuses a yield typed in per cent, and one without its date', () => {
    const header = 'kind,label,mass_g,rated_w,measured_yield,measured_on';
    const rows = 'generator-hub,Hub,460,3,87,2027-05-03\ngenerator-hub,Hub,460,3,0.87,';
    expect(problems(`${header}\n${rows}`)).toEqual([
      '2 measured_yield: Allowed is a number from 0.05 to 1.5; it says "87".',
      expect.stringMatching(/^3 measured_on: Allowed is a date .*; it is empty\.$/),
    ]);
  });

  it('refuses a place of reading beside a rating', () => {
    const text = 'kind,label,mass_g,rated_w,curve_read_at\ngenerator-hub,Hub,460,3,plug';
    expect(problems(text)).toEqual([
      '2 curve_read_at: Allowed is nothing, because rated_w is filled in; it says "plug".',
    ]);
  });

  it('asks for the curve that was read somewhere', () => {
    const text = 'kind,label,mass_g,curve_read_at\ngenerator-hub,Hub,460,plug';
    expect(problems(text)).toEqual([expect.stringMatching(/^2 power_curve: .*it is empty\.$/)]);
  });

  it('refuses a load and a place it does not know', () => {
    const header = 'kind,label,mass_g,power_curve,curve_read_at,output_standard,output_w,load';
    const hub = 'generator-hub,Hub,460,5:0.6 15:3,fork,,,';
    expect(problems(`${header}\n${hub}\nconverter,Converter,90,,,bc-1.2,5,lamp`)).toEqual([
      '2 curve_read_at: Allowed is one of: hub, plug; it says "fork".',
      '3 load: Allowed is one of: rated, tracking; it says "lamp".',
    ]);
  });
});

describe('a line of a hub or converter', () => {
  it('takes the whole wheel of a hub, part by part', () => {
    const text = `kind,label,mass_g,rim_cost,rim_g,rim_replaces_g,spokes_cost,spokes_g,spokes_replaces_g,labour,power_curve,curve_read_at
generator-hub,Hub,460,45,520,480,34.5,230,200,60,8:0.9 20:3.4,Plug`;
    expect(itemsIn(text)).toMatchObject([
      {
        rim: { cost: { minor: 4500, currency: euro }, massG: 520, replacesG: 480 },
        spokes: { cost: { minor: 3450, currency: euro }, massG: 230, replacesG: 200 },
        labour: { minor: 6000, currency: euro },
        power: { as: 'curve', readAt: 'plug' },
      },
    ]);
  });

  it('takes a yield with its date, and none where neither is told', () => {
    const text = `kind,label,mass_g,rated_w,measured_yield,measured_on
generator-hub,Hub,460,3,0.87,2027-05-03
generator-hub,New hub,460,3,,`;
    expect(itemsIn(text)).toMatchObject([
      { measuredYield: { value: 0.87, on: '2027-05-03' } },
      { measuredYield: null },
    ]);
  });

  it('takes a curve for read at the hub unless told', () => {
    const text = 'kind,label,mass_g,power_curve\ngenerator-hub,Hub,460,8:0.9 20:3.4';
    expect(itemsIn(text)).toMatchObject([{ power: { as: 'curve', readAt: 'hub' } }]);
  });

  it('takes a rating for meant for the wheel it is in', () => {
    const text = `kind,label,mass_g,rated_w,wheel_circumference_m,rated_circumference_m
generator-hub,Own wheel,460,3,1.53,
generator-hub,Larger wheel,460,3,1.53,2.155`;
    expect(itemsIn(text)).toMatchObject([
      { wheelCircumferenceM: 1.53, ratedCircumferenceM: 1.53 },
      { wheelCircumferenceM: 1.53, ratedCircumferenceM: 2.155 },
    ]);
  });

  it('takes load, capacitor and what is for the hub', () => {
    const text = `kind,label,mass_g,output_standard,output_w,load,series_capacitor_uf,for_hub
converter,Converter,90,bc-1.2,5,Tracking,220,
accessory,Cable,35,,,,,yes`;
    expect(itemsIn(text)).toMatchObject([{ load: 'tracking', seriesCapacitorUF: 220 }, { forHub: true }]);
  });
});
