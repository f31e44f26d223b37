import { describe, expect, it } from 'vitest';
import { fliesAsPacked, type AirKind, type AirLine } from '../../../../shared-types/air-check.ts';
import { labelWh } from '../../../../shared-types/item.ts';
import { airCheck } from '../../../../src-main/model/judge/air-transport.ts';

const line = (kind: AirKind, wh: number, count = 1, label: string = kind): AirLine => ({
  label,
  kind,
  count,
  labelWh: wh,
});

/** As the catalogue reckons a label. */
const whOf = (mAh: number, cellV: number): number => labelWh({ as: 'mah', mAh, cellV });

describe('airCheck() on the watt-hours of one battery', () => {
  it('leaves at home what is no number', () => {
    expect(airCheck([line('power-bank', Number.NaN)]).verdict.class).toBe('stays-home');
  });

  it.each([
    { mAh: 25_000, volts: 4, airClass: 'within' },
    { mAh: 27_027, volts: 3.7, airClass: 'within' },
    { mAh: 40_000, volts: 4, airClass: 'approval' },
    { mAh: 25_001, volts: 4, airClass: 'approval' },
    { mAh: 40_001, volts: 4, airClass: 'stays-home' },
  ])('puts $mAh mAh at $volts V in the class "$airClass"', ({ mAh, volts, airClass }) => {
    expect(airCheck([line('power-bank', whOf(mAh, volts))]).lines[0]!.class).toBe(airClass);
  });

  it.each([
    { limitWh: 100, airClass: 'within' },
    { limitWh: 160, airClass: 'approval' },
  ])('never pushes a label of just $limitWh Wh over by rounding', ({ limitWh, airClass }) => {
    // Every cell voltage of 1 to 60 V, to 0.01 V, that makes the limit with whole mAh. In units of 1e-5 Wh the product is exact.
    const product = limitWh * 100_000;
    const labels = Array.from({ length: 5901 }, (_, step) => step + 100)
      .filter((hundredthsV) => product % hundredthsV === 0)
      .map((hundredthsV) => whOf(product / hundredthsV, hundredthsV / 100));
    expect(labels.length).toBeGreaterThan(20);
    const classes = labels.map((each) => airCheck([line('power-bank', each)]).lines[0]!.class);
    expect(new Set(classes)).toEqual(new Set([airClass]));
  });

  it('says of each sort what must be done', () => {
    const toDo = (kind: AirKind, wh: number): string => airCheck([line(kind, wh)]).lines[0]!.toDo;
    expect(toDo('power-bank', 74)).toBe('Cabin only, terminals protected; not recharged on board.');
    expect(toDo('spare-battery', 9)).toBe('Cabin only, the terminals of each protected.');
    expect(toDo('in-device', 9)).toContain('Best in the cabin');
    expect(toDo('power-bank', 120)).toBe(
      'Ask the airline for its approval: over 100 Wh. Cabin only, terminals protected; not recharged on board.',
    );
    expect(toDo('in-device', 170)).toBe('Stays at home: over 160 Wh.');
  });
});

describe('airCheck() on how many', () => {
  it('has nothing to say against two banks, whatever else is small', () => {
    const check = airCheck([
      line('power-bank', 74, 2),
      line('in-device', 17, 15),
      line('spare-battery', 9, 4),
    ]);
    expect(check.verdict).toEqual({ class: 'within', text: 'Nothing here is over the limits listed.' });
  });

  it('counts banks of all sorts against two a person, but not one left at home for its size', () => {
    const twoSorts = [line('power-bank', 37, 2, 'Small bank'), line('power-bank', 74, 1, 'Bank')];
    expect(airCheck(twoSorts).verdict).toEqual({
      class: 'stays-home',
      text: 'Does not fly as packed: 3 power banks, at most 2 a person.',
    });
    const oneTooLarge = [line('power-bank', 37, 2, 'Small bank'), line('power-bank', 200, 1, 'Large bank')];
    expect(airCheck(oneTooLarge).verdict.text).toBe('Does not fly as packed: Large bank (over 160 Wh).');
  });

  it('counts spares and banks over 100 Wh together against two, the batteries in devices apart', () => {
    const packed = [line('power-bank', 120, 1, 'Bank'), line('in-device', 120, 3, 'Laptop')];
    expect(airCheck([...packed, line('spare-battery', 120, 1, 'Laptop')]).verdict.class).toBe('approval');
    const more = airCheck([...packed, line('spare-battery', 120, 2, 'Laptop')]);
    expect(more.verdict.class).toBe('stays-home');
    expect(more.verdict.text).toContain('3 power banks and spare batteries over 100 Wh, at most 2 a person');
  });

  it('asks the airline about a sixteenth device', () => {
    expect(airCheck([line('in-device', 9, 16)]).verdict).toEqual({
      class: 'approval',
      text: 'Needs the airline’s approval: 16 devices, at most 15 a person.',
    });
  });

  it('names what stays at home and what needs approval side by side', () => {
    expect(
      airCheck([line('power-bank', 200, 2, 'Large bank'), line('spare-battery', 120, 1, 'Camera')]).verdict
        .text,
    ).toBe(
      'Does not fly as packed: 2 × Large bank (over 160 Wh). Needs the airline’s approval: Camera, spare battery (over 100 Wh).',
    );
  });
});

describe('the words of airCheck()', () => {
  const kits = [
    [],
    [line('power-bank', 74)],
    [line('power-bank', 120)],
    [line('power-bank', 200), line('in-device', 9, 16)],
  ];

  it('never promise that something flies, and defer to airline and state', () => {
    for (const check of kits.map(airCheck)) {
      expect(JSON.stringify(check)).not.toMatch(/\bsafe|allowed to fly|may fly|can fly|will fly/i);
      expect(check.defer).toMatch(/ask the airline.*states.*They decide/);
    }
  });

  it('give every rule a source, and the limit of two banks its date', () => {
    const { rules } = airCheck([]);
    expect(rules.every(({ source }) => source !== '')).toBe(true);
    const dated = rules.filter(({ since }) => since === '2026-03-27').map(({ text }) => text);
    expect(dated.join(' ')).toMatch(/two power banks a person.*recharged on board/);
  });
});

describe('fliesAsPacked()', () => {
  it.each([
    { wh: 74, flies: true },
    { wh: 120, flies: true },
    { wh: 200, flies: false },
  ])('is $flies for a bank of $wh Wh', ({ wh, flies }) => {
    expect(fliesAsPacked(airCheck([line('power-bank', wh)]))).toBe(flies);
  });
});
