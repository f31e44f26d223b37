import { loadedDragW, plugPowerW, type ConverterModel, type HubModel } from './hub.ts';
import type { RideModel } from './power-balance.ts';
import { steadySpeedKmh } from './solve-speed.ts';
import type { Terrain } from './terrain.ts';

/** What a leg's riding hours are like. */
export interface LegRide {
  readonly meanSpeedKmh: number;
  /** Mean power at the hub converter's plug while riding, W; 0 without hub or converter. */
  readonly hubPlugW: number;
  /** Share of riding time lost to the hub's drag, 0..1: riding the same distance without it would take that much less. */
  readonly dragTimeShare: number;
}

interface Wheel {
  readonly hub: HubModel;
  /** null: the hub turns, loaded by nothing that gives USB power. */
  readonly converter: ConverterModel | null;
}

/**
 * Rides a terrain at steady rider power: a speed for each grade, the time each grade takes, and what the hub gives
 * over that time. Hub drag and speed are solved together.
 *
 * @param riderW power at the pedals, W
 * @param wheel the generator hub and its converter; null for a plain wheel
 */
export function rideLeg(riderW: number, terrain: Terrain, ride: RideModel, wheel: Wheel | null): LegRide {
  const dragged = wheel === null ? null : (kmh: number) => loadedDragW(kmh, wheel.hub);
  const free = timePerKm(riderW, terrain, ride, () => 0);
  const slowed = dragged === null ? free : timePerKm(riderW, terrain, ride, dragged);
  return {
    meanSpeedKmh: 1 / slowed.hoursPerKm,
    hubPlugW: wheel?.converter ? meanPlugW(slowed, wheel.hub, wheel.converter) : 0,
    dragTimeShare: 1 - free.hoursPerKm / slowed.hoursPerKm,
  };
}

interface Pace {
  readonly hoursPerKm: number;
  readonly stretches: readonly { readonly speedKmh: number; readonly hours: number }[];
}

function timePerKm(
  riderW: number,
  terrain: Terrain,
  ride: RideModel,
  dragW: (speedKmh: number) => number,
): Pace {
  const stretches = terrain.grades.map(({ gradePct, share }) => {
    const speedKmh = steadySpeedKmh(riderW, gradePct / 100, ride, dragW);
    return { speedKmh, hours: share / speedKmh };
  });
  const km = terrain.grades.reduce((sum, { share }) => sum + share, 0);
  return { stretches, hoursPerKm: stretches.reduce((sum, { hours }) => sum + hours, 0) / km };
}

function meanPlugW(pace: Pace, hub: HubModel, converter: ConverterModel): number {
  const hours = pace.stretches.reduce((sum, stretch) => sum + stretch.hours, 0);
  const wh = pace.stretches.reduce(
    (sum, stretch) => sum + plugPowerW(stretch.speedKmh, hub, converter) * stretch.hours,
    0,
  );
  return wh / hours;
}
