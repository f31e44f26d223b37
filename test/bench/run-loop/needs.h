/* What the devices use, and which needs it soonest: twin of rules/use-own-batteries.ts and rules/order-by-need.ts. */

enum wish { wishNone, wishLow, wishShort };

static int runShort(struct state *state, int device, double needWh) {
  if (needWh == 0) return 0;
  const double stored = state->storedWh[device];
  const double usable = most(0, stored - state->unreachableWh[device]);
  state->storedWh[device] = stored - usable;
  state->deficitWh[device] = needWh - usable;
  return 1;
}

static enum wish useOwnBatteries(const struct network *network, const struct course *course, struct state *state,
                                 int step) {
  const int at = step * network->deviceCount;
  enum wish wants = wishNone;
  for (int d = 0; d < network->deviceCount; d += 1) {
    const double need = course->needWh[at + d] * state->useScale[d];
    const double left = state->storedWh[d] - need;
    if (left >= state->unreachableWh[d]) {
      state->storedWh[d] = left;
      if (left < network->lowWh[d] && wants == wishNone) wants = wishLow;
    } else {
      wants = runShort(state, d, need) ? wishShort : wants;
    }
  }
  return wants;
}

static int needsSooner(const struct network *network, const struct state *state, int a, int b) {
  if (network->mustHave[a] != network->mustHave[b]) return network->mustHave[a] == 1;
  const double left = state->storedWh[a] * network->typicalUseW[b] - state->storedWh[b] * network->typicalUseW[a];
  return left == 0 ? a < b : left < 0;
}

static void orderByNeed(const struct network *network, struct state *state) {
  uint16_t *order = state->order;
  for (int i = 1; i < network->deviceCount; i += 1) {
    const uint16_t device = order[i];
    int place = i;
    while (place > 0 && needsSooner(network, state, device, order[place - 1])) {
      order[place] = order[place - 1];
      place -= 1;
    }
    order[place] = device;
  }
}
