/* What a sink takes at its plug: twin of storage/taper.ts and rules/give.ts. */

static double least(double a, double b) { return a < b ? a : b; }
static double most(double a, double b) { return a > b ? a : b; }

static double storedAfterWh(double storedWh, double capacityWh, double roomWh, double powerW, double limitW,
                            double hours) {
  const double power = powerW < limitW ? powerW : limitW;
  if (power <= 0 || storedWh >= capacityWh) return storedWh;
  const double fullPowerUntilWh = capacityWh - roomWh * (power / limitW);
  const double atFullPowerWh = storedWh + power * hours;
  if (atFullPowerWh <= fullPowerUntilWh) return atFullPowerWh;
  const double fromWh = storedWh > fullPowerUntilWh ? storedWh : fullPowerUntilWh;
  const double taperHours = hours - (fromWh - storedWh) / power;
  return capacityWh - (capacityWh - fromWh) * exp((-limitW * taperHours) / roomWh);
}

static double usefulShare(const struct network *network, const struct state *state, int device, double powerW) {
  const double extraW = network->pluggedW[device];
  return extraW == 0 || state->inUse[device] == 0 ? 1 : 1 - extraW / powerW;
}

static double fill(const struct network *network, struct state *state, int sink, double powerW, double hours,
                   double mostWh) {
  const double time = least(hours, state->socketHours[sink]);
  if (!(time > 0) || !(powerW > 0) || !(mostWh > 0) || state->charges[sink] == 0) return 0;
  const int isDevice = sink < network->deviceCount;
  const double share = isDevice && network->hasPluggedDraw ? usefulShare(network, state, sink, powerW) : 1;
  if (share <= 0) return 0;
  const double fullEfficiency = network->efficiencyIn[sink];
  const double efficiency = fullEfficiency * share;
  const double before = state->storedWh[sink];
  const double limitW = network->limitW[sink];
  const double room = storedAfterWh(before, network->capacityWh[sink], network->taperRoomWh[sink], powerW * efficiency,
                                    limitW * fullEfficiency, time) -
                      before;
  const double mostStored = mostWh * efficiency;
  const double stored = room < mostStored ? room : mostStored;
  const double taken = stored / efficiency;
  const double offered = powerW * time;
  state->storedWh[sink] = before + stored;
  state->socketHours[sink] -= (mostWh < offered ? mostWh : offered) / limitW;
  if (share < 1) state->pluggedWh[sink] += taken * (1 - share);
  return taken;
}

static const double roundingWh = 1e-12;

static double giveDevice(const struct network *network, struct state *state, int device, double powerW, double hours,
                         double mostWh, int topUp) {
  const double shortWh = state->deficitWh[device];
  if (shortWh == 0) return topUp ? fill(network, state, device, powerW, hours, mostWh) : 0;
  const double time = least(hours, state->socketHours[device]);
  const double share = usefulShare(network, state, device, powerW);
  if (!(time > 0) || !(mostWh > 0) || share <= 0) return 0;
  const double efficiency = network->efficiencyIn[device] * share;
  const double direct = least(least(shortWh / efficiency, powerW * time), mostWh);
  const double left = shortWh - direct * efficiency;
  state->deficitWh[device] = left < roundingWh ? 0 : left;
  state->socketHours[device] -= direct / network->limitW[device];
  state->pluggedWh[device] += direct * (1 - share);
  if (!topUp) return direct;
  return direct + fill(network, state, device, powerW, time - direct / powerW, mostWh - direct);
}

static double fillBank(const struct network *network, struct state *state, int bank, double powerW, double hours,
                       double mostWh) {
  const int sink = network->deviceCount + bank;
  const double time = least(hours, state->turnHours[bank]);
  const double taken = fill(network, state, sink, powerW, time, mostWh);
  if (taken > 0) state->turnHours[bank] -= taken / powerW;
  return taken;
}
