/** More points than this are refused: a day at one a second is 86,400. */
export const mostTrackPoints = 500_000;

/** The points of a track in columns, which grow as they fill; only the first `count` entries are points. */
export interface PointStore {
  count: number;
  latDeg: Float64Array;
  lonDeg: Float64Array;
  /** NaN where the file gives none. */
  elevationM: Float64Array;
  /** Seconds since 1970 UTC; NaN where the file gives none. */
  timeS: Float64Array;
  /** The first point of each segment, rising. What lies between two segments was not ridden. */
  readonly segmentStarts: number[];
}

const firstCapacity = 1024;

export function createPointStore(): PointStore {
  return {
    count: 0,
    latDeg: new Float64Array(firstCapacity),
    lonDeg: new Float64Array(firstCapacity),
    elevationM: new Float64Array(firstCapacity),
    timeS: new Float64Array(firstCapacity),
    segmentStarts: [],
  };
}

/** Forgets all points; what comes next begins a segment. */
export function clearPoints(store: PointStore): void {
  store.count = 0;
  store.segmentStarts.length = 0;
}

/** The next point begins a segment. A segment that gets no point leaves no trace. */
export function beginSegment(store: PointStore): void {
  if (store.segmentStarts.at(-1) !== store.count) store.segmentStarts.push(store.count);
}

/** Adds a point, NaN for a height or time it lacks; a point before any segment begins one. */
export function addPoint(
  store: PointStore,
  latDeg: number,
  lonDeg: number,
  elevationM: number,
  timeS: number,
): void {
  if (store.segmentStarts.length === 0) beginSegment(store);
  if (store.count === store.latDeg.length) grow(store);
  store.latDeg[store.count] = latDeg;
  store.lonDeg[store.count] = lonDeg;
  store.elevationM[store.count] = elevationM;
  store.timeS[store.count] = timeS;
  store.count += 1;
}

function grow(store: PointStore): void {
  store.latDeg = doubled(store.latDeg);
  store.lonDeg = doubled(store.lonDeg);
  store.elevationM = doubled(store.elevationM);
  store.timeS = doubled(store.timeS);
}

function doubled(values: Float64Array): Float64Array {
  const larger = new Float64Array(values.length * 2);
  larger.set(values);
  return larger;
}
