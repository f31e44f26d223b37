import { describe, expect, it } from 'vitest';
import { readPort, readPorts, writePorts } from '../../../../src-main/catalogue/item-kinds/ports.ts';
import { openedDemo } from '../temporary-catalogue.ts';

describe('readPort()', () => {
  it('throws when an item has lost its port', () => {
    const { write } = openedDemo();
    write.exec("DELETE FROM ports WHERE item_id = 'demo-phone'");
    expect(() => readPort(write, 'demo-phone', 'in')).toThrow('Item demo-phone has no port in.');
  });

  it('tells in from out', () => {
    const { read } = openedDemo();
    expect(readPort(read, 'demo-bank-10', 'in')).toEqual({ standard: 'type-c-3a', powerW: 10 });
    expect(readPort(read, 'demo-bank-10', 'out')).toEqual({ standard: 'bc-1.2', powerW: 7.5 });
  });
});

describe('readPorts()', () => {
  it('is empty for an item without any', () => {
    expect(readPorts(openedDemo().read, 'demo-cables', 'out')).toEqual([]);
  });

  it('keeps the order they were written in', () => {
    const { write } = openedDemo();
    const ports = [12, 5, 30, 7.5].map((powerW) => ({ standard: 'pd' as const, powerW }));
    writePorts(write, 'demo-cables', 'out', ports);
    expect(readPorts(write, 'demo-cables', 'out')).toEqual(ports);
  });
});
