import type { Port, SinkPort } from '../../../shared-types/port.ts';
import type { RidesWhere } from './cell-warmth.ts';

/** A power bank. Energy is counted inside the cells; plugs see it through the two efficiencies. */
export interface BankModel {
  readonly label: string;
  /** Order of equals, as for devices. */
  readonly key: string;
  readonly capacityWh: number;
  readonly input: SinkPort;
  readonly outputs: readonly Port[];
  readonly efficiencyIn: number;
  readonly efficiencyOut: number;
  readonly chargesWhileServing: boolean;
  readonly ridesWhere: RidesWhere;
  /** Drawn from the cells while it serves, W. */
  readonly standbyW: number;
  /** Share of what is stored that is lost each day. */
  readonly selfDischargePerDay: number;
}

/** A month as self-discharge figures mean it. */
const daysPerMonth = 30;

/** `2 % a month` as a share lost each day, compounding. */
export function selfDischargePerDay(pctPerMonth: number): number {
  return 1 - (1 - Math.min(pctPerMonth, 99) / 100) ** (1 / daysPerMonth);
}

/**
 * Energy in a full bank's cells, Wh. A measured delivery at the plug is turned back by the loss on the way out, so the
 * loss is never counted twice.
 */
export function bankCapacityWh(
  label: number,
  health: number,
  measuredDeliverableWh: number | null,
  efficiencyOut: number,
): number {
  return measuredDeliverableWh === null ? label * health : measuredDeliverableWh / efficiencyOut;
}
