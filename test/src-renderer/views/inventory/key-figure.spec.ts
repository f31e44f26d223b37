import { describe, expect, it } from 'vitest';
import type { Item } from '../../../../shared-types/item.ts';
import { keyFigure } from '../../../../src-renderer/views/inventory/key-figure.ts';
import { usualItem } from '../../../../shared-types/usual-item.ts';

const figure = (item: object): string =>
  keyFigure({ id: 'a', ...item } as Item, 'en-GB').replaceAll(/\s/g, ' ');

describe('keyFigure()', () => {
  it('has nothing to say of a cable', () => {
    expect(figure(usualItem('accessory', 'EUR'))).toBe('');
  });

  it('puts what was measured beside the label', () => {
    const bank = usualItem('bank', 'EUR');
    expect(figure(bank)).toBe('37 Wh label');
    expect(figure({ ...bank, measuredDeliverableWh: { value: 26, on: '2026-03-14' } })).toBe(
      '37 Wh label, 26 Wh measured',
    );
    const panel = usualItem('panel', 'EUR');
    expect(figure(panel)).toBe('15 W rated');
    expect(figure({ ...panel, measuredRatedW: { value: 11.5, on: '2026-03-14' } })).toBe(
      '15 W rated, 11.5 W measured',
    );
  });

  it('gives capacity and use of a device', () => {
    const device = usualItem('device', 'EUR');
    expect(figure(device)).toBe('11 Wh, 0.5 W riding');
    expect(figure({ ...device, use: { as: 'day', whPerDay: 4.5 } })).toBe('11 Wh, 4.5 Wh a day');
  });

  it('gives rating or peak of a generator hub', () => {
    const hub = usualItem('generator-hub', 'EUR');
    expect(figure(hub)).toBe('3 W at 15 km/h');
    const points = [
      { speedKmh: 10, powerW: 2 },
      { speedKmh: 30, powerW: 5.5 },
      { speedKmh: 40, powerW: 5 },
    ];
    const measured = (readAt: string) => figure({ ...hub, power: { as: 'curve', readAt, points } });
    expect(measured('hub')).toBe('measured at the hub, up to 5.5 W');
    expect(measured('plug')).toBe('measured at the plug, up to 5.5 W');
  });

  it('gives what turns hub and wall power into USB power', () => {
    expect(figure(usualItem('converter', 'EUR'))).toBe('80 %, from 10 km/h');
    expect(figure(usualItem('wall-charger', 'EUR'))).toBe('20 W, 1 port');
  });
});
