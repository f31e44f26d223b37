import { describe, expect, it } from 'vitest';
import { niceLine, stopFinding } from '../../../../src-renderer/views/stop-planner/finding.ts';
import { lanesTable } from '../../../../src-renderer/views/stop-planner/lanes-table.ts';
import { ticksOf } from '../../../../src-renderer/views/stop-planner/ticks.ts';
import { stopAnswer } from '../../support/fake-stops.ts';

const plain = (text: string | null): string => (text ?? '').replaceAll('\u00a0', ' ');

describe('what a stop comes to', () => {
  it.each([
    [{ lanes: [] }, 'Nothing to plug in'],
    [{}, 'Must-haves last until the next wall, 7 Wh more than without this stop'],
    [
      { mustHaves: { needWh: 40, servedWh: 25 } },
      'Must-haves have 25 Wh of the 40 Wh they need, 22 Wh more than without this stop',
    ],
    [{ without: { mustHavesWh: 10, niceToHavesWh: 0 } }, 'Must-haves last until the next wall'],
    [{ mustHaves: { needWh: 0, servedWh: 0 } }, 'Nice-to-haves have 1 Wh of the 4 Wh they need'],
    [
      { mustHaves: { needWh: 0, servedWh: 0 }, niceToHaves: { needWh: 0, servedWh: 0 } },
      'Nothing is used until the next wall; batteries and banks fill up',
    ],
  ])('is said in a sentence: %j', (change, words) => {
    expect(plain(stopFinding(stopAnswer(change)))).toBe(words);
  });

  it('names nice-to-haves only where some are used', () => {
    expect(plain(niceLine(stopAnswer()))).toBe(
      'Nice-to-haves: 1 Wh of the 4 Wh they need (without this stop 0 Wh).',
    );
    expect(niceLine(stopAnswer({ niceToHaves: { needWh: 0, servedWh: 0 } }))).toBeNull();
  });
});

describe('the lanes', () => {
  it('have a row in the table for each time something hangs on a port', () => {
    expect(lanesTable(stopAnswer()).rows).toEqual([
      ['Cube', 'port 1', 'Phone', 0, 35, 15],
      ['Cube', 'port 1', 'Bank', 35, 60, 10],
    ]);
  });

  it.each([5, 35, 45, 60, 95, 240, 600])(
    'name the first and last of %i minutes and few between',
    (minutes) => {
      const ticks = ticksOf(minutes);
      expect([ticks[0], ticks.at(-1)]).toEqual([0, minutes]);
      expect(ticks.length).toBeLessThanOrEqual(10);
      expect([...ticks].sort((a, b) => a - b)).toEqual(ticks);
    },
  );
});
