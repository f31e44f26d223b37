import { demoTours } from '../../../../db/demo/demo.ts';
import type { ItemDraft } from '../../../../shared-types/item.ts';
import { noLimits } from '../../../../shared-types/limits.ts';
import type { NightKind } from '../../../../shared-types/tour.ts';
import { listItems, saveItem } from '../../../../src-main/catalogue/items.ts';
import type { OpenedCatalogue } from '../../../../src-main/catalogue/open.ts';
import { saveSettings } from '../../../../src-main/catalogue/settings.ts';
import { saveTour } from '../../../../src-main/catalogue/tours.ts';
import { randomStreams, uniform } from '../../../../src-main/model/random.ts';
import {
  prepareSearch,
  type PreparedSearch,
} from '../../../../src-main/workbench/kit-search/prepare-search.ts';
import { settingsOf } from '../../../../src-main/workbench/settings-of.ts';
import { openedDemo } from '../../catalogue/temporary-catalogue.ts';

/** As small as a search may be that still has sun, wheel, walls and luck in it. */
const histories = 20;
const days = [2, 3] as const;

/** The demo's items with a stranger's figures: each draw is another kit to search. */
function smallCatalogue(seed: number): OpenedCatalogue {
  const catalogue = openedDemo();
  const stream = randomStreams(seed).next().value;
  const between = (low: number, high: number): number => Math.round(low + uniform(stream) * (high - low));
  for (const { id, ...item } of listItems(catalogue.read)) {
    if (item.kind === 'device') continue;
    const figures = { massG: between(50, 600), price: { ...item.price, minor: between(0, 120) * 100 } };
    const state = uniform(stream) < 0.4 ? ('owned' as const) : ('considering' as const);
    saveItem(catalogue.write, redrawn({ ...item, ...figures, state }, between), id);
  }
  const [{ id, ...tour }] = demoTours as [(typeof demoTours)[number]];
  const pattern: NightKind[] = ['none', 'wall', 'none'];
  const legs = tour.legs.slice(0, 2).map((leg, at) => ({
    ...leg,
    days: days[at]!,
    nights: { ...leg.nights, kinds: pattern.slice(0, between(1, 3)) },
  }));
  saveTour(catalogue.write, { ...tour, legs }, id);
  const settings = settingsOf(catalogue.read);
  saveSettings(catalogue.write, {
    ...settings,
    stepMinutes: '60',
    sky: { ...settings.sky, histories, seed },
  });
  return catalogue;
}

/** Small sources, so that margins differ instead of all reaching the top. */
function redrawn(item: ItemDraft, between: (low: number, high: number) => number): ItemDraft {
  if (item.kind === 'bank')
    return { ...item, measuredDeliverableWh: null, capacity: { as: 'wh', wh: between(5, 60) } };
  if (item.kind === 'panel') return { ...item, ratedW: between(1, 8) };
  return item;
}

/** One item more makes twice the kits: another stays out each time. */
const sometimesOut = ['demo-bank-10', 'demo-panel-6', 'demo-charger-30', 'demo-hub-3'];

/** A search of few kits on a short tour, another for each seed. */
export function smallSearch(seed: number): PreparedSearch {
  const out = ['demo-cables', sometimesOut[seed % sometimesOut.length]!];
  const choices = out.map((itemId) => ({ itemId, choice: 'not' as const }));
  const request = { tourId: 'demo-tour', scenarioId: 'demo-banks', choices, limits: noLimits };
  const outcome = prepareSearch(smallCatalogue(seed), request, 300);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
}
