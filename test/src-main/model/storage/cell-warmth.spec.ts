import { describe, expect, it } from 'vitest';
import { cellDegC, type CellPlace } from '../../../../src-main/model/storage/cell-warmth.ts';

const onRoad: CellPlace = { activity: 'riding', indoors: false, inCamp: false };
const evening: CellPlace = { activity: 'evening', indoors: false, inCamp: true };
const night: CellPlace = { activity: 'night', indoors: false, inCamp: true };

describe('cellDegC() by day', () => {
  it.each([-15, 0, 38])('is the air of %d degC on the bicycle', (air) =>
    expect(cellDegC(air, onRoad, 'on-bicycle', 'sleeping-bag')).toBe(air),
  );
  // Common practice, no source: a pocket is about 20 degC, and no colder than the air.
  it.each([
    { air: -15, cells: 20 },
    { air: 33, cells: 33 },
  ])('is $cells degC beside the body in air of $air degC', ({ air, cells }) =>
    expect(cellDegC(air, onRoad, 'on-rider', 'outside')).toBe(cells),
  );
});

describe('cellDegC() in camp', () => {
  // Common practice, no source: a closed tent with a sleeper in it is 3 K warmer than the air, a sleeping bag about 20 degC.
  it.each([
    { sleep: 'outside', place: 'evening', cells: -5 },
    { sleep: 'outside', place: 'night', cells: -5 },
    { sleep: 'tent', place: 'evening', cells: -2 },
    { sleep: 'tent', place: 'night', cells: -2 },
    { sleep: 'sleeping-bag', place: 'evening', cells: -2 },
    { sleep: 'sleeping-bag', place: 'night', cells: 20 },
  ] as const)('is $cells degC at $place in -5 degC when they sleep: $sleep', ({ sleep, place, cells }) =>
    expect(cellDegC(-5, place === 'night' ? night : evening, 'on-bicycle', sleep)).toBe(cells),
  );
  it('is the same for what rides on the rider: pockets are emptied at night', () =>
    expect(cellDegC(-5, night, 'on-rider', 'outside')).toBe(-5));
  it('is never colder than the air in the sleeping bag', () =>
    expect(cellDegC(27, night, 'on-bicycle', 'sleeping-bag')).toBe(27));
});

describe('cellDegC() in a room', () => {
  it.each([
    { air: -20, cells: 20 },
    { air: 31, cells: 31 },
  ])('is $cells degC while it is $air degC outside', ({ air, cells }) =>
    expect(cellDegC(air, { ...night, indoors: true }, 'on-bicycle', 'outside')).toBe(cells),
  );
});
