/* Rules 3 and 5, what panel and hub give: twin of rules/feed-devices.ts and rules/fill-buffers.ts. */

static int strongerOf(const struct state *state) {
  return state->offerWh[fromPanel] > state->offerWh[fromHub] ? fromPanel : fromHub;
}

static void feed(const struct network *network, struct state *state, int device, int source, double hours) {
  const double offeredWh = state->offerWh[source];
  const double powerW = least(network->limitW[device], offeredWh / hours);
  const int topUp = network->capacityWh[device] > 0;
  const double taken = giveDevice(network, state, device, powerW, hours, offeredWh, topUp);
  state->offerWh[source] = offeredWh - taken;
  state->takenWh[source * network->sinkCount + device] += taken;
}

static void feedDevices(const struct network *network, const struct course *course, struct state *state, int waiting) {
  for (int place = 0; place < network->deviceCount; place += 1) {
    const int d = state->order[place];
    const int isLoad = network->capacityWh[d] == 0;
    if (!isLoad && (!network->feedsDevices || (waiting && network->mustHave[d] == 0))) continue;
    feed(network, state, d, isLoad ? fromHub : strongerOf(state), course->stepHours);
  }
}

static void feedLeftovers(const struct network *network, const struct course *course, struct state *state) {
  for (int place = 0; place < network->deviceCount; place += 1) {
    const int d = state->order[place];
    if (network->mustHave[d] == 1 || network->capacityWh[d] == 0) continue;
    feed(network, state, d, strongerOf(state), course->stepHours);
  }
}

static void fillFrom(const struct network *network, struct state *state, int source, double hours) {
  double leftWh = state->offerWh[source];
  for (int b = 0; b < network->bankCount && leftWh > roundingWh; b += 1) {
    const int sink = network->deviceCount + b;
    if (state->storedWh[sink] >= network->fullWh[sink]) continue;
    const double powerW = least(network->limitW[sink], leftWh / hours);
    const double taken = fillBank(network, state, b, powerW, hours, leftWh);
    leftWh -= taken;
    state->takenWh[source * network->sinkCount + sink] += taken;
  }
  state->offerWh[source] = leftWh;
}

static void fillBuffers(const struct network *network, const struct course *course, struct state *state) {
  const int panelIsStronger = state->offerWh[fromPanel] > state->offerWh[fromHub];
  fillFrom(network, state, panelIsStronger ? fromPanel : fromHub, course->stepHours);
  fillFrom(network, state, panelIsStronger ? fromHub : fromPanel, course->stepHours);
}
