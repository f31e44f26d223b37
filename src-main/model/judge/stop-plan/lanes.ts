import { sourceLimitW } from '../../storage/port-power.ts';
import type { Grid } from './grid.ts';
import type { StopProblem } from './problem.ts';
import type { StopCharger } from './situation.ts';
import { followSlots, type Slot } from './tidy.ts';
import type { Hang } from './ways.ts';

/** One store on a port without a break. */
export interface Span {
  /** Place in the situation's list. */
  readonly store: number;
  readonly fromMinute: number;
  readonly toMinute: number;
  /** Drawn at the plug, W, in the mean over its first slot. */
  readonly startW: number;
}

/** A port through the stop. */
export interface Lane {
  /** Place in the situation's list. */
  readonly charger: number;
  /** Place among the charger's ports, from 0. */
  readonly port: number;
  /** In order of time. */
  readonly spans: readonly Span[];
}

/** A store on a port of a class. */
interface Socket {
  readonly store: number;
  readonly portClass: number;
  readonly port: number;
}

type Laid = Span & Pick<Lane, 'charger' | 'port'>;

/** The slots of a plan as what hangs on each port that is used, the first charger's first port first. */
export function lanesOf(
  problem: StopProblem,
  chargers: readonly StopCharger[],
  grid: Grid,
  slots: readonly Slot[],
): readonly Lane[] {
  const laid = joined(slotSpans(problem, chargers, grid, slots));
  const used = chargers.flatMap(({ outputs }, charger) => outputs.map((_, port) => ({ charger, port })));
  return used
    .map(({ charger, port }) => ({
      charger,
      port,
      spans: laid
        .filter((span) => span.charger === charger && span.port === port)
        .map(({ store, fromMinute, toMinute, startW }) => ({ store, fromMinute, toMinute, startW })),
    }))
    .filter(({ spans }) => spans.length > 0);
}

/** A span for every hang of every slot. */
function slotSpans(
  problem: StopProblem,
  chargers: readonly StopCharger[],
  { marks }: Grid,
  slots: readonly Slot[],
): readonly Laid[] {
  const { stores, plugs, hours } = problem;
  const ends = followSlots(problem, slots);
  let sockets: readonly Socket[] = [];
  return slots.flatMap((hangs, slot) => {
    sockets = socketsFor(problem, chargers, sockets, hangs);
    return sockets.map(({ store, portClass, port }) => {
      const before = ends[slot - 1]?.[store] ?? stores[store]!.storedWh;
      const drawnWh = (ends[slot]![store]! - before) / stores[store]!.efficiencyIn;
      const { charger } = plugs.classes[portClass]!;
      const [fromMinute, toMinute] = [marks[slot]!, marks[slot + 1]!];
      return { store, charger, port, fromMinute, toMinute, startW: drawnWh / hours[slot]! };
    });
  });
}

/** Spans that follow each other without a break are one. */
function joined(spans: readonly Laid[]): readonly Laid[] {
  const whole: Laid[] = [];
  for (const span of spans) {
    const at = whole.findIndex(
      ({ store, charger, port, toMinute }) =>
        store === span.store &&
        charger === span.charger &&
        port === span.port &&
        toMinute === span.fromMinute,
    );
    if (at < 0) whole.push(span);
    else whole[at] = { ...whole[at]!, toMinute: span.toMinute };
  }
  return whole;
}

/** A port for each hang: the one it is in already, else the first of its class that is free. */
function socketsFor(
  { plugs }: StopProblem,
  chargers: readonly StopCharger[],
  before: readonly Socket[],
  hangs: readonly Hang[],
): readonly Socket[] {
  const stays = hangs.map(({ store, portClass }) =>
    before.find((socket) => socket.store === store && socket.portClass === portClass),
  );
  const taken = new Set(stays.flatMap((socket) => (socket === undefined ? [] : [wordFor(socket)])));
  return hangs.map(({ store, portClass }, place) => {
    const { charger, strengthW } = plugs.classes[portClass]!;
    const strengths = chargers[charger]!.outputs.map(sourceLimitW);
    const free = (port: number): boolean =>
      strengths[port] === strengthW && !taken.has(wordFor({ portClass, port }));
    const socket = stays[place] ?? { store, portClass, port: strengths.findIndex((_, port) => free(port)) };
    taken.add(wordFor(socket));
    return socket;
  });
}

function wordFor({ portClass, port }: Pick<Socket, 'portClass' | 'port'>): string {
  return `${portClass}/${port}`;
}
