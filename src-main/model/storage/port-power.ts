import {
  unmarkedCableW,
  type Cable,
  type Port,
  type PortStandard,
  type SinkPort,
} from '../../../shared-types/port.ts';

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

/**
 * Most power a cable passes, W: anything but 5 V needs Power Delivery, which an A plug has not, so 5 V 3 A; C to C 20 V
 * 3 A; only a cable marked for it 48 V 5 A (IEC 63002 cl. 4.5, IEC 62680-1-2 and -1-3).
 */
export const cableLimitW: Readonly<Record<Cable, number>> = {
  'a-plug': 15,
  'c-3a': unmarkedCableW,
  'c-5a': 240,
};

/** Most power a source gives, W: its own, within its standard. */
export function sourceLimitW({ powerW, standard }: Port): number {
  return Math.min(powerW, standardLimitW[standard]);
}

/** Most power a sink takes through its cable, W. */
export function sinkLimitW(sink: SinkPort): number {
  return Math.min(sourceLimitW(sink), cableLimitW[sink.cable]);
}

/** Power of a link, W: the least of what source, cable and sink give and take, and of what their standards allow. */
export function linkW(source: Port, sink: SinkPort): number {
  return Math.min(sourceLimitW(source), sinkLimitW(sink));
}
