import { describe, it } from 'vitest';
import type { Port, SinkPort } from '../../../../shared-types/port.ts';
import { linkW, sinkLimitW } from '../../../../src-main/model/storage/port-power.ts';
import { expectNear } from '../../../support/near.ts';

const source = (powerW: number, standard: Port['standard'] = 'pd'): Port => ({ standard, powerW });
const sink = (powerW: number, changes: Partial<SinkPort> = {}): SinkPort => ({
  ...{ standard: 'pd', cable: 'c-5a', powerW },
  ...changes,
});

describe('linkW()', () => {
  it.each([
    { holds: 'source', link: [source(12), sink(18)], watts: 12 },
    { holds: 'sink', link: [source(30), sink(18)], watts: 18 },
    { holds: 'cable', link: [source(100), sink(100, { cable: 'c-3a' })], watts: 60 },
    { holds: 'A plug', link: [source(100), sink(100, { cable: 'a-plug' })], watts: 15 },
    { holds: 'standard of the source', link: [source(30, 'usb-2'), sink(18)], watts: 2.5 },
    { holds: 'standard of the sink', link: [source(30), sink(18, { standard: 'usb-3' })], watts: 4.5 },
  ] as const)('is $watts W where the $holds holds it back', ({ link: [from, to], watts }) =>
    expectNear(linkW(from, to), watts, 0, 'link, W'),
  );

  it('gains nothing from a strong cable between weak ports', () =>
    expectNear(linkW(source(7.5, 'bc-1.2'), sink(5, { standard: 'bc-1.2' })), 5, 0, 'link, W'));
});

describe('sinkLimitW()', () => {
  it('is what the sink takes from the strongest source', () => {
    expectNear(sinkLimitW(sink(18)), 18, 0, 'limit, W');
    expectNear(sinkLimitW(sink(18, { cable: 'a-plug' })), 15, 0, 'limit, W');
    expectNear(sinkLimitW(sink(18, { standard: 'usb-2' })), 2.5, 0, 'limit, W');
  });
});
