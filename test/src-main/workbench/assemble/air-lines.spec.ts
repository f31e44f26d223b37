import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios } from '../../../../db/demo/demo.ts';
import type { Item } from '../../../../shared-types/item.ts';
import { airLines } from '../../../../src-main/workbench/assemble/air-lines.ts';
import { carriedItems, travellingDevices } from '../../../../src-main/workbench/assemble/kit.ts';

const camera = demoItems.find((item) => item.kind === 'device' && item.spareBatteries === 1)!;
const bank = demoItems.find(({ kind }) => kind === 'bank')!;

function changed(id: string, change: Partial<Extract<Item, { kind: 'device' }>>): readonly Item[] {
  return demoItems.map((item) => (item.id === id && item.kind === 'device' ? { ...item, ...change } : item));
}

describe('airLines()', () => {
  it('lists what the walk takes along, battery by battery', () => {
    const travelling = travellingDevices(demoItems, []).filter(({ batteryWh }) => batteryWh > 0);
    const inDevices = airLines([], demoItems, []).filter(({ kind }) => kind === 'in-device');
    expect(inDevices.map(({ label, count }) => [label, count])).toEqual(
      [...new Set(travelling.map(({ label }) => label))].map((label) => [
        label,
        travelling.filter((device) => device.label === label).length,
      ]),
    );
  });

  it('leaves out what stays at home, what is only considered, and loads without a battery', () => {
    const labels = (items: readonly Item[], left: readonly string[]): string[] =>
      airLines([], items, left).map(({ label }) => label);
    expect(labels(demoItems, [])).toContain(camera.label);
    expect(labels(demoItems, [camera.id])).not.toContain(camera.label);
    expect(labels(changed(camera.id, { state: 'considering' }), [])).not.toContain(camera.label);
    expect(labels(changed(camera.id, { capacity: { as: 'wh', wh: 0 } }), [])).not.toContain(camera.label);
  });

  it('counts the spares of each piece, and age does not shrink a label', () => {
    const items = changed(camera.id, {
      quantity: 2,
      spareBatteries: 3,
      health: 0.5,
      capacity: { as: 'mah', mAh: 2000, cellV: 7.2 },
    });
    const ofCamera = airLines([], items, []).filter(({ label }) => label === camera.label);
    expect(ofCamera).toEqual([
      { label: camera.label, kind: 'in-device', count: 2, labelWh: 14.4 },
      { label: camera.label, kind: 'spare-battery', count: 6, labelWh: 14.4 },
    ]);
  });

  it('takes a bank by its label even where its delivery was measured', () => {
    const measured = {
      ...bank,
      capacity: { as: 'wh' as const, wh: 99 },
      measuredDeliverableWh: { value: 60, on: '2027-02-11' },
    } as Item;
    expect(airLines([{ item: measured, carried: 2 }], [], [])).toEqual([
      { label: bank.label, kind: 'power-bank', count: 2, labelWh: 99 },
    ]);
  });

  it('finds the banks of a scenario', () => {
    const scenario = demoScenarios.find(({ method }) => method === 'banks')!;
    const banks = airLines(carriedItems(scenario, demoItems), [], []);
    expect(banks.length).toBeGreaterThan(0);
    expect(banks.every(({ kind }) => kind === 'power-bank')).toBe(true);
  });
});
