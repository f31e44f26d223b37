import type { CallResult } from '../../shared-types/contract.ts';
import { randomStreams, standardNormal, type RandomStream } from '../../src-main/model/random.ts';
import { medianMs } from './measure.ts';
import { withWorkbench, type BenchCall } from './open-bench.ts';

const points = 200_000;
const charactersAPart = 500_000;
const runs = 5;
const bytesAMib = 1024 * 1024;
const msPerS = 1000;

/** A GPX of 200,000 points with heights and times taken in part by part, as a page hands it over: time, and memory at its peak. */
export async function trackFigures(): Promise<Readonly<Record<string, number>>> {
  return withWorkbench(async (call) => {
    const beforeMib = rssMib();
    let peakMib = beforeMib;
    let characters = 0;
    const importMs = await medianMs(
      async () => {
        characters = 0;
        await takeIn(call, (added) => {
          characters += added;
          peakMib = Math.max(peakMib, rssMib());
        });
      },
      { runs },
    );
    const writeMs = await medianMs(() => Array.from(partsOfRide(), (part) => part.length), { runs });
    // The text is made while it is taken in; its making is not the import's.
    const ms = importMs - writeMs;
    return {
      gpxImportMs: ms,
      gpxPointsPerS: (points / ms) * msPerS,
      gpxTextMB: characters / 1e6,
      gpxRssBeforeMiB: beforeMib,
      gpxRssPeakMiB: peakMib,
    };
  });
}

function rssMib(): number {
  return process.memoryUsage.rss() / bytesAMib;
}

/** @param seen after each part, and once the track is boiled down */
async function takeIn(
  call: BenchCall,
  seen: (characters: number) => void,
): Promise<CallResult<'tracks.finish'>> {
  const { trackId } = await call('tracks.begin', { name: 'bench.gpx', bytes: 0 });
  for (const part of partsOfRide()) {
    await call('tracks.add', { trackId, text: part });
    seen(part.length);
  }
  const track = await call('tracks.finish', { trackId });
  seen(0);
  return track;
}

/** A made-up ride of 200,000 points, one every two seconds, in parts; the same each time. */
function* partsOfRide(): Generator<string> {
  const random = randomStreams(1).next().value;
  let part = '<?xml version="1.0"?><gpx xmlns="http://www.topografix.com/GPX/1/1"><trk><trkseg>\n';
  for (let index = 0; index < points; index += 1) {
    part += rideRow(index, random);
    if (part.length < charactersAPart) continue;
    yield part.slice(0, charactersAPart);
    part = part.slice(charactersAPart);
  }
  yield `${part}</trkseg></trk></gpx>`;
}

const startMs = Date.UTC(2027, 4, 3, 6);
const secondsAPoint = 2;
const degreesAPoint = 1e-4;
const pointsAHill = 500;
const hillM = 60;

function rideRow(index: number, random: RandomStream): string {
  const lat = 45 + (index * degreesAPoint) / 2 + standardNormal(random) * 1e-6;
  const lon = 7 + (Math.sin(index / pointsAHill) * degreesAPoint) / 2;
  const heightM = 500 + hillM * Math.sin(index / pointsAHill) + standardNormal(random) / 2;
  const time = new Date(startMs + index * secondsAPoint * msPerS).toISOString();
  return `   <trkpt lat="${lat.toFixed(7)}" lon="${lon.toFixed(7)}">\n    <ele>${heightM.toFixed(1)}</ele>\n    <time>${time}</time>\n   </trkpt>\n`;
}
