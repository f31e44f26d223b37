import type { PortLane, StopPlan, StopStep } from '../../../shared-types/stop-plan.ts';

type Planned = Pick<StopPlan, 'lanes' | 'minutes' | 'stores'>;

/** What the rider does, minute by minute: what goes in where, what is swapped, what comes off. */
export function stopSteps(planned: Planned): readonly StopStep[] {
  return momentsOf(planned).flatMap((minute) => {
    const clauses = [
      ...chargersOut(planned, minute),
      ...chargersIn(planned, minute),
      ...planned.lanes.flatMap((lane) => clausesAt(lane, planned, minute)),
    ];
    return clauses.length === 0 ? [] : [{ minute, text: sentence(clauses) }];
  });
}

/** At the end of the stop the rider packs, which needs no words. */
function momentsOf({ lanes, minutes }: Planned): readonly number[] {
  const ends = lanes.flatMap(({ spans }) =>
    spans.flatMap(({ fromMinute, toMinute }) => [fromMinute, toMinute]),
  );
  return [...new Set(ends)].filter((minute) => minute < minutes).sort((a, b) => a - b);
}

function sentence(clauses: readonly string[]): string {
  const text = clauses.join('; ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function clausesAt(lane: PortLane, { lanes, stores }: Planned, minute: number): readonly string[] {
  const on = lane.spans.find(({ fromMinute }) => fromMinute === minute);
  const off = lane.spans.find(({ toMinute }) => toMinute === minute);
  const where = portWords(lane, lanes);
  const offLabel = off === undefined ? '' : quoted(stores[off.store]!.label);
  if (on === undefined)
    return off !== undefined && isIn(lane.charger, lanes, minute) ? [`take ${offLabel} off ${where}`] : [];
  const onLabel = quoted(stores[on.store]!.label);
  return [
    off === undefined ? `plug ${onLabel} into ${where}` : `on ${where} swap ${offLabel} for ${onLabel}`,
  ];
}

const quoted = (label: string): string => `‘${label}’`;

function portWords({ charger, port }: PortLane, lanes: readonly PortLane[]): string {
  const isOnlyCharger = lanes.every((lane) => lane.charger === charger);
  return isOnlyCharger ? `port ${port}` : `port ${port} of ${quoted(charger)}`;
}

function chargersIn({ lanes }: Planned, minute: number): readonly string[] {
  return chargersOf(lanes)
    .filter((charger) => isIn(charger, lanes, minute) && !wasIn(charger, lanes, minute))
    .map((charger) => `put ${quoted(charger)} into the wall`);
}

/** A charger that does no more leaves its outlet to another. */
function chargersOut({ lanes }: Planned, minute: number): readonly string[] {
  return chargersOf(lanes)
    .filter((charger) => wasIn(charger, lanes, minute) && !isIn(charger, lanes, minute))
    .map((charger) => `take ${quoted(charger)} and what hangs on it out`);
}

function chargersOf(lanes: readonly PortLane[]): readonly string[] {
  return [...new Set(lanes.map(({ charger }) => charger))];
}

/** Something hangs on it from this minute on. */
function isIn(charger: string, lanes: readonly PortLane[], minute: number): boolean {
  return spansOf(charger, lanes).some(
    ({ fromMinute, toMinute }) => fromMinute <= minute && minute < toMinute,
  );
}

/** Something hung on it until this minute. */
function wasIn(charger: string, lanes: readonly PortLane[], minute: number): boolean {
  return spansOf(charger, lanes).some(
    ({ fromMinute, toMinute }) => fromMinute < minute && minute <= toMinute,
  );
}

function spansOf(charger: string, lanes: readonly PortLane[]): PortLane['spans'] {
  return lanes.flatMap((lane) => (lane.charger === charger ? lane.spans : []));
}
