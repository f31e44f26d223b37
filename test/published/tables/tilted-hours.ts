/** One hour of measured light, and what falls on a plane tilted by 40 degrees facing south, W/m2. */
export interface TiltedHour {
  readonly name: string;
  readonly globalWm2: number;
  readonly beamNormalWm2: number;
  readonly diffuseWm2: number;
  /** Apparent zenith. */
  readonly zenithDeg: number;
  readonly azimuthDeg: number;
  readonly incidenceDeg: number;
  readonly beamOnPlane: number;
  /** With a ground reflectance of 0.40. */
  readonly ground: number;
  readonly isotropic: number;
  readonly hayDavies: number;
  /** Beam, ground and isotropic sky. */
  readonly isotropicTotal: number;
}

/** Facing the sun outside the atmosphere in all three hours, W/m2. */
export const tiltedHoursNormalWm2 = 1321.1655834833;

/** Tests of pvlib-python, tests/test_irradiance.py: one data set for all models of the sky. */
export const tiltedHours: readonly TiltedHour[] = [
  {
    name: 'in the early morning',
    globalWm2: 79.73860422,
    beamNormalWm2: 316.1949056,
    diffuseWm2: 40.46149818,
    zenithDeg: 82.85457044,
    azimuthDeg: 66.71410338,
    incidenceDeg: 99.0239,
    beamOnPlane: 0,
    ground: 3.73105791,
    isotropic: 35.728402,
    hayDavies: 27.177514,
    isotropicTotal: 39.45946,
  },
  {
    name: 'near noon',
    globalWm2: 1042.48031487,
    beamNormalWm2: 939.95469881,
    diffuseWm2: 118.45831879,
    zenithDeg: 10.56413562,
    azimuthDeg: 144.76567754,
    incidenceDeg: 31.8626,
    beamOnPlane: 798.3193928,
    ground: 48.77881252,
    isotropic: 104.601328,
    hayDavies: 102.994862,
    isotropicTotal: 951.699533,
  },
  {
    name: 'in the late afternoon',
    globalWm2: 257.20751138,
    beamNormalWm2: 646.22886049,
    diffuseWm2: 62.03376265,
    zenithDeg: 72.41687122,
    azimuthDeg: 287.04104128,
    incidenceDeg: 87.0284,
    beamOnPlane: 33.50143401,
    ground: 12.03502531,
    isotropic: 54.777191,
    hayDavies: 33.190865,
    isotropicTotal: 100.31365,
  },
];
