import { radPerDeg } from '../angle.ts';
import { positionFromHourAngle } from './position.ts';
import type { SunCourse } from './sun-course.ts';

/** How a panel lies. Tilt from flat 0..90; azimuth clockwise from north, 180 faces south. */
export type Plane =
  | { readonly as: 'flat' }
  | { readonly as: 'aimed' }
  | { readonly as: 'fixed'; readonly tiltDeg: number; readonly azimuthDeg: number }
  /** On a bicycle whose road turns: the mean over all headings. */
  | { readonly as: 'any-heading'; readonly tiltDeg: number };

/** A plane under the sun of one day, by step. */
export interface PlaneCourse {
  /** Cosine of the tilt from flat: 1 lies flat. */
  readonly cosTilt: Float64Array;
  /** Cosine of the angle between the sun and the plane's normal; 0 while the sun is behind the plane or down. */
  readonly cosIncidence: Float64Array;
}

/** Lays a plane under the sun of one day. */
export function planeCourse(course: SunCourse, plane: Plane): PlaneCourse {
  const { cosZenith } = course;
  switch (plane.as) {
    case 'flat':
      return { cosTilt: cosZenith.map(() => 1), cosIncidence: cosZenith };
    case 'aimed':
      return { cosTilt: cosZenith, cosIncidence: cosZenith.map((cosine) => (cosine > 0 ? 1 : 0)) };
    case 'fixed':
      return tilted(course, plane.tiltDeg, (_, step) =>
        cosIncidence(zenithAndAzimuth(course, step), plane.tiltDeg, plane.azimuthDeg),
      );
    case 'any-heading':
      return tilted(course, plane.tiltDeg, (cosine) => meanOverHeadings(cosine, plane.tiltDeg));
  }
}

function tilted(
  course: SunCourse,
  tiltDeg: number,
  incidence: (cosZenith: number, step: number) => number,
): PlaneCourse {
  const cosTilt = Math.cos(tiltDeg * radPerDeg);
  return {
    cosTilt: course.cosZenith.map(() => cosTilt),
    cosIncidence: course.cosZenith.map((cosine, step) =>
      cosine > 0 ? Math.max(0, incidence(cosine, step)) : 0,
    ),
  };
}

interface SunDirection {
  readonly zenithDeg: number;
  readonly azimuthDeg: number;
}

function zenithAndAzimuth(course: SunCourse, step: number): SunDirection {
  return positionFromHourAngle(course.hourAngleRad[step]!, course.declinationRad, course.latRad);
}

/** Cosine of the angle of incidence on a tilted plane; negative behind it. Azimuths clockwise from north. */
export function cosIncidence(sun: SunDirection, tiltDeg: number, planeAzimuthDeg: number): number {
  const zenith = sun.zenithDeg * radPerDeg;
  const tilt = tiltDeg * radPerDeg;
  const turn = (sun.azimuthDeg - planeAzimuthDeg) * radPerDeg;
  return Math.cos(zenith) * Math.cos(tilt) + Math.sin(zenith) * Math.sin(tilt) * Math.cos(turn);
}

/**
 * Mean over all headings of the cosine of incidence, counted 0 where the sun is behind the plane. With A = cos z cos b and
 * B = sin z sin b the cosine is A + B cos h; its positive part is integrated in closed form over the heading h.
 */
export function meanOverHeadings(cosZenith: number, tiltDeg: number): number {
  const tilt = tiltDeg * radPerDeg;
  const constant = cosZenith * Math.cos(tilt);
  const turning = Math.sqrt(Math.max(0, 1 - cosZenith ** 2)) * Math.sin(tilt);
  if (constant >= turning) return constant;
  const edge = Math.acos(-constant / turning);
  return (constant * edge + turning * Math.sin(edge)) / Math.PI;
}
