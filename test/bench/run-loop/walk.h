/* The walk of one tour through one history, always to its end: twin of warm-cells.ts, walk-step.ts and walk-tour.ts. */

static void layCells(const struct network *network, const struct course *course, struct state *state) {
  const int sinks = network->sinkCount;
  free(state->unreachableWhByWarmth);
  free(state->chargesByWarmth);
  state->unreachableWhByWarmth = doubles((size_t)course->warmths * sinks);
  state->chargesByWarmth = cleared((size_t)course->warmths * sinks, sizeof(uint8_t));
  for (int at = 0; at < course->warmths * sinks; at += 1) {
    const int sink = at % sinks;
    const int place = at / sinks * course->warmthPlaces + network->ridesWhere[sink];
    state->unreachableWhByWarmth[at] = network->capacityWh[sink] * course->unreachableShare[place];
    state->chargesByWarmth[at] = course->charges[place];
  }
  state->cellsOf = course;
}

static void warm(const struct network *network, const struct course *course, struct state *state, int step) {
  if (state->cellsOf != course) layCells(network, course, state);
  const int warmth = course->warmth[step];
  state->warmth = warmth;
  state->unreachableWh = state->unreachableWhByWarmth + warmth * network->sinkCount;
  state->charges = state->chargesByWarmth + warmth * network->sinkCount;
}

static void markUse(const struct network *network, const struct course *course, struct state *state, int step) {
  for (int d = 0; d < network->deviceCount; d += 1)
    state->inUse[d] = course->needWh[step * network->deviceCount + d] > 0;
}

static void openStep(const struct network *network, const struct course *course, struct state *state, int step,
                     double panelWh) {
  const double hours = course->stepHours;
  for (int b = 0; b < network->bankCount; b += 1) {
    state->socketHours[network->deviceCount + b] = hours;
    state->turnHours[b] = hours;
  }
  state->offerWh[fromPanel] = panelWh;
  state->offerWh[fromHub] = course->hubWh[step];
}

static void openSockets(const struct network *network, const struct course *course, struct state *state, int step) {
  const double hours = course->stepHours;
  for (int d = 0; d < network->deviceCount; d += 1) state->socketHours[d] = hours;
  for (int b = 0; b < network->bankCount; b += 1) state->outletHours[b] = network->outletCount[b] * hours;
  if (network->hasPluggedDraw) markUse(network, course, state, step);
}

static int niceToHavesWait(const struct network *network, const struct course *course, const struct state *state,
                           int step) {
  return network->rations && surplusWh(network, course, state, step) < 0;
}

static void beforeBanksServe(const struct network *network, const struct course *course, struct state *state, int step,
                             double wallHours, int waiting) {
  openPorts(network, state, course->outlets[step], wallHours);
  const int devicesToo = plugsDevices(network, course, step);
  if (network->banksFirst) {
    if (devicesToo) feedShortAtWall(network, state);
    chargeBanksAtWall(network, state);
  }
  if (!devicesToo) return;
  chargeDevicesAtWall(network, state, 1);
  if (!waiting) chargeDevicesAtWall(network, state, 0);
}

static void afterBanksServe(const struct network *network, const struct course *course, struct state *state, int step,
                            int waiting) {
  if (!network->banksFirst) chargeBanksAtWall(network, state);
  if (waiting && plugsDevices(network, course, step)) chargeDevicesAtWall(network, state, 0);
}

static void settleDeficits(const struct network *network, struct state *state, int step) {
  for (int d = 0; d < network->deviceCount; d += 1) {
    const double deficit = state->deficitWh[d];
    if (deficit == 0) continue;
    state->deficitWh[d] = 0;
    state->unservedWh[d] += deficit;
    if (state->flatStep >= 0 || network->mustHave[d] == 0) continue;
    state->flatStep = step;
    state->flatDevice = d;
  }
}

static int shareOut(const struct network *network, const struct course *course, struct state *state, int step,
                    int serves, int feeds, double wallHours) {
  openSockets(network, course, state, step);
  orderByNeed(network, state);
  const int waiting =
      (wallHours > 0 || (feeds && network->feedsDevices)) && niceToHavesWait(network, course, state, step);
  if (wallHours > 0) beforeBanksServe(network, course, state, step, wallHours, waiting);
  if (feeds) feedDevices(network, course, state, waiting);
  if (serves) {
    serveFromBanks(network, course, state, step, course->riding[step] == 0);
    standbyLosses(network, state, course->stepHours);
  }
  if (wallHours > 0) afterBanksServe(network, course, state, step, waiting);
  return waiting;
}

static void walkStep(const struct network *network, const struct course *course, struct state *state, int step,
                     double panelW, double wallHours) {
  if (course->warmth[step] != state->warmth) warm(network, course, state, step);
  const enum wish wants = useOwnBatteries(network, course, state, step);
  const double panelWh = panelW * course->stepHours;
  const int offers = panelWh + course->hubWh[step] > 0;
  const int resting = course->riding[step] == 0;
  const int serves = wants == wishShort || (wants == wishLow && resting);
  const int feeds = offers && (network->feedsDevices || network->hasDirectLoads);
  if (serves || offers || wallHours > 0) {
    openStep(network, course, state, step, panelWh);
    const int sharesOut = serves || feeds || wallHours > 0;
    const int waiting = sharesOut && shareOut(network, course, state, step, serves, feeds, wallHours);
    if (offers) fillBuffers(network, course, state);
    if (waiting && feeds) feedLeftovers(network, course, state);
  }
  if (wants == wishShort) settleDeficits(network, state, step);
}

static double wallHoursAt(const struct course *course, const struct draws *draws, int step) {
  const double hours = course->outletHours[step];
  if (hours == 0) return 0;
  const int draw = course->luck[step];
  return draw < 0 || draws->outletIsFree[draw] == 1 ? hours : 0;
}

static void walkTour(const struct network *network, const struct course *course, const struct draws *draws,
                     double useFactor, struct state *state) {
  const int stepsPerDay = course->stepsPerDay;
  startTour(network, course, state);
  state->useFactor = useFactor;
  if (network->rations) layReserve(course, state);
  for (int day = 0; day < course->days; day += 1) {
    for (int d = 0; d < network->deviceCount; d += 1)
      state->useScale[d] = useFactor * draws->useScale[day * network->deviceCount + d];
    for (int step = day * stepsPerDay; step < (day + 1) * stepsPerDay; step += 1)
      walkStep(network, course, state, step, draws->panelW[step], wallHoursAt(course, draws, step));
    selfDischarge(network, state);
  }
}
