/** A folding panel with its regulator. */
export interface PanelModel {
  /** At 1000 W/m2 and 25 degC. */
  readonly ratedW: number;
  /** Change of power per kelvin, a share: -0.004 is -0.4 %/K. */
  readonly temperatureCoefficientPerK: number;
  /** Cell temperature at 800 W/m2 and 20 degC air. */
  readonly noctDegC: number;
  readonly regulatorEfficiency: number;
  /** Least light at which the regulator starts. */
  readonly startWm2: number;
  /** Most its plug gives. */
  readonly outputW: number;
}

/** Standard test conditions: light and cell temperature of the rating. */
const standardWm2 = 1000;
const standardDegC = 25;
/** Conditions of the nominal operating cell temperature. */
const noctWm2 = 800;
const noctAirDegC = 20;

/** Cell temperature in light (Ross), degC: Tc = Ta + (NOCT - 20)/800 G. */
export function cellDegC(irradianceWm2: number, airDegC: number, noctDegC: number): number {
  return airDegC + ((noctDegC - noctAirDegC) / noctWm2) * irradianceWm2;
}

/** Power of the cells before any regulator, W: linear in light and in temperature; never below 0. */
export function cellPowerW(irradianceWm2: number, cellTemperatureDegC: number, panel: PanelModel): number {
  const warm = 1 + panel.temperatureCoefficientPerK * (cellTemperatureDegC - standardDegC);
  return Math.max(0, panel.ratedW * (irradianceWm2 / standardWm2) * warm);
}

/** Power at the plug, W: 0 below the start threshold, at most what the plug gives. */
export function plugPowerW(irradianceWm2: number, airDegC: number, panel: PanelModel): number {
  if (irradianceWm2 <= 0 || irradianceWm2 < panel.startWm2) return 0;
  const cells = cellPowerW(irradianceWm2, cellDegC(irradianceWm2, airDegC, panel.noctDegC), panel);
  return Math.min(panel.outputW, cells * panel.regulatorEfficiency);
}
