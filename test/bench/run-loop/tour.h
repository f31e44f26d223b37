/*
 * What the run loop walks on: twin of network.ts, course.ts and histories/draws.ts in src-main/model/flow. Names,
 * units and what an array has an entry for are as there; what the walk never reads is left out.
 */
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>

/* As written by run-loop-twin.ts, in this order. */
struct counts {
  int32_t devices, banks, ports, chargers;
  int32_t stepsPerDay, days, warmthPlaces, warmthEntries;
  int32_t histories, luckDraws;
  int32_t hasDirectLoads, hasPluggedDraw, banksFirst, feedsDevices, banksOnlyAtPost, rations;
};

struct network {
  int deviceCount, bankCount, sinkCount, portCount, chargerCount;
  int hasDirectLoads, hasPluggedDraw, banksFirst, feedsDevices, banksOnlyAtPost, rations;
  double bankToMustHave;
  const uint8_t *mustHave;
  const double *capacityWh, *taperRoomWh, *fullWh, *lowWh, *limitW, *efficiencyIn;
  const uint8_t *ridesWhere;
  const double *pluggedW, *typicalUseW;
  const double *efficiencyOut, *outletCount;
  const uint8_t *chargesWhileServing;
  const double *standbyW, *selfDischargePerDay, *serveLinkW;
  const uint16_t *serveOrder, *portCharger;
  const double *chargerTotalW, *wallLinkW;
  const uint16_t *portOrder;
};

struct course {
  int stepsPerDay, days, steps, warmthPlaces, warmths;
  double stepHours;
  const uint8_t *riding, *atPost, *outlets;
  const double *outletHours;
  const int32_t *luck;
  const double *needWh, *hubWh;
  const uint16_t *warmth;
  const double *unreachableShare;
  const uint8_t *charges;
  const double *mostUnreachableShare, *mustHaveNeedWh, *needToWallWh, *wallIncomeWh;
};

struct draws {
  const float *panelW;
  const uint8_t *outletIsFree;
  const float *useScale;
};

struct tour {
  struct network network;
  struct course course;
  int histories;
  struct draws *draws;
};

static void *cleared(size_t entries, size_t size) {
  /* One more than asked for: nothing at all may come back as no memory. */
  void *memory = calloc(entries + 1, size);
  if (memory == NULL) {
    fputs("There is not enough memory for the tour.\n", stderr);
    exit(EXIT_FAILURE);
  }
  return memory;
}

static void *take(FILE *file, size_t entries, size_t size) {
  void *array = cleared(entries, size);
  if (fread(array, size, entries, file) != entries) {
    fputs("The file of the tour ends too early.\n", stderr);
    exit(EXIT_FAILURE);
  }
  return array;
}

static double *takeDoubles(FILE *file, size_t entries) { return take(file, entries, sizeof(double)); }
static float *takeFloats(FILE *file, size_t entries) { return take(file, entries, sizeof(float)); }
static int32_t *takeInts(FILE *file, size_t entries) { return take(file, entries, sizeof(int32_t)); }
static uint16_t *takeShorts(FILE *file, size_t entries) { return take(file, entries, sizeof(uint16_t)); }
static uint8_t *takeBytes(FILE *file, size_t entries) { return take(file, entries, sizeof(uint8_t)); }

static struct network takeNetwork(FILE *file, const struct counts *counts) {
  const int devices = counts->devices, banks = counts->banks, ports = counts->ports, sinks = devices + banks;
  struct network network = {
      .deviceCount = devices,
      .bankCount = banks,
      .sinkCount = sinks,
      .portCount = ports,
      .chargerCount = counts->chargers,
      .hasDirectLoads = counts->hasDirectLoads,
      .hasPluggedDraw = counts->hasPluggedDraw,
      .banksFirst = counts->banksFirst,
      .feedsDevices = counts->feedsDevices,
      .banksOnlyAtPost = counts->banksOnlyAtPost,
      .rations = counts->rations,
  };
  network.bankToMustHave = *takeDoubles(file, 1);
  network.mustHave = takeBytes(file, devices);
  network.capacityWh = takeDoubles(file, sinks);
  network.taperRoomWh = takeDoubles(file, sinks);
  network.fullWh = takeDoubles(file, sinks);
  network.lowWh = takeDoubles(file, devices);
  network.limitW = takeDoubles(file, sinks);
  network.efficiencyIn = takeDoubles(file, sinks);
  network.ridesWhere = takeBytes(file, sinks);
  network.pluggedW = takeDoubles(file, devices);
  network.typicalUseW = takeDoubles(file, devices);
  network.efficiencyOut = takeDoubles(file, banks);
  network.outletCount = takeDoubles(file, banks);
  network.chargesWhileServing = takeBytes(file, banks);
  network.standbyW = takeDoubles(file, banks);
  network.selfDischargePerDay = takeDoubles(file, banks);
  network.serveLinkW = takeDoubles(file, banks * devices);
  network.serveOrder = takeShorts(file, devices * banks);
  network.portCharger = takeShorts(file, ports);
  network.chargerTotalW = takeDoubles(file, counts->chargers);
  network.wallLinkW = takeDoubles(file, sinks * ports);
  network.portOrder = takeShorts(file, sinks * ports);
  return network;
}

static struct course takeCourse(FILE *file, const struct counts *counts) {
  const int steps = counts->days * counts->stepsPerDay;
  struct course course = {
      .stepsPerDay = counts->stepsPerDay,
      .days = counts->days,
      .steps = steps,
      .warmthPlaces = counts->warmthPlaces,
      .warmths = counts->warmthEntries / counts->warmthPlaces,
  };
  course.stepHours = *takeDoubles(file, 1);
  course.riding = takeBytes(file, steps);
  course.atPost = takeBytes(file, steps);
  course.outlets = takeBytes(file, steps);
  course.outletHours = takeDoubles(file, steps);
  course.luck = takeInts(file, steps);
  course.needWh = takeDoubles(file, (size_t)steps * counts->devices);
  course.hubWh = takeDoubles(file, steps);
  course.warmth = takeShorts(file, steps);
  course.unreachableShare = takeDoubles(file, counts->warmthEntries);
  course.charges = takeBytes(file, counts->warmthEntries);
  course.mostUnreachableShare = takeDoubles(file, counts->warmthPlaces);
  course.mustHaveNeedWh = takeDoubles(file, steps);
  course.needToWallWh = takeDoubles(file, (size_t)steps * counts->devices);
  course.wallIncomeWh = takeDoubles(file, steps);
  return course;
}

static struct draws *takeDraws(FILE *file, const struct counts *counts) {
  const size_t steps = (size_t)counts->days * counts->stepsPerDay;
  struct draws *draws = cleared(counts->histories, sizeof *draws);
  for (int history = 0; history < counts->histories; history += 1) {
    draws[history].panelW = takeFloats(file, steps);
    draws[history].outletIsFree = takeBytes(file, counts->luckDraws);
    draws[history].useScale = takeFloats(file, (size_t)counts->days * counts->devices);
  }
  return draws;
}

/* A file longer or shorter than its counts say was written in another order than it is read. */
static struct tour readTour(const char *path) {
  FILE *file = fopen(path, "rb");
  if (file == NULL) {
    perror(path);
    exit(EXIT_FAILURE);
  }
  const struct counts *counts = take(file, 1, sizeof *counts);
  struct tour tour;
  tour.network = takeNetwork(file, counts);
  tour.course = takeCourse(file, counts);
  tour.draws = takeDraws(file, counts);
  tour.histories = counts->histories;
  if (fgetc(file) != EOF) {
    fputs("The file of the tour is longer than its counts say.\n", stderr);
    exit(EXIT_FAILURE);
  }
  fclose(file);
  return tour;
}
