import fc from 'fast-check';
import { isoDateOf, noonOf } from '../../src-main/model/sun/calendar.ts';

/* Places and days from end to end of what the workbench takes, the poles and their seasons among them. */

export const anyLatDeg = fc.oneof(
  fc.double({ min: -90, max: 90, noNaN: true }),
  fc.constantFrom(-90, -66.56, 0, 66.56, 90),
);
export const anyHeightM = fc.double({ min: -450, max: 6000, noNaN: true });
export const anyDate = fc.oneof(
  fc.integer({ min: 0, max: 800 }).map((days) => isoDateOf(noonOf('2027-01-01', days))),
  fc.constantFrom('2028-02-29', '2027-12-31', '2028-01-01', '2027-03-20', '2027-06-21', '2027-12-21'),
);
/** Steps of 5, 15, 30 and 60 minutes. */
export const anyStepsPerDay = fc.constantFrom(288, 96, 48, 24);
export const anyClearness = fc.double({ min: 0, max: 1, noNaN: true });
