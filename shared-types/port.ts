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

/** One socket or plug: its standard and the most it gives or takes, W. */
export const port = z.strictObject({
  standard: portStandard,
  powerW: quantity({ label: 'Port power', unit: 'W', min: 0.1, max: 240 }),
});
export type Port = z.infer<typeof port>;
