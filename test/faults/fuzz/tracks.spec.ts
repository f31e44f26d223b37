import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { largestTrackPart, type CallName } from '../../../shared-types/contract.ts';
import type { Outcome } from '../../../shared-types/outcome.ts';
import type { TrackProfile } from '../../../shared-types/track.ts';
import { caseBook } from './case-book.ts';
import { openFuzzed, type FuzzedWorkbench } from './fuzzed-workbench.ts';
import { anyGpx, cutAt, cutPlaces } from './gpx-files.ts';
import { tryCases } from './seeds.ts';
import { shortTour } from './start-rows.ts';

async function begun({ ask }: FuzzedWorkbench): Promise<string> {
  const outcome = await ask('tracks.begin', { name: 'a track.gpx', bytes: 0 });
  expect(outcome).toMatchObject({ ok: true });
  return (outcome as { readonly value: { readonly trackId: string } }).value.trackId;
}

/** Hands over a file part by part as a page does, which stops at the first error. */
async function takenIn(workbench: FuzzedWorkbench, parts: readonly string[]): Promise<Outcome<unknown>> {
  const { ask } = workbench;
  const trackId = await begun(workbench);
  for (const text of parts) {
    const added = await ask('tracks.add', { trackId, text });
    if (!added.ok) return added;
  }
  return ask('tracks.finish', { trackId });
}

/** Of a refusal the code: what is overlong and wrong as well is told by the one or the other, by where a part ended. */
function tellingOf(outcome: Outcome<unknown>): unknown {
  return outcome.ok ? outcome.value : outcome.error.code;
}

/** A track that was taken in is one that a leg can have. */
async function expectLegTakes({ ask }: FuzzedWorkbench, track: TrackProfile): Promise<void> {
  const tour = shortTour();
  const terrain = {
    as: 'track',
    terrainClass: 'rolling',
    pace: track.timedShare > 0 ? 'recorded' : 'computed',
    track,
  };
  const legs = tour.legs.map((leg) => ({ ...leg, terrain }));
  expect(await ask('tours.save', { tour: { ...tour, legs } })).toMatchObject({ ok: true });
}

describe('a GPX file, whatever it holds', () => {
  const book = caseBook('GPX files');
  it('is the same to the reader in one part and in many, and fits a leg or is refused', async () => {
    const workbench = await openFuzzed(book);
    await tryCases(
      fc.asyncProperty(anyGpx, cutPlaces, async (text, places) => {
        book.count();
        workbench.tables.restore();
        const inParts = await takenIn(workbench, cutAt(text, places));
        expect(tellingOf(inParts)).toEqual(tellingOf(await takenIn(workbench, [text])));
        if (inParts.ok) await expectLegTakes(workbench, inParts.value as TrackProfile);
      }),
      60,
      1800,
    );
  });
});

interface Turn {
  readonly call: Extract<CallName, `tracks.${string}`>;
  /** Which of the tracks begun so far; there may be none of that number. */
  readonly track: number;
  readonly text: string;
}

const turn: fc.Arbitrary<Turn> = fc.record({
  call: fc.constantFrom('tracks.begin', 'tracks.add', 'tracks.add', 'tracks.finish', 'tracks.drop'),
  track: fc.nat({ max: 6 }),
  text: fc.oneof(
    { weight: 4, arbitrary: fc.tuple(anyGpx, cutPlaces).map(([text, places]) => cutAt(text, places)[0]!) },
    { weight: 1, arbitrary: fc.constant(' '.repeat(largestTrackPart + 1)) },
  ),
});

describe('parts of several GPX files in any order', () => {
  const book = caseBook('GPX turns');
  it('are each answered', async () => {
    const workbench = await openFuzzed(book);
    await tryCases(
      fc.asyncProperty(fc.array(turn, { maxLength: 12, size: 'max' }), async (turns) => {
        book.count();
        const ids: string[] = [];
        for (const { call, track, text } of turns) {
          const trackId = ids[track % (ids.length + 1)] ?? 'never-begun';
          if (call === 'tracks.begin') ids.push(await begun(workbench));
          else await workbench.ask(call, call === 'tracks.add' ? { trackId, text } : { trackId });
        }
      }),
      20,
      400,
    );
  });
});
