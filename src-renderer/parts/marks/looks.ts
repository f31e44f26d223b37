import { methodMarker, type Marker } from '../../../shared-types/method-marker.ts';
import type { Method } from '../../../shared-types/scenario.ts';

/** How a method looks everywhere: a colour and, besides it, a marker and a dash. */
export interface Look {
  /** Name of the custom property that holds the colour. */
  readonly colour: string;
  readonly marker: Marker;
  readonly dash: readonly number[];
}

const methodLooks: Readonly<Record<Method, Look>> = {
  banks: { colour: '--banks', marker: methodMarker.banks, dash: [6, 3] },
  panel: { colour: '--panel', marker: methodMarker.panel, dash: [] },
  hub: { colour: '--hub', marker: methodMarker.hub, dash: [2, 2] },
  mix: { colour: '--mix', marker: methodMarker.mix, dash: [8, 3, 2, 3] },
};

export function lookOf(method: Method): Look {
  return methodLooks[method];
}

/** Dashes for further scenarios of a method that is already drawn. */
const spareDashes: readonly (readonly number[])[] = [
  [10, 4],
  [4, 6],
  [1, 4],
  [12, 3, 1, 3],
  [3, 1],
];

/** One look per scenario, in their order: the colour of its method, and a dash no other of that colour has. */
export function looksOf(methods: readonly Method[]): readonly Look[] {
  return methods.map((method, i) => {
    const before = methods.slice(0, i).filter((each) => each === method).length;
    const look = methodLooks[method];
    return before === 0 ? look : { ...look, dash: spareDashes[(before - 1) % spareDashes.length]! };
  });
}
