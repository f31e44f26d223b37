import { z } from 'zod';
import { choice, quantity } from './field.ts';

/** The agreements by which a plug and a socket settle their power. Limits in watts: src-main/model/storage/port-power.ts. */
export const portStandard = choice(
  {
    'usb-2': 'USB 2.0',
    'usb-3': 'USB 3.x',
    'bc-1.2': 'Battery Charging 1.2',
    'type-c-1.5a': 'Type-C 1.5 A',
    'type-c-3a': 'Type-C 3 A',
    pd: 'Power Delivery',
  },
  { label: 'Port standard' },
);
export type PortStandard = z.infer<typeof portStandard>;

/** What a sink is charged through. Limits in watts stand beside those of the standards. */
export const cable = choice(
  { 'a-plug': 'With an A plug', 'c-3a': 'C to C', 'c-5a': 'C to C, marked 5 A' },
  {
    label: 'Cable',
    hint: 'The least of source, cable and sink counts. An A plug passes 15 W, C to C 60 W, with a 5 A mark 240 W.',
  },
);
export type Cable = z.infer<typeof cable>;

/** One socket or plug: its standard and the most it gives or takes, W. */
export const port = z.strictObject({
  standard: portStandard,
  powerW: quantity({ label: 'Port power', unit: 'W', min: 0.1, max: 240 }),
});
export type Port = z.infer<typeof port>;

/** The socket of a sink, with the cable it is charged through. */
export const sinkPort = port.extend({ cable });
export type SinkPort = z.infer<typeof sinkPort>;

/** Most power of a C to C cable that is not marked for 5 A, W: 20 V 3 A (IEC 62680-1-2). */
export const unmarkedCableW = 60;

const usualPlug: Readonly<Record<PortStandard, Cable>> = {
  'usb-2': 'a-plug',
  'usb-3': 'a-plug',
  'bc-1.2': 'a-plug',
  'type-c-1.5a': 'c-3a',
  'type-c-3a': 'c-3a',
  pd: 'c-3a',
};

/** The cable a sink comes with, which never holds its port back (common practice, no source). */
export function usualCable({ standard, powerW }: Port): Cable {
  return powerW > unmarkedCableW && standard === 'pd' ? 'c-5a' : usualPlug[standard];
}
