/* Rule 2: twin of rules/charge-at-wall.ts. */

static void openPorts(const struct network *network, struct state *state, int outlets, double hours) {
  state->wallHours = hours;
  for (int p = 0; p < network->portCount; p += 1) state->portHours[p] = hours;
  for (int c = 0; c < network->chargerCount; c += 1)
    state->chargerWh[c] = c < outlets ? network->chargerTotalW[c] * hours : 0;
}

static int plugsDevices(const struct network *network, const struct course *course, int step) {
  return !(network->banksOnlyAtPost && course->atPost[step] == 1);
}

static double pluggedHours(const struct network *network, const struct state *state, int sink, double powerW,
                           double socketBefore) {
  return ((socketBefore - state->socketHours[sink]) * network->limitW[sink]) / powerW;
}

static void book(const struct network *network, struct state *state, int sink, int port, double powerW,
                 double takenWh) {
  if (takenWh == 0) return;
  const int charger = network->portCharger[port];
  state->portHours[port] = most(0, state->portHours[port] - takenWh / powerW);
  state->chargerWh[charger] = most(0, state->chargerWh[charger] - takenWh);
  state->takenWh[fromWall * network->sinkCount + sink] += takenWh;
}

static void plugInDevice(const struct network *network, struct state *state, int device, int topUp) {
  const int portCount = network->portCount;
  double hours = state->wallHours;
  for (int rank = 0; rank < portCount && hours > 0 && state->socketHours[device] > 0; rank += 1) {
    const int port = network->portOrder[device * portCount + rank];
    const double time = least(hours, state->portHours[port]);
    if (time <= 0) continue;
    const double powerW = network->wallLinkW[device * portCount + port];
    const double mostWh = state->chargerWh[network->portCharger[port]];
    const double socketBefore = state->socketHours[device];
    const double taken = giveDevice(network, state, device, powerW, time, mostWh, topUp);
    book(network, state, device, port, powerW, taken);
    hours -= pluggedHours(network, state, device, powerW, socketBefore);
  }
}

static void feedShortAtWall(const struct network *network, struct state *state) {
  for (int place = 0; place < network->deviceCount; place += 1) {
    const int d = state->order[place];
    if (state->deficitWh[d] > 0) plugInDevice(network, state, d, 0);
  }
}

static void chargeDevicesAtWall(const struct network *network, struct state *state, int mustHave) {
  for (int place = 0; place < network->deviceCount; place += 1) {
    const int d = state->order[place];
    if (network->mustHave[d] != mustHave) continue;
    const int topUp = state->storedWh[d] < network->fullWh[d];
    if (topUp || state->deficitWh[d] > 0) plugInDevice(network, state, d, topUp);
  }
}

static void chargeBanksAtWall(const struct network *network, struct state *state) {
  const int portCount = network->portCount;
  for (int b = 0; b < network->bankCount; b += 1) {
    const int sink = network->deviceCount + b;
    if (state->storedWh[sink] >= network->fullWh[sink]) continue;
    double hours = state->wallHours;
    for (int rank = 0; rank < portCount && hours > 0 && state->socketHours[sink] > 0; rank += 1) {
      const int port = network->portOrder[sink * portCount + rank];
      const double time = least(hours, state->portHours[port]);
      if (time <= 0) continue;
      const double powerW = network->wallLinkW[sink * portCount + port];
      const double mostWh = state->chargerWh[network->portCharger[port]];
      const double socketBefore = state->socketHours[sink];
      const double taken = fillBank(network, state, b, powerW, time, mostWh);
      book(network, state, sink, port, powerW, taken);
      hours -= pluggedHours(network, state, sink, powerW, socketBefore);
    }
  }
}
