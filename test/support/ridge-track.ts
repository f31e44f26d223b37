/** A made-up GPX track: 20 km east along 57 degrees north, up and down a gentle ridge, a point every 100 m or so. */
export function ridgeTrack(): string {
  const points = Array.from({ length: 201 }, (_, index) => {
    const lon = 24 + index * 0.00165;
    const elevation = 40 + 60 * Math.sin((index / 200) * Math.PI);
    return `<trkpt lat="57" lon="${lon.toFixed(5)}"><ele>${elevation.toFixed(1)}</ele></trkpt>`;
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<gpx version="1.1" creator="made up for a test" xmlns="http://www.topografix.com/GPX/1/1">',
    `<trk><name>Ridge</name><trkseg>${points.join('')}</trkseg></trk></gpx>`,
  ].join('\n');
}
