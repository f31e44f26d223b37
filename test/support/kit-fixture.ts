import type { CostLine, HubCost, MassLine } from '../../shared-types/comparison.ts';
import type { ItemKind } from '../../shared-types/item.ts';
import type { Mount } from '../../shared-types/item-common.ts';
import type { Method } from '../../shared-types/scenario.ts';

export const fixtureCurrency = 'EUR';

/** One line of kit as both the price list and the packing list need it. */
export interface KitLineFixture {
  readonly itemId: string;
  readonly label: string;
  readonly kind: ItemKind;
  readonly mount: Mount;
  readonly owned: boolean;
  readonly quantity: number;
  /** Of the whole line, in cents. */
  readonly wholeMinor: number;
  readonly netG: number;
  readonly frontWheelG: number;
}

const ownedBank: KitLineFixture = {
  itemId: 'bank-20',
  label: '20 Ah bank, 18 W in',
  kind: 'bank',
  mount: 'frame',
  owned: true,
  quantity: 1,
  wholeMinor: 4200,
  netG: 355,
  frontWheelG: 0,
};
const newBank: KitLineFixture = {
  ...ownedBank,
  itemId: 'bank-20-fast',
  label: '20 Ah bank, 30 W in',
  owned: false,
  wholeMinor: 4900,
  netG: 362,
};
const smallBank: KitLineFixture = {
  ...ownedBank,
  itemId: 'bank-10',
  label: '10 Ah bank, 18 W in',
  mount: 'handlebar',
  wholeMinor: 2400,
  netG: 182,
  frontWheelG: 91,
};
const wallCharger: KitLineFixture = {
  itemId: 'charger-30',
  label: '30 W wall charger, two ports',
  kind: 'wall-charger',
  mount: 'rear-rack',
  owned: true,
  quantity: 1,
  wholeMinor: 2600,
  netG: 92,
  frontWheelG: 0,
};
const cables: KitLineFixture = {
  ...wallCharger,
  itemId: 'cable-short',
  label: 'Short charging cable',
  kind: 'accessory',
  quantity: 2,
  wholeMinor: 1400,
  netG: 44,
};
const foldingPanel: KitLineFixture = {
  ...newBank,
  itemId: 'panel-20',
  label: '20 W folding panel',
  kind: 'panel',
  mount: 'rear-rack',
  wholeMinor: 9900,
  netG: 540,
};
const generatorHub: KitLineFixture = {
  ...newBank,
  itemId: 'hub-3',
  label: '3 W generator hub, built into a wheel',
  kind: 'generator-hub',
  mount: 'front-wheel',
  wholeMinor: 19_500,
  netG: 310,
  frontWheelG: 310,
};
const converter: KitLineFixture = {
  ...newBank,
  itemId: 'converter-1',
  label: 'Converter, hub to plug',
  kind: 'converter',
  mount: 'handlebar',
  wholeMinor: 6900,
  netG: 86,
  frontWheelG: 43,
};

export const kitFixture: Readonly<Record<Method, readonly KitLineFixture[]>> = {
  banks: [ownedBank, newBank, wallCharger, cables],
  panel: [foldingPanel, ownedBank, wallCharger, cables],
  hub: [generatorHub, converter, smallBank, wallCharger, cables],
  mix: [generatorHub, converter, foldingPanel, smallBank, wallCharger, cables],
};

const inCents = (minor: number) => ({ minor, currency: fixtureCurrency });

/** The price and the grams of hub and converter above, line by line. */
export const hubCostFixture: HubCost = {
  lines: [
    { part: 'Generator hub', price: inCents(9500), netG: 460 },
    { part: 'Hub it replaces', price: null, netG: -160 },
    { part: 'Spokes', price: inCents(3000), netG: 10 },
    { part: 'Wheel building, labour', price: inCents(7000), netG: 0 },
    { part: 'Converter, hub to plug', price: inCents(6900), netG: 86 },
  ],
  total: inCents(26_400),
  notConverted: [],
  netG: 396,
  frontWheelG: 353,
};

export function costLine(line: KitLineFixture): CostLine {
  const { itemId, label, quantity, owned, wholeMinor } = line;
  return { itemId, label, quantity, owned, whole: { minor: wholeMinor, currency: fixtureCurrency } };
}

export function massLine(line: KitLineFixture): MassLine {
  const { itemId, label, kind, quantity, mount, netG, frontWheelG } = line;
  return { itemId, label, kind, quantity, mount, netG, frontWheelG };
}
