import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BenchTour } from '../support/bench-tour.ts';

/** What a walk of all histories ends with. */
export interface Ending {
  /** All energy stored at the end, summed over the histories, Wh. */
  readonly storedWh: number;
  /** Histories in which a must-have runs flat. */
  readonly flat: number;
}

/** The run loop in plain C, with a tour laid before it. */
export interface Twin {
  walk(useFactor: number, runs: number): Ending & { readonly nsPerStep: number };
}

/** The bench runs in the project's folder. */
const source = 'test/bench/run-loop.c';
const compilers = ['cc', 'gcc', 'clang'] as const;

/**
 * Compiles the twin of the run loop and does work with it.
 *
 * @param work told null where there is no C compiler
 */
export function withTwin<T>(tour: BenchTour, work: (twin: Twin | null) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'chargewright-twin-'));
  const [program, tourFile] = [join(folder, 'run-loop'), join(folder, 'tour.bin')];
  try {
    if (!compile(program)) return work(null);
    writeFileSync(tourFile, tourBytes(tour));
    return work({
      walk: (useFactor, runs) =>
        JSON.parse(output(program, [tourFile, `${useFactor}`, `${runs}`])) as ReturnType<Twin['walk']>,
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** @returns whether there is a compiler; a program that does not compile ends the bench */
function compile(program: string): boolean {
  const compiler = compilers.find((name) => spawnSync(name, ['--version']).error === undefined);
  if (compiler === undefined) return false;
  output(compiler, ['-std=c99', '-O2', '-ffp-contract=off', '-o', program, source, '-lm']);
  return true;
}

function output(program: string, args: readonly string[]): string {
  const { status, error, stdout, stderr } = spawnSync(program, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${program} failed: ${error?.message ?? stderr}`);
  return stdout;
}

/** A tour as `run-loop/tour.h` reads it: counts, then the arrays of network, course and draws. */
function tourBytes({ network, course, histories }: BenchTour): Buffer {
  const arrays = [
    countsOf({ network, course, histories }),
    ...networkArrays(network),
    ...courseArrays(course),
    ...histories.flatMap(({ panelW, outletIsFree, useScale }) => [panelW, outletIsFree, useScale]),
  ];
  return Buffer.concat(
    arrays.map(({ buffer, byteOffset, byteLength }) => Buffer.from(buffer, byteOffset, byteLength)),
  );
}

function countsOf({ network, course, histories }: BenchTour): Int32Array {
  const { hasDirectLoads, hasPluggedDraw, banksFirst, feedsDevices, banksOnlyAtPost, rations } = network;
  const flags = [hasDirectLoads, hasPluggedDraw, banksFirst, feedsDevices, banksOnlyAtPost, rations];
  return Int32Array.of(
    network.deviceCount,
    network.bankCount,
    network.portCount,
    network.chargerTotalW.length,
    course.stepsPerDay,
    course.days,
    course.warmthPlaces,
    course.charges.length,
    histories.length,
    histories[0]!.outletIsFree.length,
    ...flags.map(Number),
  );
}

function networkArrays(network: BenchTour['network']) {
  return [
    Float64Array.of(network.bankToMustHave),
    network.mustHave,
    network.capacityWh,
    network.taperRoomWh,
    network.fullWh,
    network.lowWh,
    network.limitW,
    network.efficiencyIn,
    network.ridesWhere,
    network.pluggedW,
    network.typicalUseW,
    network.efficiencyOut,
    network.outletCount,
    network.chargesWhileServing,
    network.standbyW,
    network.selfDischargePerDay,
    network.serveLinkW,
    network.serveOrder,
    network.portCharger,
    network.chargerTotalW,
    network.wallLinkW,
    network.portOrder,
  ];
}

function courseArrays(course: BenchTour['course']) {
  return [
    Float64Array.of(course.stepHours),
    course.riding,
    course.atPost,
    course.outlets,
    course.outletHours,
    course.luck,
    course.needWh,
    course.hubWh,
    course.warmth,
    course.unreachableShare,
    course.charges,
    course.mostUnreachableShare,
    course.mustHaveNeedWh,
    course.needToWallWh,
    course.wallIncomeWh,
  ];
}
