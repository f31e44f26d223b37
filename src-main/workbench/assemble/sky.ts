import type { SkySettings } from '../../../shared-types/settings.ts';
import type { Placement } from '../../../shared-types/scenario.ts';
import type { PanelDay, PanelPlacement } from '../../model/flow/panel-schedule.ts';
import type { SkyLaw } from '../../model/sun/history/sky-law.ts';
import type { Plane } from '../../model/sun/plane.ts';
import type { Leg } from '../../../shared-types/tour.ts';

/** How the weather follows on, as the rider set it. */
export function skyLawOf({ method, persistence }: SkySettings): SkyLaw {
  return method === 'distribution' ? { method, persistence } : { method };
}

/** A scenario's placement as planes: at rest one tilt and heading, on the rack the mean over all headings. */
export function placementModel(placement: Placement): PanelPlacement {
  const { rackTiltDeg, restTiltDeg, facingDeg } = placement;
  const atRest = (lies: Placement['atStops']): Plane | null => {
    if (lies === 'packed') return null;
    return lies === 'tilted' ? { as: 'fixed', tiltDeg: restTiltDeg, azimuthDeg: facingDeg } : { as: lies };
  };
  const riding = {
    flat: { as: 'flat' },
    tilted: { as: 'any-heading', tiltDeg: rackTiltDeg },
    packed: null,
  } as const;
  return {
    whileRiding: riding[placement.whileRiding],
    atStops: atRest(placement.atStops),
    inCamp: atRest(placement.inCamp),
    rackFactor: placement.rackFactor,
    onlyAtStops: placement.onlyAtStops,
    campFromH: placement.campFromH,
    campToH: placement.campToH,
  };
}

/** In the open from midnight to midnight, as if the whole day were spent in camp. */
export function allDayIn(plane: Plane): PanelPlacement {
  return {
    whileRiding: null,
    atStops: null,
    inCamp: plane,
    rackFactor: 1,
    onlyAtStops: [],
    campFromH: 0,
    campToH: 24,
  };
}

/** A day without a ride: all of it in camp. */
export const restDay: PanelDay = { ridingHours: 0, stops: [] };

export function panelDayOf(leg: Leg): PanelDay {
  return {
    ridingHours: leg.ridingHours,
    stops: leg.dayStops.map(({ label, minutes }) => ({ label, hours: minutes / 60 })),
  };
}
