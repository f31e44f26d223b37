import { describe, expect, it } from 'vitest';
import { cable } from '../../../../shared-types/port.ts';
import {
  readInput,
  readOutput,
  readOutputs,
  writeInput,
  writeOutputs,
} from '../../../../src-main/catalogue/item-kinds/ports.ts';
import { openedDemo } from '../temporary-catalogue.ts';

describe('readInput()', () => {
  it('throws when an item has lost its port', () => {
    const { write } = openedDemo();
    write.exec("DELETE FROM ports WHERE item_id = 'demo-phone'");
    expect(() => readInput(write, 'demo-phone')).toThrow('Item demo-phone has no port in.');
  });

  it.each(cable.options)('gives back a port with the cable %s', (chosen) => {
    const { write } = openedDemo();
    const input = { standard: 'pd', powerW: 18, cable: chosen } as const;
    writeInput(write, 'demo-cables', input);
    expect(readInput(write, 'demo-cables')).toEqual(input);
  });
});

describe('readOutput()', () => {
  it('throws when an item has lost its outlet', () => {
    const { write } = openedDemo();
    write.exec("DELETE FROM ports WHERE item_id = 'demo-panel-6'");
    expect(() => readOutput(write, 'demo-panel-6')).toThrow('Item demo-panel-6 has no port out.');
  });

  it('tells out from in, and has no cable', () => {
    expect(readOutput(openedDemo().read, 'demo-bank-10')).toEqual({ standard: 'bc-1.2', powerW: 7.5 });
  });
});

describe('readOutputs()', () => {
  it('is empty for an item without any', () => {
    expect(readOutputs(openedDemo().read, 'demo-cables')).toEqual([]);
  });

  it('keeps the order they were written in', () => {
    const { write } = openedDemo();
    const ports = [12, 5, 30, 7.5].map((powerW) => ({ standard: 'pd' as const, powerW }));
    writeOutputs(write, 'demo-cables', ports);
    expect(readOutputs(write, 'demo-cables')).toEqual(ports);
  });
});
