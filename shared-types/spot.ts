import { quantity } from './field.ts';

/** Where on earth, as legs and tracks give it. */
export const latDeg = quantity({ label: 'Latitude', unit: '° north', min: -90, max: 90, step: 0.001 });
export const lonDeg = quantity({ label: 'Longitude', unit: '° east', min: -180, max: 180, step: 0.001 });
export const elevationM = quantity({ label: 'Height', unit: 'm', min: -450, max: 6000, isHeight: true });
