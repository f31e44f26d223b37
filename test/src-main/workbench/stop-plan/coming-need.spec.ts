import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoTours } from '../../../../db/demo/demo.ts';
import type { DeviceUse, Item } from '../../../../shared-types/item.ts';
import { comingNeedWh } from '../../../../src-main/workbench/stop-plan/coming-need.ts';
import { stopKit } from '../../../../src-main/workbench/stop-plan/stop-kit.ts';

const [tour] = demoTours;
const banksOnly = demoScenarios.find(({ id }) => id === 'demo-banks')!;
const stepMinutes = 15;

/** The kit with every device used like this. */
function piecesUsing(use: DeviceUse) {
  const items = demoItems.map((item): Item => (item.kind === 'device' ? { ...item, use } : item));
  return stopKit(tour!, banksOnly, items).pieces;
}

function needWh(use: DeviceUse, hoursToWall: number): readonly number[] {
  const pieces = piecesUsing(use).filter(({ device }) => device !== null);
  const need = comingNeedWh(pieces, tour!, { use: { as: 'leg', leg: 0 }, hoursToWall }, stepMinutes);
  return need.ok ? need.value : [];
}

describe('what is used until the next wall', () => {
  it('is the use of a day for as many hours: 12 Wh a day are 24 Wh in 48 h', () => {
    for (const wh of needWh({ as: 'day', whPerDay: 12 }, 48)) expect(wh).toBeCloseTo(24, 9);
  });

  it('is nothing where the wall is at hand', () => {
    expect(needWh({ as: 'day', whPerDay: 12 }, 0).every((wh) => wh === 0)).toBe(true);
  });

  it('counts the hours of the leg: what is drawn while riding only is drawn for its riding hours', () => {
    const { ridingHours } = tour!.legs[0]!;
    const use: DeviceUse = { as: 'activity', ridingW: 2, stopW: 0, eveningW: 0, nightW: 0 };
    for (const wh of needWh(use, 24)) expect(wh).toBeCloseTo(2 * ridingHours, 1);
  });

  it('asks nothing of banks', () => {
    const pieces = piecesUsing({ as: 'day', whPerDay: 12 });
    const need = comingNeedWh(pieces, tour!, { use: { as: 'leg', leg: 0 }, hoursToWall: 24 }, stepMinutes);
    const banks = pieces.flatMap(({ device }, place) => (device === null ? [place] : []));
    expect(banks.length).toBeGreaterThan(0);
    expect(banks.map((place) => need.ok && need.value[place])).toEqual(banks.map(() => 0));
  });
});
