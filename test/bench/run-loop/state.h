/* What the run loop changes as it walks: twin of step-state.ts. */
enum { fromWall, fromPanel, fromHub, sourceCount };

struct state {
  double *storedWh, *useScale;
  uint16_t *order;
  double *deficitWh;
  uint8_t *inUse;
  const double *unreachableWh;
  const uint8_t *charges;
  double *mostUnreachableWh;
  double *socketHours, *turnHours, *outletHours;
  double wallHours;
  double *portHours, *chargerWh, *offerWh;
  double useFactor;
  double *reserveWh;
  double reserveFactor;
  int warmth;
  double *unreachableWhByWarmth;
  uint8_t *chargesByWarmth;
  const struct course *cellsOf;
  double *takenWh, *servedWh, *idleLossWh, *pluggedWh, *unservedWh;
  int flatStep, flatDevice;
};

static double *doubles(size_t entries) { return cleared(entries, sizeof(double)); }

static struct state createState(const struct network *network, int steps) {
  const int devices = network->deviceCount, banks = network->bankCount, sinks = network->sinkCount;
  struct state state = {
      .storedWh = doubles(sinks),
      .useScale = doubles(devices),
      .order = cleared(devices, sizeof(uint16_t)),
      .deficitWh = doubles(devices),
      .inUse = cleared(devices, sizeof(uint8_t)),
      .mostUnreachableWh = doubles(sinks),
      .socketHours = doubles(sinks),
      .turnHours = doubles(banks),
      .outletHours = doubles(banks),
      .portHours = doubles(network->portCount),
      .chargerWh = doubles(network->chargerCount),
      .offerWh = doubles(sourceCount),
      .reserveWh = doubles(steps),
      .reserveFactor = -1,
      .takenWh = doubles((size_t)sourceCount * sinks),
      .servedWh = doubles((size_t)banks * devices),
      .idleLossWh = doubles(banks),
      .pluggedWh = doubles(devices),
      .unservedWh = doubles(devices),
  };
  return state;
}

static void startTour(const struct network *network, const struct course *course, struct state *state) {
  for (int sink = 0; sink < network->sinkCount; sink += 1) {
    const double capacityWh = network->capacityWh[sink];
    state->storedWh[sink] = capacityWh;
    state->mostUnreachableWh[sink] = capacityWh * course->mostUnreachableShare[network->ridesWhere[sink]];
  }
  for (int d = 0; d < network->deviceCount; d += 1) {
    state->order[d] = (uint16_t)d;
    state->deficitWh[d] = 0;
  }
  state->warmth = -1;
  state->flatStep = -1;
  state->flatDevice = -1;
}

static double totalStoredWh(const struct network *network, const struct state *state) {
  double sum = 0;
  for (int sink = 0; sink < network->sinkCount; sink += 1) sum += state->storedWh[sink];
  return sum;
}
