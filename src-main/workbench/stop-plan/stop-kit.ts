import type { Item } from '../../../shared-types/item.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import { pieceLabel } from '../../../shared-types/stop-plan.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import type { StopCharger, StopStore } from '../../model/judge/stop-plan/situation.ts';
import type { BankModel } from '../../model/storage/bank.ts';
import { deviceEfficiencyIn, type DeviceModel } from '../../model/storage/device.ts';
import { taperRoomWh } from '../../model/storage/taper.ts';
import {
  bankModels,
  carriedItems,
  chargerModels,
  ofKind,
  travellingDevices,
  travellingItems,
} from '../assemble/kit.ts';

/** One device or bank that comes along. */
export interface Piece {
  readonly itemId: string;
  readonly copy: number;
  /** Indicator lights; 0 for a device. */
  readonly lights: number;
  /** Null for a bank. */
  readonly device: DeviceModel | null;
  readonly store: Omit<StopStore, 'storedWh' | 'needWh'>;
}

/** What of a kit matters at a wall. */
export interface StopKit {
  readonly pieces: readonly Piece[];
  readonly chargers: readonly StopCharger[];
  /** Gives energy on the way as well, which a stop plan leaves out. */
  readonly hasOtherSource: boolean;
}

export function stopKit(tour: Tour, scenario: Scenario, items: readonly Item[]): StopKit {
  const lines = carriedItems(scenario, items);
  const chargers = ofKind(lines, 'wall-charger').flatMap((line) =>
    chargerModels([line]).map((model, copy) => ({
      ...model,
      label: pieceLabel(line.item.label, copy, line.carried),
    })),
  );
  return {
    pieces: [...devicesOf(tour, items), ...banksOf(lines)],
    chargers,
    hasOtherSource: ofKind(lines, 'panel').length > 0 || ofKind(lines, 'generator-hub').length > 0,
  };
}

function devicesOf(tour: Tour, items: readonly Item[]): readonly Piece[] {
  return travellingItems(items, tour.leftAtHome).flatMap((item) =>
    travellingDevices([item], []).map((device, copy) => ({
      itemId: item.id,
      copy,
      lights: 0,
      device,
      store: deviceStore(device, pieceLabel(item.label, copy, item.quantity)),
    })),
  );
}

function deviceStore(device: DeviceModel, label: string): Piece['store'] {
  const { key, mustHave, capacityWh, batteryWh, input, efficiencyIn } = device;
  return {
    key,
    label,
    rank: mustHave ? 'must-have' : 'nice-to-have',
    capacityWh,
    taperRoomWh: taperRoomWh(batteryWh),
    input,
    efficiencyIn,
    usableShare: 1,
  };
}

function banksOf(lines: ReturnType<typeof carriedItems>): readonly Piece[] {
  return ofKind(lines, 'bank').flatMap((line) =>
    bankModels([line]).map((bank, copy) => ({
      itemId: line.item.id,
      copy,
      lights: line.item.lights,
      device: null,
      store: bankStore(bank, pieceLabel(line.item.label, copy, line.carried)),
    })),
  );
}

function bankStore({ key, capacityWh, input, efficiencyIn, efficiencyOut }: BankModel, label: string) {
  return {
    key,
    label,
    rank: 'bank',
    capacityWh,
    taperRoomWh: taperRoomWh(capacityWh),
    input,
    efficiencyIn,
    usableShare: efficiencyOut * deviceEfficiencyIn,
  } as const;
}
