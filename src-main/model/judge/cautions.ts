import type { ItemKind } from '../../../shared-types/item.ts';

/** How the scenarios use what they carry, as far as it calls for a caution. */
export interface Circumstances {
  /** Panel or hub feed devices with no bank in between. */
  readonly feedsDevices: boolean;
}

/** Which kinds or circumstance a caution belongs to; neither: it always shows. */
interface Caution {
  readonly kinds: readonly ItemKind[];
  readonly when?: keyof Circumstances;
  readonly text: string;
}

const cautions: readonly Caution[] = [
  {
    kinds: [],
    text: 'These are estimates, not guarantees: carry a reserve.',
  },
  {
    kinds: [],
    text: 'Lithium cells: charge between 0 and 40 °C only, never below freezing, never unattended or while asleep in a tent, never when damaged, swollen or hot.',
  },
  {
    kinds: ['panel'],
    text: 'Keep the bank in the shade behind the panel: sun heats it far above the air.',
  },
  {
    kinds: ['bank', 'device'],
    text: 'By air, power banks count as spare batteries: cabin only, terminals protected; up to 100 Wh without approval, 100 to 160 Wh with the airline’s approval and at most two, above that not carried. Since 27 March 2026 (ICAO Doc 9284, Addendum 1) at most two power banks a person and none recharged on board. Rules change, and airlines and states may be stricter: ask them.',
  },
  {
    kinds: ['generator-hub'],
    text: 'Have a generator wheel built, and its axle standard checked, by a qualified mechanic. Weight in the front wheel changes handling: test before the tour. Keep cables clear of the spokes.',
  },
  {
    kinds: ['generator-hub', 'converter'],
    text: 'A hub running with nothing connected reaches high voltage at speed: use a converter with surge protection, never connect a phone or bank directly, open no connector with the wheel turning.',
  },
  {
    kinds: [],
    when: 'feedsDevices',
    text: 'A panel or hub that feeds a device directly is unsteady: charging stops and starts, and some devices drain themselves by it or refuse to go on. Try it before the tour; a buffer bank in between is steadier.',
  },
  {
    kinds: [],
    text: 'Lighting and electrical rules are local: follow them, and ask a qualified person where in doubt.',
  },
];

/** The cautions that apply to the kinds of items in play and to their use, in a fixed order. */
export function cautionsFor(kinds: ReadonlySet<ItemKind>, circumstances: Circumstances): readonly string[] {
  return cautions
    .filter((caution) => caution.kinds.length === 0 || caution.kinds.some((kind) => kinds.has(kind)))
    .filter(({ when }) => when === undefined || circumstances[when])
    .map((caution) => caution.text);
}
