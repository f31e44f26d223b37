import type { StopSituation, StopStore } from '../../src-main/model/judge/stop-plan/situation.ts';
import { weighed, worthOf } from '../../src-main/model/judge/stop-plan/worth.ts';
import { linkW, sinkLimitW } from '../../src-main/model/storage/port-power.ts';
import { storedAfterWh } from '../../src-main/model/storage/taper.ts';

/** A charge ends at this share. */
const fullShare = 0.98;

interface Socket {
  readonly charger: number;
  readonly port: number;
}

/** By store: where it hangs, null for nowhere. */
type Plugging = readonly (Socket | null)[];

/**
 * The most that any plan reaches, weighed, by trying every plugging in every slot: no bound, no merging of ports, no order of
 * slots taken for another. Only sequences that leave exactly the same stored are followed once.
 *
 * @param stop with its stores in the order of service
 * @param hours length of each slot
 */
export function bestOfEveryPlan(stop: StopSituation, hours: readonly number[]): number {
  const pluggings = everyPlugging(stop);
  let reached = new Map([['', stop.stores.map(({ storedWh }) => storedWh)]]);
  for (const length of hours) {
    const next = new Map<string, number[]>();
    for (const storedWh of reached.values())
      for (const plugging of pluggings) {
        const after = charged(stop, storedWh, plugging, length);
        next.set(after.join(), after);
      }
    reached = next;
  }
  return Math.max(...[...reached.values()].map((storedWh) => weighed(worthOf(stop.stores, storedWh))));
}

function everyPlugging({ stores, chargers, outlets }: StopSituation): readonly Plugging[] {
  const sockets = chargers.flatMap(({ outputs }, charger) => outputs.map((_, port) => ({ charger, port })));
  let all: readonly Plugging[] = [[]];
  for (let store = 0; store < stores.length; store += 1)
    all = all.flatMap((plugging) => [
      [...plugging, null],
      ...sockets.filter((socket) => !plugging.includes(socket)).map((socket) => [...plugging, socket]),
    ]);
  const chargersIn = (plugging: Plugging): number =>
    new Set(plugging.flatMap((socket) => (socket === null ? [] : [socket.charger]))).size;
  return all.filter((plugging) => chargersIn(plugging) <= outlets);
}

function charged(
  { stores, chargers }: StopSituation,
  storedWh: readonly number[],
  plugging: Plugging,
  hours: number,
): number[] {
  const leftWh = chargers.map(({ totalW }) => totalW * hours);
  return storedWh.map((beforeWh, place) => {
    const store = stores[place]!;
    const socket = plugging[place];
    if (socket === null || socket === undefined) return beforeWh;
    const output = chargers[socket.charger]!.outputs[socket.port]!;
    const powerW = Math.min(linkW(output, store.input), leftWh[socket.charger]! / hours);
    const afterWh = filled(store, beforeWh, powerW, hours);
    leftWh[socket.charger]! -= (afterWh - beforeWh) / store.efficiencyIn;
    return afterWh;
  });
}

function filled(store: StopStore, beforeWh: number, powerW: number, hours: number): number {
  const { capacityWh, taperRoomWh, input, efficiencyIn } = store;
  const limitW = sinkLimitW(input) * efficiencyIn;
  const afterWh = storedAfterWh(beforeWh, capacityWh, taperRoomWh, powerW * efficiencyIn, limitW, hours);
  return Math.min(afterWh, Math.max(beforeWh, fullShare * capacityWh));
}
