import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoSettings, demoTours } from '../../../db/demo/demo.ts';
import { loadDemoIfEmpty } from '../../../src-main/catalogue/demo.ts';
import { listItems, setItemState } from '../../../src-main/catalogue/items.ts';
import { listScenarios, removeScenario } from '../../../src-main/catalogue/scenarios.ts';
import { readSettings } from '../../../src-main/catalogue/settings.ts';
import { listTours, removeTour } from '../../../src-main/catalogue/tours.ts';
import { opened, openedDemo } from './temporary-catalogue.ts';

const byId = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : 1);

describe('loadDemoIfEmpty()', () => {
  it('stores nothing when one part of it fails', () => {
    const { read, write } = opened();
    write.exec("CREATE TEMP TRIGGER fail BEFORE INSERT ON settings BEGIN SELECT RAISE(ABORT, 'no'); END");
    expect(() => loadDemoIfEmpty(write)).toThrow('no');
    expect([listItems(read), listTours(read), listScenarios(read)]).toEqual([[], [], []]);
  });

  it('stores kit, tour, scenarios and settings', () => {
    const { read } = openedDemo();
    expect(listItems(read).sort(byId)).toEqual([...demoItems].sort(byId));
    expect(listTours(read)).toEqual(demoTours);
    expect(listScenarios(read).sort(byId)).toEqual([...demoScenarios].sort(byId));
    expect(readSettings(read)).toEqual(demoSettings);
  });

  it('does not undo what a rider changed since', () => {
    const { read, write } = openedDemo();
    setItemState(write, 'demo-phone', 'retired');
    loadDemoIfEmpty(write);
    expect(listItems(read).find((item) => item.id === 'demo-phone')?.state).toBe('retired');
    expect(listItems(read)).toHaveLength(demoItems.length);
  });

  it('does not bring back what a rider removed', () => {
    const { read, write } = openedDemo();
    for (const { id } of demoTours) removeTour(write, id);
    for (const { id } of demoScenarios) removeScenario(write, id);
    loadDemoIfEmpty(write);
    expect([listTours(read), listScenarios(read)]).toEqual([[], []]);
  });
});
