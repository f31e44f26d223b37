import { describe, expect, it } from 'vitest';
import { readPort } from '../../../../src-main/hosts/loopback/port.ts';

describe('the port asked for', () => {
  it.each(['65536', '-1', '80.5', '0x50', 'eighty', ' 80'])(
    'is refused as "%s", with what is allowed',
    (text) => {
      expect(() => readPort(text)).toThrow(
        `CHARGEWRIGHT_PORT is "${text}": allowed is a whole number from 0 to 65535.`,
      );
    },
  );

  it('is any free one when nothing is asked for', () => {
    expect([readPort(undefined), readPort('')]).toEqual([0, 0]);
  });

  it('is the whole number given', () => {
    expect([readPort('8123'), readPort('65535')]).toEqual([8123, 65_535]);
  });
});
