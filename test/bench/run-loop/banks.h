/* Rules 4 and 6, what banks give and lose: twin of reserve.ts, serve-from-banks.ts and bank-losses.ts in rules/. */

static const double prudence = 1.25;
static const double brimShare = 0.95;
static const double notReckoned = DBL_MAX;

static void layReserve(const struct course *course, struct state *state) {
  if (state->reserveFactor == state->useFactor) return;
  state->reserveFactor = state->useFactor;
  double reserve = 0;
  for (int step = course->steps - 1; step >= 0; step -= 1) {
    state->reserveWh[step] = reserve;
    const double lacking =
        reserve + course->mustHaveNeedWh[step] * state->useFactor * prudence - course->wallIncomeWh[step];
    reserve = lacking > 0 ? lacking : 0;
  }
}

static double usableWh(const struct state *state, int sink) {
  const double usable = state->storedWh[sink] - state->mostUnreachableWh[sink];
  return usable > 0 ? usable : 0;
}

static double surplusWh(const struct network *network, const struct course *course, const struct state *state,
                        int step) {
  const int deviceCount = network->deviceCount;
  const double needFactor = state->useFactor * prudence;
  double banked = 0;
  for (int b = 0; b < network->bankCount; b += 1) banked += usableWh(state, deviceCount + b) * network->bankToMustHave;
  double together = banked - state->reserveWh[step];
  double apart = banked;
  for (int d = 0; d < deviceCount; d += 1) {
    if (network->mustHave[d] == 0) continue;
    const double held = usableWh(state, d);
    const double lacking = course->needToWallWh[step * deviceCount + d] * needFactor - held;
    together += held;
    if (lacking > 0) apart -= lacking;
  }
  return together < apart ? together : apart;
}

static double spareWh(const struct network *network, const struct course *course, const struct state *state,
                      int step) {
  double brimWh = 0;
  for (int b = 0; b < network->bankCount; b += 1) {
    const int sink = network->deviceCount + b;
    const double overWh = state->storedWh[sink] - network->capacityWh[sink] * brimShare;
    brimWh += overWh * network->efficiencyOut[b];
  }
  return most(brimWh, surplusWh(network, course, state, step));
}

static int banksFallShort(const struct network *network, const struct state *state) {
  double spare = 0;
  for (int b = 0; b < network->bankCount; b += 1)
    spare += state->storedWh[network->deviceCount + b] * network->efficiencyOut[b];
  for (int d = 0; d < network->deviceCount; d += 1) {
    if (network->mustHave[d] == 0) continue;
    spare -= (network->capacityWh[d] - state->storedWh[d]) / network->efficiencyIn[d];
  }
  return spare < 0;
}

static double serve(const struct network *network, struct state *state, int bank, int device, int fills,
                    double mostWh) {
  const int sink = network->deviceCount + bank;
  const double usable = state->storedWh[sink] - state->unreachableWh[sink];
  if (usable <= 0) return 0;
  const int takesTurns = network->chargesWhileServing[bank] == 0;
  const double hours =
      takesTurns ? least(state->outletHours[bank], state->turnHours[bank]) : state->outletHours[bank];
  const double powerW = network->serveLinkW[bank * network->deviceCount + device];
  const double efficiency = network->efficiencyOut[bank];
  const double given =
      giveDevice(network, state, device, powerW, hours, least(mostWh, usable * efficiency), fills);
  if (given == 0) return 0;
  const double busy = given / powerW;
  state->storedWh[sink] = most(0, state->storedWh[sink] - given / efficiency);
  state->outletHours[bank] -= busy;
  if (takesTurns) state->turnHours[bank] -= busy;
  state->servedWh[bank * network->deviceCount + device] += given;
  return given;
}

static double serveDevice(const struct network *network, struct state *state, int device, int fills, double mostWh) {
  double leftWh = mostWh;
  double given = 0;
  for (int rank = 0; rank < network->bankCount; rank += 1) {
    if (!(leftWh > 0) || !(state->socketHours[device] > 0)) break;
    const int bank = network->serveOrder[device * network->bankCount + rank];
    const double taken = serve(network, state, bank, device, fills, leftWh);
    leftWh -= taken;
    given += taken;
  }
  return given;
}

static void serveFromBanks(const struct network *network, const struct course *course, struct state *state, int step,
                           int topUp) {
  const double *storedWh = state->storedWh, *deficitWh = state->deficitWh, *lowWh = network->lowWh;
  const uint16_t *order = state->order;
  int waiting = 0;
  int place = 0;
  for (; place < network->deviceCount && network->mustHave[order[place]] == 1; place += 1) {
    const int d = order[place];
    const int low = storedWh[d] < lowWh[d];
    const int fills = topUp && low && !(waiting && banksFallShort(network, state));
    if (fills || deficitWh[d] > 0) serveDevice(network, state, d, fills, INFINITY);
    waiting = waiting || storedWh[d] < lowWh[d];
  }
  double spare = network->rations ? notReckoned : INFINITY;
  for (; place < network->deviceCount && spare > 0; place += 1) {
    const int d = order[place];
    const int fills = topUp && !waiting && storedWh[d] < lowWh[d];
    if (!fills && deficitWh[d] == 0) continue;
    if (spare == notReckoned) spare = spareWh(network, course, state, step);
    if (spare > 0) spare -= serveDevice(network, state, d, fills, spare);
  }
}

static void lose(const struct network *network, struct state *state, int bank, double wh) {
  const int sink = network->deviceCount + bank;
  const double stored = state->storedWh[sink];
  const double lost = wh < stored ? wh : stored;
  state->storedWh[sink] = stored - lost;
  state->idleLossWh[bank] += lost;
}

static void standbyLosses(const struct network *network, struct state *state, double hours) {
  for (int b = 0; b < network->bankCount; b += 1) {
    const double busy = network->outletCount[b] * hours - state->outletHours[b];
    if (busy > 0) lose(network, state, b, network->standbyW[b] * least(hours, busy));
  }
}

static void selfDischarge(const struct network *network, struct state *state) {
  for (int b = 0; b < network->bankCount; b += 1)
    lose(network, state, b, state->storedWh[network->deviceCount + b] * network->selfDischargePerDay[b]);
}
