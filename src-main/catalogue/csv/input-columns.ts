import { port, usualCable } from '../../../shared-types/port.ts';
import { number, usually, type Columns } from './column.ts';

/** The cable that is usual for a port; none for what is no port, which is refused by itself. */
function cableOf(input: unknown): string | undefined {
  const parsed = port.safeParse(input);
  return parsed.success ? usualCable(parsed.data) : undefined;
}

/** The port by which a device or a bank is charged. */
export const input = (kind: 'device' | 'bank'): Columns => ({
  input_standard: { path: 'input.standard', reading: 'choice' },
  input_w: number('input.powerW'),
  input_cable: { ...usually(kind).choice('input.cable'), follows: cableOf },
});
