import { describe, expect, it } from 'vitest';
import { noLimits } from '../../../../shared-types/limits.ts';
import { demoItems } from '../../../../db/demo/demo.ts';
import type { KitSearchRequest } from '../../../../shared-types/kit-search.ts';
import { listItems, saveItem, setItemState } from '../../../../src-main/catalogue/items.ts';
import type { OpenedCatalogue } from '../../../../src-main/catalogue/open.ts';
import {
  linesOf,
  prepareSearch,
  type PreparedSearch,
} from '../../../../src-main/workbench/kit-search/prepare-search.ts';
import { openedDemo } from '../../catalogue/temporary-catalogue.ts';

const asked = (changes: Partial<KitSearchRequest> = {}): KitSearchRequest => ({
  ...{ tourId: 'demo-tour', scenarioId: 'demo-banks', choices: [], limits: noLimits },
  ...changes,
});
const choice = (itemId: string, chosen: 'must' | 'may' | 'not') => ({ itemId, choice: chosen });

function ready(changes: Partial<KitSearchRequest> = {}, catalogue = openedDemo()): PreparedSearch {
  const outcome = prepareSearch(catalogue, asked(changes), 300);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
}

const idsIn = (search: PreparedSearch): readonly (readonly string[])[] =>
  search.kits.map((kit) => linesOf(kit, search.options).map(({ item }) => item.id));

/** The demo with more banks than a search can try. */
function withManyBanks(count: number): OpenedCatalogue {
  const catalogue = openedDemo();
  const { id: _, ...bank } = demoItems.find(({ id }) => id === 'demo-bank-10')!;
  for (let more = 0; more < count; more += 1)
    saveItem(catalogue.write, { ...bank, label: `Bank ${more}`, state: 'considering' });
  return catalogue;
}

describe('prepareSearch()', { timeout: 30_000 }, () => {
  it.each([
    { changes: { tourId: 'gone' }, named: 'That tour is not' },
    { changes: { scenarioId: 'gone' }, named: 'That scenario is not' },
  ])('says what is not there: $named', ({ changes, named }) => {
    const outcome = prepareSearch(openedDemo(), asked(changes), 300);
    expect(outcome).toMatchObject({
      ...{ ok: false, error: { code: 'not-found', message: expect.stringContaining(named) as string } },
    });
  });

  it('says so when nothing is left to put a kit together from', () => {
    const catalogue = openedDemo();
    for (const { id } of listItems(catalogue.read)) setItemState(catalogue.write, id, 'retired');
    const outcome = prepareSearch(catalogue, asked(), 300);
    expect(outcome).toMatchObject({ ok: false, error: { code: 'bad-input' } });
    expect(!outcome.ok && outcome.error.message).toContain('own or consider a bank');
  });

  it('says of 40 items how many kits and how long, and what to do', () => {
    const outcome = prepareSearch(withManyBanks(32), asked(), 300);
    if (outcome.ok) throw new Error('It took 40 items.');
    // 2 to the power of 40 kits at 300 a second, by hand: 116 years.
    expect(outcome.error.message).toContain('40 items');
    expect(outcome.error.message).toContain('1,099,511,627,776 kits');
    expect(outcome.error.message).toContain('116 years');
    expect(outcome.error.message).toContain('must come or stay out');
    expect(outcome.error.fields[0]!.path).toBe('choices');
  });

  it('leaves out what stays out, and has what must come in every kit', () => {
    const search = ready({ choices: [choice('demo-bank-20', 'must'), choice('demo-panel-20', 'not')] });
    for (const ids of idsIn(search)) {
      expect(ids).toContain('demo-bank-20');
      expect(ids).not.toContain('demo-panel-20');
    }
    expect(search.kits.length).toBeGreaterThan(3);
  });

  it('brings the hub’s cable with the hub and never without', () => {
    const kits = idsIn(ready());
    const withHub = kits.filter((ids) => ids.includes('demo-hub-3'));
    expect(withHub.length).toBeGreaterThan(0);
    for (const ids of kits) expect(ids.includes('demo-hub-cable')).toBe(ids.includes('demo-hub-3'));
  });

  it.each([
    { limits: { toBuy: 100 }, within: (kit: PreparedSearch['kits'][number]) => kit.toBuyMinor <= 10_000 },
    { limits: { grams: 600 }, within: (kit: PreparedSearch['kits'][number]) => kit.grams <= 600 },
    {
      limits: { frontWheelGrams: 100 },
      within: (kit: PreparedSearch['kits'][number]) => kit.frontWheelGrams <= 100,
    },
  ])('holds every kit within $limits', ({ limits, within }) => {
    const [all, some] = [ready(), ready({ limits: { ...noLimits, ...limits } })];
    expect(some.kits.length).toBeGreaterThan(0);
    expect(some.kits.length).toBeLessThan(all.kits.length);
    for (const kit of some.kits) expect(within(kit)).toBe(true);
  });

  it('takes a third bank only where nothing has to fly', () => {
    const catalogue = withManyBanks(1);
    const banks = (ids: readonly string[]): number =>
      ids.filter((id) => !id.startsWith('demo-') || id.startsWith('demo-bank')).length;
    expect(Math.max(...idsIn(ready({}, catalogue)).map(banks))).toBe(3);
    const byAir = ready({ limits: { ...noLimits, byAir: true } }, catalogue);
    expect(Math.max(...idsIn(byAir).map(banks))).toBe(2);
  });

  it('never counts money of another currency as if it were the rider’s', () => {
    const catalogue = openedDemo();
    const { id, ...panel } = demoItems.find((item) => item.id === 'demo-panel-20')!;
    saveItem(catalogue.write, { ...panel, price: { minor: 9000, currency: 'USD' } }, id);
    const search = ready({}, catalogue);
    expect(search.otherMoney.map(({ label }) => label)).toEqual(['20 W folding panel']);
    for (const ids of idsIn(search)) expect(ids).not.toContain('demo-panel-20');
  });

  it('walks no kit with an item that does nothing', () => {
    const search = ready();
    for (const ids of idsIn(search)) {
      expect(ids.includes('demo-converter')).toBe(ids.includes('demo-hub-3'));
      expect(ids).not.toContain('demo-cables');
    }
    expect(search.idle).toBeGreaterThan(0);
  });
});
