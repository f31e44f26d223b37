import type { Port, PortStandard } from '../../../shared-types/port.ts';

/**
 * Most power each standard settles on, W: USB 2.0 0.5 A, USB 3.x 0.9 A, Battery Charging 1.2 1.5 A, Type-C Current 1.5
 * and 3 A, all at 5 V; Power Delivery up to 48 V 5 A (IEC 62680-1-2, -1-3; Battery Charging Specification 1.2).
 */
export const standardLimitW: Readonly<Record<PortStandard, number>> = {
  'usb-2': 2.5,
  'usb-3': 4.5,
  'bc-1.2': 7.5,
  'type-c-1.5a': 7.5,
  'type-c-3a': 15,
  pd: 240,
};

/** Power of a link, W: the least of what source and sink give and of what their standards allow. */
export function linkW(source: Port, sink: Port): number {
  return Math.min(source.powerW, standardLimitW[source.standard], sink.powerW, standardLimitW[sink.standard]);
}
