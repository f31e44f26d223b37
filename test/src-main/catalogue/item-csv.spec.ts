import { describe, expect, it } from 'vitest';
import { itemDraft, type ItemDraft } from '../../../shared-types/item.ts';
import { readItemCsv } from '../../../src-main/catalogue/item-csv.ts';
import { addItems, listItems } from '../../../src-main/catalogue/items.ts';
import { opened } from './temporary-catalogue.ts';

const euro = 'EUR';

const phoneHeader = 'kind,label,mass_g,price,capacity_mah,cell_v,input_standard,input_w,use_wh_per_day';
const phoneRow = 'device,Phone,190,420,4500,3.85,pd,18,9';

/** The phone with one cell changed. */
function phoneWith(column: string, text: string): string {
  const columns = phoneHeader.split(',');
  const cells = phoneRow.split(',').map((cell, index) => (columns[index] === column ? text : cell));
  return `${phoneHeader}\n${cells.join(',')}`;
}

function itemsIn(text: string, currency = euro): ItemDraft[] {
  return readItemCsv(text, currency).lines.map(({ item }) => item);
}

function problems(text: string): string[] {
  const { problems: found } = readItemCsv(text, euro);
  return found.map(({ line, column, message }) => `${line} ${column}: ${message}`);
}

describe('readItemCsv() of a file that is no inventory', () => {
  it.each([
    ['a GPX track', '<?xml version="1.0"?>\n<gpx version="1.1"><trk><name>Day 1</name></trk></gpx>'],
    ['another table', 'date,place,price\n2027-05-03,cafe,4.20'],
    ['bytes', 'PK\u0003\u0004\0\0\0kind,label'],
    ['nothing', ''],
    ['prose', 'Tent, stove, and a mat.'],
  ])('has one clear problem with %s', (_, text) => {
    expect(problems(text)).toEqual([
      expect.stringMatching(/^1 : This is not an inventory CSV: its first line/),
    ]);
    expect(itemsIn(text)).toEqual([]);
  });
});

describe('readItemCsv() of a bad header', () => {
  it('names an unknown column and those there are', () => {
    const [first] = problems('kind,label,mass_kg\naccessory,Cable,0.03');
    expect(first).toMatch(
      /^1 mass_kg: There is no column of this name. There are: kind, label, state, .*mass_g/,
    );
  });

  it('names a column that stands there twice', () => {
    expect(problems('kind,label,mass_g,label\n')).toEqual([
      '1 label: This column stands here twice; keep one.',
    ]);
  });

  it('misses the column that says what a line is', () => {
    expect(problems('label,mass_g\nCable,30')).toEqual([
      '1 kind: This column is missing: it says what each line is.',
    ]);
  });
});

describe('readItemCsv() of a bad cell', () => {
  it.each([
    ['mass_g', '-5', 'a number from 0 to 20,000 g; it says "-5"'],
    ['mass_g', 'light', 'a number from 0 to 20,000 g; it says "light"'],
    ['mass_g', '', 'a number from 0 to 20,000 g; it is empty'],
    ['cell_v', '0', 'a number from 1 to 60 V; it says "0"'],
    ['capacity_mah', '400000', 'a number from 0 to 60,000 mAh; it says "400000"'],
    ['label', '', 'text of 1 to 80 characters in one line; it is empty'],
    ['label', ' ', 'text of 1 to 80 characters in one line; it is empty'],
    ['price', '-1', 'an amount from 0 to 1,000,000 EUR; it says "-1"'],
    ['price', 'cheap', 'an amount from 0 to 1,000,000 EUR; it says "cheap"'],
    [
      'input_standard',
      'barrel',
      'one of: usb-2, usb-3, bc-1.2, type-c-1.5a, type-c-3a, pd; it says "barrel"',
    ],
    ['use_wh_per_day', '1e9', 'a number from 0 to 5,000 Wh; it says "1e9"'],
  ])('tells what is allowed in %s instead of "%s"', (column, text, allowed) => {
    expect(problems(phoneWith(column, text))).toEqual([`2 ${column}: Allowed is ${allowed}.`]);
  });

  it('names the cables there are', () => {
    const text = `${phoneHeader},input_cable\n${phoneRow},braided`;
    expect(problems(text)).toEqual([
      '2 input_cable: Allowed is one of: a-plug, c-3a, c-5a; it says "braided".',
    ]);
  });

  it('names the kinds there are', () => {
    const kinds = 'device, bank, panel, generator-hub, converter, wall-charger, accessory';
    expect(problems(phoneWith('kind', 'kettle'))).toEqual([
      `2 kind: Allowed is a kind, one of: ${kinds}; it says "kettle".`,
    ]);
    expect(problems(phoneWith('kind', ''))).toEqual([
      `2 kind: Allowed is a kind, one of: ${kinds}; it is empty.`,
    ]);
  });

  it('tells every cell in error and keeps the good lines', () => {
    const text = 'kind,label,mass_g,quantity\naccessory,Cable,30,1\naccessory,,-1,1.5\naccessory,Strap,20,2';
    const { lines, problems: found } = readItemCsv(text, euro);
    expect(lines.map(({ item }) => item.label)).toEqual(['Cable', 'Strap']);
    expect(found.map(({ line, column }) => [line, column])).toEqual([
      [3, 'label'],
      [3, 'quantity'],
      [3, 'mass_g'],
    ]);
  });

  it('asks for a capacity in one of its forms', () => {
    const text = 'kind,label,mass_g,input_standard,input_w,use_wh_per_day\ndevice,Phone,190,pd,18,9';
    expect(problems(text)).toEqual([
      '2 capacity_wh: Allowed is a capacity in Wh, or in mAh with a cell voltage; it is empty.',
    ]);
  });

  it('refuses a capacity in both of its forms', () => {
    const text = `${phoneHeader},capacity_wh\n${phoneRow},17`;
    expect(problems(text)).toEqual([
      '2 capacity_mah: Allowed is nothing, because capacity_wh is filled in; it says "4500".',
      '2 cell_v: Allowed is nothing, because capacity_wh is filled in; it says "3.85".',
    ]);
  });

  it('asks for the voltage that milliampere-hours need', () => {
    expect(problems(phoneWith('cell_v', ''))).toEqual([
      '2 cell_v: Allowed is a number from 1 to 60 V; it is empty.',
    ]);
  });

  it('refuses a figure that the kind does not have', () => {
    expect(problems('kind,label,mass_g,lights\naccessory,Cable,30,4')).toEqual([
      '2 lights: Allowed is nothing: it is not a figure of the kind "Cable or other"; it says "4".',
    ]);
  });

  it('asks for the price of what is only considered', () => {
    const text = 'kind,label,mass_g,state,price\naccessory,Strap,30,considering,\naccessory,Cable,30,owned,';
    expect(problems(text)).toEqual(['2 price: Allowed is an amount from 0 to 1,000,000 EUR; it is empty.']);
  });

  it('asks for the day of a measurement', () => {
    const header = 'kind,label,mass_g,capacity_wh,input_standard,input_w,outputs,measured_wh,measured_on';
    expect(problems(`${header}\nbank,Bank,350,74,pd,18,pd:20,60,`)).toEqual([
      '2 measured_on: Allowed is a date YYYY-MM-DD from 1900-01-01 to 2199-12-31; it is empty.',
    ]);
    expect(problems(`${header}\nbank,Bank,350,74,pd,18,pd:20,,2026-03-14`)).toEqual([
      '2 measured_wh: Allowed is a number from 0 to 1,100 Wh; it is empty.',
    ]);
  });

  it('refuses outlets that are not standard and watts', () => {
    const header = 'kind,label,mass_g,total_w,outputs';
    expect(problems(`${header}\nwall-charger,Charger,95,30,30 W`)).toEqual([
      expect.stringMatching(/^2 outputs: Allowed is one of: usb-2/),
    ]);
    expect(problems(`${header}\nwall-charger,Charger,95,30,pd`)).toEqual([
      '2 outputs: Allowed is a number from 0.1 to 240 W; it says "pd".',
    ]);
    expect(problems(`${header}\nwall-charger,Charger,95,30,`)).toEqual([
      expect.stringMatching(/^2 outputs: Allowed is .*; it is empty\.$/),
    ]);
  });

  it('counts lines as a spreadsheet does', () => {
    const text =
      'kind,label,mass_g,notes\naccessory,Cable,30,"first\nsecond\nthird"\n,,,\n\naccessory,Strap,-1,';
    expect(problems(text)).toEqual(['5 mass_g: Allowed is a number from 0 to 20,000 g; it says "-1".']);
  });

  it('tells a quotation mark that is never closed', () => {
    expect(problems('kind,label,mass_g\naccessory,"Cable,30\naccessory,Strap,20')).toEqual([
      expect.stringMatching(/^2 : A quotation mark is missing/),
    ]);
  });

  it('tells a cell that stands under no column, and reads the other lines', () => {
    const text = 'kind,label,mass_g\naccessory,Cable, long,30\naccessory,Strap,20';
    expect(problems(text)).toEqual([
      expect.stringMatching(/^2 : The cell "30" stands under no column name\. .* needs quotation marks/),
    ]);
    expect(itemsIn(text)).toMatchObject([{ label: 'Strap' }]);
  });

  it('stops at more lines than an inventory has', () => {
    const lines = Array.from({ length: 10_001 }, () => 'accessory,Cable,30');
    expect(problems(['kind,label,mass_g', ...lines].join('\n'))).toEqual([
      '10002 : Allowed are at most 10,000 lines below the header.',
    ]);
  });
});

describe('readItemCsv()', () => {
  it('reads a line of every kind, with usual figures where cells are empty', () => {
    const text = `kind,label,mass_g,capacity_wh,input_standard,input_w,outputs,output_standard,output_w,use_riding_w,rated_w,total_w
device,Lamp,170,10.8,bc-1.2,5,,,,0.4,,
bank,Bank,350,74,pd,18,pd:20 bc-1.2:7.5,,,,,
panel,Panel,560,,,,,type-c-3a,15,,20,
generator-hub,Hub,460,,,,,,,,3,
converter,Converter,90,,,,,bc-1.2,5,,,
wall-charger,Charger,95,,,,pd:30,,,,,30
accessory,Cable,30,,,,,,,,,`;
    const { lines, problems: found } = readItemCsv(text, euro);
    expect(found).toEqual([]);
    const price = { minor: 0, currency: euro };
    const common = { state: 'owned', quantity: 1, price, lifeYears: null, resale: null, notes: '' };
    expect(lines.map(({ item }) => item)).toEqual([
      {
        kind: 'device',
        label: 'Lamp',
        ...common,
        massG: 170,
        mount: 'handlebar',
        capacity: { as: 'wh', wh: 10.8 },
        health: 0.9,
        spareBatteries: 0,
        input: { standard: 'bc-1.2', powerW: 5, cable: 'a-plug' },
        use: { as: 'activity', ridingW: 0.4, stopW: 0, eveningW: 0, nightW: 0 },
        pluggedW: 0,
        importance: 'must-have',
      },
      {
        kind: 'bank',
        label: 'Bank',
        ...common,
        massG: 350,
        mount: 'rear-rack',
        capacity: { as: 'wh', wh: 74 },
        measuredDeliverableWh: null,
        health: 1,
        input: { standard: 'pd', powerW: 18, cable: 'c-3a' },
        outputs: [
          { standard: 'pd', powerW: 20 },
          { standard: 'bc-1.2', powerW: 7.5 },
        ],
        efficiencyIn: 0.92,
        efficiencyOut: 0.85,
        chargesWhileServing: false,
        standbyW: 0,
        selfDischargePctPerMonth: 2,
        lights: 4,
      },
      {
        kind: 'panel',
        label: 'Panel',
        ...common,
        massG: 560,
        mount: 'rear-rack',
        ratedW: 20,
        measuredRatedW: null,
        temperatureCoefficientPctPerK: -0.4,
        noctDegC: 48,
        regulatorEfficiency: 0.85,
        startWm2: 100,
        output: { standard: 'type-c-3a', powerW: 15 },
      },
      {
        kind: 'generator-hub',
        label: 'Hub',
        ...common,
        massG: 460,
        mount: 'front-wheel',
        replacesG: 150,
        rim: { cost: { minor: 0, currency: euro }, massG: 0, replacesG: 0 },
        spokes: { cost: { minor: 0, currency: euro }, massG: 0, replacesG: 0 },
        labour: { minor: 0, currency: euro },
        power: { as: 'rating', ratedW: 3 },
        measuredYield: null,
        idleDragW10: 0.5,
        idleDragW30: 2.5,
        wheelCircumferenceM: 2.155,
        ratedCircumferenceM: 2.155,
      },
      {
        kind: 'converter',
        label: 'Converter',
        ...common,
        massG: 90,
        mount: 'handlebar',
        efficiency: 0.8,
        startSpeedKmh: 10,
        load: 'rated',
        seriesCapacitorUF: 0,
        output: { standard: 'bc-1.2', powerW: 5 },
      },
      {
        kind: 'wall-charger',
        label: 'Charger',
        ...common,
        massG: 95,
        mount: 'rear-rack',
        outputs: [{ standard: 'pd', powerW: 30 }],
        totalW: 30,
      },
      { kind: 'accessory', label: 'Cable', ...common, massG: 30, mount: 'rear-rack', forHub: false },
    ]);
  });

  it('takes every figure a line gives over the default', () => {
    const text = `kind,label,state,quantity,mass_g,price,life_years,resale,mount,notes,capacity_mah,cell_v,measured_wh,measured_on,health,input_standard,input_w,input_cable,outputs,efficiency_in,efficiency_out,charges_while_serving,standby_w,self_discharge_pct_per_month,lights
Bank,"20 Ah bank, 18 W in",Considering,2,350,44.95,3.5,10,frame,light grey,20000,3.7,60,2026-03-14,0.95,PD,18,C-5A,pd:20,0.9,0.8,Yes,0.05,3,5`;
    expect(problems(text)).toEqual([]);
    expect(itemsIn(text)).toEqual([
      {
        kind: 'bank',
        label: '20 Ah bank, 18 W in',
        state: 'considering',
        quantity: 2,
        massG: 350,
        price: { minor: 4495, currency: euro },
        lifeYears: 3.5,
        resale: { minor: 1000, currency: euro },
        mount: 'frame',
        notes: 'light grey',
        capacity: { as: 'mah', mAh: 20000, cellV: 3.7 },
        measuredDeliverableWh: { value: 60, on: '2026-03-14' },
        health: 0.95,
        input: { standard: 'pd', powerW: 18, cable: 'c-5a' },
        outputs: [{ standard: 'pd', powerW: 20 }],
        efficiencyIn: 0.9,
        efficiencyOut: 0.8,
        chargesWhileServing: true,
        standbyW: 0.05,
        selfDischargePctPerMonth: 3,
        lights: 5,
      },
    ]);
  });

  it('takes a life and a resale by themselves, and refuses those that cannot be', () => {
    const text = 'kind,label,mass_g,life_years,resale\naccessory,Strap,30,2,\naccessory,Cable,30,,1.5';
    expect(itemsIn(text)).toMatchObject([
      { lifeYears: 2, resale: null },
      { lifeYears: null, resale: { minor: 150, currency: euro } },
    ]);
    expect(problems('kind,label,mass_g,life_years,resale\naccessory,Strap,30,0,-1')).toEqual([
      '2 life_years: Allowed is a number from 0.5 to 50 years; it says "0".',
      '2 resale: Allowed is an amount from 0 to 1,000,000 EUR; it says "-1".',
    ]);
  });

  it('takes the extra draw of a device that is charged in use', () => {
    const text = `${phoneHeader},plugged_w\n${phoneRow},0.4`;
    expect(itemsIn(text)).toMatchObject([{ pluggedW: 0.4 }]);
  });

  it('takes a byte order mark, semicolons and decimal commas', () => {
    const text = `\uFEFF${phoneHeader};notes\n${phoneRow}`
      .replaceAll(',', ';')
      .replace('3.85', '3,85')
      .concat(';"warm, dry"\r\n');
    const { lines, problems: found } = readItemCsv(text, euro);
    expect(found).toEqual([]);
    expect(lines.map(({ item }) => item)).toMatchObject([
      { capacity: { as: 'mah', mAh: 4500, cellV: 3.85 }, notes: 'warm, dry' },
    ]);
  });

  it('takes decimal commas in outlets and curves too', () => {
    const text = 'kind;label;mass_g;power_curve\ngenerator-hub;Hub;460;5:0,6 15:3 30:5,25';
    expect(itemsIn(text)).toMatchObject([
      {
        power: {
          points: [
            { speedKmh: 5, powerW: 0.6 },
            { speedKmh: 15, powerW: 3 },
            { speedKmh: 30, powerW: 5.25 },
          ],
        },
      },
    ]);
  });

  it('takes no decimal comma where commas part columns', () => {
    expect(problems(phoneWith('cell_v', '"3,85"'))).toEqual([
      '2 cell_v: Allowed is a number from 1 to 60 V; it says "3,85".',
    ]);
  });

  it('keeps line breaks and quotes inside a quoted cell', () => {
    const text = 'kind,label,mass_g,notes\naccessory,"Cable, 1 m",30,"first ""line""\nsecond"';
    expect(itemsIn(text)).toMatchObject([{ label: 'Cable, 1 m', notes: 'first "line"\nsecond' }]);
  });

  it('takes tabs, capitals and blanks in the header', () => {
    const text = 'Kind\tLabel\tMass_g \t\naccessory\tCable\t30\t';
    expect(readItemCsv(text, euro)).toMatchObject({
      lines: [{ line: 2, item: { label: 'Cable', massG: 30 } }],
      problems: [],
    });
  });

  it('counts money in the minor units of its currency', () => {
    const text = 'kind,label,mass_g,price\naccessory,Cable,30,1200';
    const amounts = ['EUR', 'JPY'].map((currency) => itemsIn(text, currency)[0]?.price);
    // ISO 4217: a euro has 2 decimals, a yen none.
    expect(amounts).toEqual([
      { minor: 120_000, currency: 'EUR' },
      { minor: 1200, currency: 'JPY' },
    ]);
  });

  it('takes an amount with a currency of its own', () => {
    const text = 'kind,label,mass_g,price,resale\naccessory,Cable,30,12.50 usd,1200JPY';
    expect(itemsIn(text)).toMatchObject([
      { price: { minor: 1250, currency: 'USD' }, resale: { minor: 1200, currency: 'JPY' } },
    ]);
  });

  it('leaves off the apostrophe that keeps a spreadsheet from running a text', () => {
    const text = "kind,label,mass_g,notes\naccessory,'=Cable,30,'tis short";
    expect(itemsIn(text)).toMatchObject([{ label: '=Cable', notes: "'tis short" }]);
  });

  it('reads a header alone as an empty inventory', () => {
    expect(readItemCsv('kind,label,mass_g\n', euro)).toEqual({ lines: [], problems: [] });
  });

  it('gives drafts that the schema and the catalogue take', () => {
    const drafts = itemsIn(`${phoneHeader}\n${phoneRow}\n${phoneRow}`);
    const { read, write } = opened();
    expect(drafts.every((draft) => itemDraft.safeParse(draft).success)).toBe(true);
    const added = addItems(write, drafts);
    expect(listItems(read)).toEqual(added.toSorted((a, b) => (a.id < b.id ? -1 : 1)));
  });
});
