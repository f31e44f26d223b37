import { createSky } from '../../sun/day-sky.ts';
import type { Skies } from '../../sun/history/draw-skies.ts';
import { addPanelPower, type LaidPanels } from '../panel-power.ts';
import type { TourSun } from '../tour-sun.ts';

/** What all panels of a kit give in each history, W at their plugs, one entry a step of the walk. */
export interface PanelHistories {
  readonly byHistory: readonly Float32Array[];
  /** The mean over the histories. */
  readonly meanW: Float64Array;
}

/**
 * Lets the drawn skies shine on laid panels.
 *
 * @param stepsPerDay of the walk; light is reckoned in as many or a multiple, and averaged
 */
export function panelHistories(
  laid: LaidPanels,
  sun: TourSun,
  skies: Skies,
  stepsPerDay: number,
): PanelHistories {
  const steps = skies.days * stepsPerDay;
  const meanW = new Float64Array(steps);
  if (laid.panels.length === 0 || laid.places.length === 0) {
    const dark = new Float32Array(steps);
    return { byHistory: Array.from({ length: skies.histories }, () => dark), meanW };
  }
  const light = new Float64Array(sun.airDegC.length);
  // Every panel writes into the one array: their powers add up.
  const outputs = laid.panels.map(() => light);
  const sky = createSky(sun.stepsPerDay);
  const finer = sun.stepsPerDay / stepsPerDay;
  const byHistory = Array.from({ length: skies.histories }, (_, history) => {
    light.fill(0);
    addPanelPower(laid, sun, skies, history, outputs, sky);
    const panelW = new Float32Array(steps);
    addMeans(light, finer, panelW);
    for (let step = 0; step < steps; step += 1) meanW[step]! += panelW[step]! / skies.histories;
    return panelW;
  });
  return { byHistory, meanW };
}

/** Means over runs of `length` entries. */
function addMeans(values: Float64Array, length: number, means: Float32Array): void {
  for (let at = 0; at < means.length; at += 1) {
    let sum = 0;
    for (let k = 0; k < length; k += 1) sum += values[at * length + k]!;
    means[at] = sum / length;
  }
}
