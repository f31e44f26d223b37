import type { WallOrderChange } from '../../../shared-types/comparison.ts';
import { wattHours } from '../../../shared-types/figures.ts';

const otherOrder: Readonly<Record<WallOrderChange['other'], string>> = {
  'banks-first': 'Banks first at walls',
  'devices-first': 'Devices first at walls',
};

/** Less than this over a whole tour changes nothing, Wh. */
const worthSayingWh = 0.05;

/** What the other order at a wall would change over the tour, on average of the histories. */
export function wallOrderText({ other, lostWh, unservedWh }: WallOrderChange, locale?: string): string {
  const changes = [
    ...change(lostWh, 'lose', '', locale),
    ...change(unservedWh, 'leave', ' unserved', locale),
  ];
  const [first, ...rest] = changes;
  const words = first === undefined ? 'change nothing' : [`${first} over the tour`, ...rest].join(' and ');
  return `${otherOrder[other]} would ${words}.`;
}

function change(wh: number, verb: string, ending: string, locale?: string): readonly string[] {
  if (Math.abs(wh) < worthSayingWh) return [];
  return [`${verb} ${wattHours(Math.abs(wh), locale)} ${wh > 0 ? 'more' : 'less'}${ending}`];
}
