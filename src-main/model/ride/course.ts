import type { GradeShare, TrackPiece, TrackStretch } from '../../../shared-types/track.ts';
import type { Road } from './power-balance.ts';
import type { Surface } from './terrain.ts';
import type { WindShare } from './winds.ts';

/** A kind of road of a leg; with the speed at which it was ridden, where that was recorded. */
export interface Way extends Road {
  readonly recordedKmh: number | null;
}

/** A piece of a leg: how far it goes on which way, as pairs of an index into `ways` and km. */
export interface CoursePiece {
  readonly parts: readonly { readonly way: number; readonly km: number }[];
}

/** The way of a leg in the order of the ride. Ways are listed once: a speed is solved for each and used in every piece. */
export interface Course {
  readonly ways: readonly Way[];
  readonly pieces: readonly CoursePiece[];
}

/** What the air and the ground of a leg are like, apart from its slopes. */
export interface Surroundings {
  /** Of the tyres on pavement. */
  readonly pavedRolling: number;
  readonly surfaces: readonly Surface[];
  readonly winds: readonly WindShare[];
}

/** Any piece of a terrain class is like the whole: one piece of 1 km. */
export function courseOfClass(grades: readonly GradeShare[], around: Surroundings): Course {
  return courseOf([{ km: 1, stretches: grades.map((grade) => ({ ...grade, speedKmh: null })) }], around);
}

/**
 * The course of a track.
 *
 * @param slopes the grades of its terrain class where the track carries no heights, else null
 * @param recorded whether its recorded speeds are taken
 */
export function courseOfTrack(
  pieces: readonly TrackPiece[],
  slopes: readonly GradeShare[] | null,
  recorded: boolean,
  around: Surroundings,
): Course {
  const plain = pieces.map(({ distanceKm, stretches }) => ({
    km: distanceKm,
    stretches: stretches.flatMap((stretch) => known(stretch, slopes, recorded)),
  }));
  return courseOf(plain, around);
}

/** A recorded speed holds on any slope; without one, unknown slopes are those of the class. */
function known(
  stretch: TrackStretch,
  slopes: readonly GradeShare[] | null,
  recorded: boolean,
): readonly TrackStretch[] {
  const speedKmh = recorded ? stretch.speedKmh : null;
  if (slopes === null || speedKmh !== null) return onListedGrades({ ...stretch, speedKmh });
  return slopes.map(({ gradePct, share }) => ({ gradePct, speedKmh, share: share * stretch.share }));
}

/** Grades are ridden at every 0.2 %: time on a slope bends so little between two that it is off by less than 1 in 1000. */
const listedAPct = 5;
/** So near a listed grade it is one, in parts of the step between two. */
const sameStep = 1e-6;

/**
 * Each stretch of a track has a grade of its own, and a speed would be solved for every one. One between two listed grades is
 * parted among them so that its climb stays.
 */
function onListedGrades(stretch: TrackStretch): readonly TrackStretch[] {
  const steps = Math.round((stretch.gradePct * listedAPct) / sameStep) * sameStep;
  const lower = Math.floor(steps);
  const upperShare = steps - lower;
  const at = (step: number, part: number): TrackStretch => ({
    ...stretch,
    gradePct: step / listedAPct,
    share: stretch.share * part,
  });
  return upperShare < sameStep ? [at(lower, 1)] : [at(lower, 1 - upperShare), at(lower + 1, upperShare)];
}

interface PlainPiece {
  readonly km: number;
  readonly stretches: readonly TrackStretch[];
}

function courseOf(plain: readonly PlainPiece[], around: Surroundings): Course {
  const indices = new Map<string, number>();
  const ways: Way[] = [];
  const indexOf = (way: Way): number => {
    const key = `${way.grade} ${way.rollingCoefficient} ${way.headwindMs} ${way.recordedKmh}`;
    const listed = indices.get(key);
    if (listed !== undefined) return listed;
    indices.set(key, ways.length);
    return ways.push(way) - 1;
  };
  const pieces = plain.map(({ km, stretches }) => ({
    parts: stretches.flatMap((stretch) =>
      spread(stretch, around).map(({ way, share }) => ({ way: indexOf(way), km: km * share })),
    ),
  }));
  return { ways, pieces };
}

/** A stretch over its surfaces and winds. What was recorded had them all in it already: it takes their mean, in calm air. */
function spread(
  { gradePct, speedKmh, share }: TrackStretch,
  around: Surroundings,
): readonly { readonly way: Way; readonly share: number }[] {
  const grade = gradePct / 100;
  if (speedKmh !== null) {
    const rollingCoefficient = around.pavedRolling + meanAdded(around.surfaces);
    return [{ way: { grade, rollingCoefficient, headwindMs: 0, recordedKmh: speedKmh }, share }];
  }
  return around.surfaces.flatMap((surface) =>
    around.winds.map((wind) => ({
      way: {
        grade,
        rollingCoefficient: around.pavedRolling + surface.addedRolling,
        headwindMs: wind.headwindMs,
        recordedKmh: null,
      },
      share: share * surface.share * wind.share,
    })),
  );
}

function meanAdded(surfaces: readonly Surface[]): number {
  return surfaces.reduce((sum, { addedRolling, share }) => sum + addedRolling * share, 0);
}
