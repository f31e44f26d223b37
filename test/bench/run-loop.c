/*
 * The run loop in plain C, rule by rule as in src-main/model/flow, so that the bench can say what the same walk
 * costs without TypeScript. The reasons for the rules stand there.
 *
 *   run-loop TOUR USE_FACTOR RUNS
 *
 * Walks every history of a tour file in each run; one run before them warms up and is not counted. Prints the
 * median time of a step and what the last run ended with, as JSON.
 */
#define _POSIX_C_SOURCE 199309L
#include <float.h>
#include <math.h>
#include <time.h>

#include "run-loop/tour.h"
#include "run-loop/state.h"
#include "run-loop/give.h"
#include "run-loop/needs.h"
#include "run-loop/charge-at-wall.h"
#include "run-loop/sun-and-wheel.h"
#include "run-loop/banks.h"
#include "run-loop/walk.h"

struct ending {
  double storedWh;
  int flat;
};

static struct ending walkAll(const struct tour *tour, double useFactor, struct state *state) {
  struct ending ending = {0, 0};
  for (int history = 0; history < tour->histories; history += 1) {
    walkTour(&tour->network, &tour->course, &tour->draws[history], useFactor, state);
    ending.storedWh += totalStoredWh(&tour->network, state);
    if (state->flatStep >= 0) ending.flat += 1;
  }
  return ending;
}

static double nowNs(void) {
  struct timespec now;
  clock_gettime(CLOCK_MONOTONIC, &now);
  return (double)now.tv_sec * 1e9 + (double)now.tv_nsec;
}

static int byTime(const void *a, const void *b) {
  const double left = *(const double *)a, right = *(const double *)b;
  return (left > right) - (left < right);
}

int main(int argumentCount, char **arguments) {
  if (argumentCount != 4 || atoi(arguments[3]) < 1) {
    fputs("usage: run-loop TOUR USE_FACTOR RUNS\n", stderr);
    return EXIT_FAILURE;
  }
  const struct tour tour = readTour(arguments[1]);
  const double useFactor = atof(arguments[2]);
  const int runs = atoi(arguments[3]);
  struct state state = createState(&tour.network, tour.course.steps);
  struct ending ending = walkAll(&tour, useFactor, &state);
  double *timesNs = doubles(runs);
  for (int run = 0; run < runs; run += 1) {
    const double startNs = nowNs();
    ending = walkAll(&tour, useFactor, &state);
    timesNs[run] = nowNs() - startNs;
  }
  qsort(timesNs, runs, sizeof *timesNs, byTime);
  const double stepsARun = (double)tour.histories * tour.course.steps;
  printf("{\"nsPerStep\":%.17g,\"storedWh\":%.17g,\"flat\":%d}\n", timesNs[runs / 2] / stepsARun, ending.storedWh,
         ending.flat);
  return EXIT_SUCCESS;
}
