import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { keptEstimate } from '../../../shared-types/field-log.ts';
import { frontLoad } from '../../../shared-types/front-load.ts';
import { itemKinds, deviceUse } from '../../../shared-types/item.ts';
import { hubPower } from '../../../shared-types/hub-item.ts';
import { limits } from '../../../shared-types/limits.ts';
import { moneySettings } from '../../../shared-types/money-settings.ts';
import { money } from '../../../shared-types/money.ts';
import { port } from '../../../shared-types/port.ts';
import { readingKinds } from '../../../shared-types/reading.ts';
import { placement, scenarioDraft } from '../../../shared-types/scenario.ts';
import { preferences, risk, sky } from '../../../shared-types/settings.ts';
import { storeState } from '../../../shared-types/stop-plan.ts';
import { bicycle, dayStop, nights, tourDraft } from '../../../shared-types/tour.ts';
import { trackProfile } from '../../../shared-types/track.ts';
import { inMemory, type WriteDb } from '../../../src-main/catalogue/connection.ts';
import { loadDemoIfEmpty } from '../../../src-main/catalogue/demo.ts';
import { openCatalogue } from '../../../src-main/catalogue/open.ts';
import { saveItem } from '../../../src-main/catalogue/items.ts';
import { keepEstimate } from '../../../src-main/catalogue/reading-estimates.ts';
import { saveReading } from '../../../src-main/catalogue/readings.ts';
import { saveTour } from '../../../src-main/catalogue/tours.ts';
import { someEstimate, someReadings } from './some-readings.ts';
import { randomItem, randomTour } from './random-drafts.ts';
import { opened, openedDemo } from './temporary-catalogue.ts';

/*
 * The constraints are tried with raw SQL, past every schema. Numbers: each column is held against the schema of its field,
 * so that the two cannot drift apart. A column left out of the list below fails the first test.
 */

const { device, bank, panel, converter, accessory } = itemKinds;
const hub = itemKinds['generator-hub'];
const charger = itemKinds['wall-charger'];
const [deviceWh, deviceMAh] = device.shape.capacity.options;
const [bankWh, bankMAh] = bank.shape.capacity.options;
const [activity, day] = deviceUse.options;
const [rating, curve] = hubPower.options;
const leg = tourDraft.shape.legs.element;
const coordinates = leg.shape.place.options[1];
const [, ownRadiation] = leg.shape.radiation.options;
const [, along] = leg.shape.wind.options;
const piece = trackProfile.shape.pieces.element;
const curvePoint = curve.shape.points.element;
const scale = preferences.shape.cost;
const { shape: ahead } = frontLoad.shape.ahead;
const { shape: ownShare } = frontLoad.shape.ownShare;

const [stateShare, stateLit] = storeState.options;
const [meterWh, meterMAh] = readingKinds.delivery.shape.energy.options;

const fieldOfColumn: Readonly<Record<string, z.ZodNumber>> = {
  'items.quantity': accessory.shape.quantity,
  'items.mass_g': accessory.shape.massG,
  'items.price_minor': money.shape.minor,
  'items.life_years': accessory.shape.lifeYears.unwrap(),
  'items.resale_minor': money.shape.minor,
  'devices.capacity_wh': deviceWh.shape.wh,
  'devices.capacity_mah': deviceMAh.shape.mAh,
  'devices.cell_v': deviceMAh.shape.cellV,
  'devices.health': device.shape.health,
  'devices.spare_batteries': device.shape.spareBatteries,
  'devices.use_riding_w': activity.shape.ridingW,
  'devices.use_stop_w': activity.shape.stopW,
  'devices.use_evening_w': activity.shape.eveningW,
  'devices.use_night_w': activity.shape.nightW,
  'devices.use_wh_per_day': day.shape.whPerDay,
  'devices.plugged_w': device.shape.pluggedW,
  'banks.capacity_wh': bankWh.shape.wh,
  'banks.capacity_mah': bankMAh.shape.mAh,
  'banks.cell_v': bankMAh.shape.cellV,
  'banks.measured_deliverable_wh': bank.shape.measuredDeliverableWh.unwrap().shape.value,
  'banks.health': bank.shape.health,
  'banks.efficiency_in': bank.shape.efficiencyIn,
  'banks.efficiency_out': bank.shape.efficiencyOut,
  'banks.standby_w': bank.shape.standbyW,
  'banks.self_discharge_pct_per_month': bank.shape.selfDischargePctPerMonth,
  'banks.lights': bank.shape.lights,
  'panels.rated_w': panel.shape.ratedW,
  'panels.measured_rated_w': panel.shape.measuredRatedW.unwrap().shape.value,
  'panels.temperature_coefficient_pct_per_k': panel.shape.temperatureCoefficientPctPerK,
  'panels.noct_c': panel.shape.noctDegC,
  'panels.regulator_efficiency': panel.shape.regulatorEfficiency,
  'panels.start_w_per_m2': panel.shape.startWm2,
  'generator_hubs.replaces_g': hub.shape.replacesG,
  'generator_hubs.rim_cost_minor': money.shape.minor,
  'generator_hubs.rim_mass_g': hub.shape.rim.shape.massG,
  'generator_hubs.rim_replaces_g': hub.shape.rim.shape.replacesG,
  'generator_hubs.spokes_cost_minor': money.shape.minor,
  'generator_hubs.spokes_mass_g': hub.shape.spokes.shape.massG,
  'generator_hubs.spokes_replaces_g': hub.shape.spokes.shape.replacesG,
  'generator_hubs.labour_minor': money.shape.minor,
  'generator_hubs.rated_w': rating.shape.ratedW,
  'generator_hubs.measured_yield': hub.shape.measuredYield.unwrap().shape.value,
  'generator_hubs.idle_drag_10_w': hub.shape.idleDragW10,
  'generator_hubs.idle_drag_30_w': hub.shape.idleDragW30,
  'generator_hubs.wheel_circumference_m': hub.shape.wheelCircumferenceM,
  'generator_hubs.rated_circumference_m': hub.shape.ratedCircumferenceM,
  'hub_curve_points.speed_kmh': curvePoint.shape.speedKmh,
  'hub_curve_points.power_w': curvePoint.shape.powerW,
  'converters.efficiency': converter.shape.efficiency,
  'converters.start_speed_kmh': converter.shape.startSpeedKmh,
  'converters.series_capacitor_uf': converter.shape.seriesCapacitorUF,
  'wall_chargers.total_w': charger.shape.totalW,
  'ports.power_w': port.shape.powerW,
  'tours.rider_mass_kg': tourDraft.shape.riderMassKg,
  'tours.bicycle_mass_kg': tourDraft.shape.bicycleMassKg,
  'tours.rider_w': tourDraft.shape.riderW,
  'tours.drag_area_m2': bicycle.shape.dragAreaM2,
  'tours.paved_rolling': bicycle.shape.pavedRolling,
  'tours.drivetrain_efficiency': bicycle.shape.drivetrainEfficiency,
  'tours.downhill_cap_kmh': bicycle.shape.downhillCapKmh,
  'legs.days': leg.shape.days,
  'legs.lat_deg': coordinates.shape.latDeg,
  'legs.lon_deg': coordinates.shape.lonDeg,
  'legs.elevation_m': coordinates.shape.elevationM,
  'legs.wind_kmh': along.shape.headwindKmh,
  'legs.riding_h': leg.shape.ridingHours,
  'legs.wall_outlets': nights.shape.wallOutlets,
  'legs.post_outlets': nights.shape.postOutlets,
  'day_stops.length_min': dayStop.shape.minutes,
  'day_stops.outlets': dayStop.shape.outlets,
  'day_stops.chance': dayStop.shape.chance,
  'leg_tracks.distance_km': trackProfile.shape.distanceKm,
  'leg_tracks.ascent_m': trackProfile.shape.ascentM,
  'leg_tracks.descent_m': trackProfile.shape.descentM,
  'leg_tracks.mean_elevation_m': trackProfile.shape.meanElevationM.unwrap(),
  'leg_tracks.mean_lat_deg': trackProfile.shape.meanLatDeg,
  'leg_tracks.mean_lon_deg': trackProfile.shape.meanLonDeg,
  'leg_tracks.height_share': trackProfile.shape.heightShare,
  'leg_tracks.timed_share': trackProfile.shape.timedShare,
  'leg_track_pieces.distance_km': piece.shape.distanceKm,
  'leg_radiation.kwh_per_m2_a_day': ownRadiation.shape.kWhM2ADay.element,
  'scenario_placements.rack_factor': placement.shape.rackFactor,
  'scenario_placements.rack_tilt_deg': placement.shape.rackTiltDeg,
  'scenario_placements.rest_tilt_deg': placement.shape.restTiltDeg,
  'scenario_placements.facing_deg': placement.shape.facingDeg,
  'scenario_placements.camp_from_h': placement.shape.campFromH,
  'scenario_placements.camp_to_h': placement.shape.campToH,
  'scenario_kit.quantity': scenarioDraft.shape.kit.element.shape.quantity,
  'readings.before_share': stateShare.shape.share,
  'readings.before_lit': stateLit.shape.lit,
  'readings.after_share': stateShare.shape.share,
  'readings.after_lit': stateLit.shape.lit,
  'readings.counted_wh': meterWh.shape.wh,
  'readings.counted_mah': meterMAh.shape.mAh,
  'readings.meter_v': meterMAh.shape.volts,
  'readings.hours': readingKinds.use.shape.hours,
  'readings.distance_km': readingKinds.ride.shape.distanceKm.unwrap(),
  'kept_estimates.value': keptEstimate.shape.value,
  'kept_estimates.low': keptEstimate.shape.low,
  'kept_estimates.high': keptEstimate.shape.high,
  'kept_estimates.readings': keptEstimate.shape.readings,
  'settings.sky_persistence': sky.shape.persistence,
  'settings.sky_histories': sky.shape.histories,
  'settings.sky_seed': sky.shape.seed,
  'settings.ground_reflectance': sky.shape.groundReflectance,
  'settings.risk_confidence': risk.shape.confidence,
  'settings.risk_use_spread': risk.shape.useSpread,
  'settings.money_rate_pct': moneySettings.shape.ratePct,
  'settings.touring_days_a_year': moneySettings.shape.touringDaysAYear,
  'settings.wall_night_minor': money.shape.minor,
  'settings.wheelbase_m': frontLoad.shape.wheelbaseM,
  'settings.ahead_fork_m': ahead.fork,
  'settings.ahead_handlebar_m': ahead.handlebar,
  'settings.ahead_frame_m': ahead.frame,
  'settings.ahead_rear_rack_m': ahead.rearRack,
  'settings.ahead_body_m': ahead.body,
  'settings.own_share_fork': ownShare.fork.unwrap(),
  'settings.own_share_handlebar': ownShare.handlebar.unwrap(),
  'settings.own_share_frame': ownShare.frame.unwrap(),
  'settings.own_share_rear_rack': ownShare.rearRack.unwrap(),
  'settings.own_share_body': ownShare.body.unwrap(),
  'settings.limit_to_buy': limits.shape.toBuy.unwrap(),
  'settings.limit_g': limits.shape.grams.unwrap(),
  'settings.limit_front_wheel_g': limits.shape.frontWheelGrams.unwrap(),
  'settings.limit_margin': limits.shape.margin.unwrap(),
  'criterion_scales.weight': scale.shape.weight,
  'criterion_scales.satisfied': scale.shape.satisfied,
  'criterion_scales.unacceptable': scale.shape.unacceptable,
};

/** Numbers that are no field of a draft: places in a list, months, the one row of settings, a flag, a choice. */
const otherNumbers =
  /(\.|_)position$|^leg_radiation\.month$|^settings\.(id|step_min|limit_by_air|letter_keys)$|^criterion_scales\.counted$|^banks\.charges_while_serving$|^accessories\.for_hub$/;

function numberColumns(db: WriteDb): string[] {
  const sql = `SELECT t.name || '.' || c.name FROM pragma_table_list t, pragma_table_info(t.name) c
    WHERE t.schema = 'main' AND t.name NOT LIKE 'sqlite%' AND c.type IN ('INTEGER', 'REAL')`;
  return db.prepare<[], string>(sql).pluck().all();
}

/** The demo, and beside it what the demo lacks: a measured hub curve, a leg with a track, one with radiation of its own. */
function everyTableFilled(): WriteDb {
  const write = demoInMemory();
  const sample = { seed: 1, numRuns: 60 };
  const hubs = fc.sample(randomItem('generator-hub'), sample);
  for (const draft of hubs) saveItem(write, draft);
  for (const draft of fc.sample(randomTour(['demo-phone']), sample)) saveTour(write, draft);
  for (const draft of someReadings) saveReading(write, draft);
  keepEstimate(write, someEstimate);
  return write;
}

/** Closed by who opens it. */
function demoInMemory(): WriteDb {
  const { write } = openCatalogue(inMemory);
  loadDemoIfEmpty(write);
  return write;
}

function refusalOf(db: WriteDb, column: string, value: number): string {
  const [table = '', name = ''] = column.split('.');
  try {
    db.prepare(`UPDATE ${table} SET ${name} = ?`).run(value);
    return 'stored';
  } catch (thrown) {
    return thrown instanceof Error ? thrown.message : 'thrown';
  }
}

describe('a number column', () => {
  it('is held against the schema of its field', () => {
    const { write } = opened(':memory:');
    const known = numberColumns(write).filter((column) => !otherNumbers.test(column));
    expect(Object.keys(fieldOfColumn).sort()).toEqual(known.sort());
  });
});

describe('just outside its limits', () => {
  // What is refused changes nothing: one catalogue serves all.
  let db: WriteDb;
  beforeAll(() => {
    db = everyTableFilled();
    return () => db.close();
  });

  it.each(Object.entries(fieldOfColumn))('%s is refused', (column, field) => {
    const step = field.format === 'safeint' ? 1 : 0.001;
    const name = column.split('.')[1] ?? '';
    for (const value of [field.minValue! - step, field.maxValue! + step])
      expect(refusalOf(db, column, value)).toContain(`CHECK constraint failed: ${name} BETWEEN`);
  });
});

describe('raw SQL is refused', () => {
  let db: WriteDb;
  beforeAll(() => {
    db = demoInMemory();
    return () => db.close();
  });

  it.each([
    ['an empty label', "UPDATE items SET label = ''"],
    ['a label of spaces', "UPDATE items SET label = '   '"],
    ['a label of 81 characters', "UPDATE items SET label = printf('%.81c', 'x')"],
    ['an unknown kind', "UPDATE items SET kind = 'kettle' WHERE id = 'demo-cables'"],
    ['an unknown state', "UPDATE items SET state = 'lent'"],
    ['an unknown mount', "UPDATE items SET mount = 'trailer'"],
    ['a currency in small letters', "UPDATE items SET price_currency = 'eur'"],
    ['a currency of four letters', "UPDATE items SET price_currency = 'EURO'"],
    ['a resale without its currency', 'UPDATE items SET resale_minor = 500, resale_currency = NULL'],
    ['an unknown system of units', "UPDATE settings SET units = 'nautical'"],
    ['letter keys neither on nor off', 'UPDATE settings SET letter_keys = 2'],
    ['an unknown paper', "UPDATE settings SET paper = 'a3'"],
    ['an unknown number format', "UPDATE settings SET number_format = 'tlh'"],
    ['a night priced in small letters', "UPDATE settings SET wall_night_currency = 'eur'"],
    ['an id in capitals', "UPDATE items SET id = 'Cables' WHERE id = 'demo-cables'"],
    ['an id that starts with a hyphen', "UPDATE items SET id = '-x' WHERE id = 'demo-cables'"],
    ['notes of 2001 characters', "UPDATE items SET notes = printf('%.2001c', 'x')"],
    ['a capacity in two forms', "UPDATE devices SET capacity_wh = 10 WHERE item_id = 'demo-phone'"],
    [
      'a capacity in no form',
      "UPDATE devices SET capacity_mah = NULL, cell_v = NULL WHERE item_id = 'demo-phone'",
    ],
    ['milliampere-hours without a voltage', "UPDATE banks SET cell_v = NULL WHERE item_id = 'demo-bank-20'"],
    ['use in two forms', "UPDATE devices SET use_wh_per_day = 5 WHERE item_id = 'demo-phone'"],
    ['use of half the activities', "UPDATE devices SET use_stop_w = NULL WHERE item_id = 'demo-phone'"],
    ['an unknown importance', "UPDATE devices SET importance = 'luxury'"],
    ['a measurement without its date', 'UPDATE banks SET measured_deliverable_on = NULL'],
    ['a day that no calendar has', "UPDATE banks SET measured_deliverable_on = '2026-02-30'"],
    ['a flag of 2', 'UPDATE banks SET charges_while_serving = 2'],
    ['a hub power in two forms', "UPDATE generator_hubs SET curve_read_at = 'hub'"],
    ['a hub power in no form', 'UPDATE generator_hubs SET rated_w = NULL'],
    ['a curve read at another place', "UPDATE generator_hubs SET rated_w = NULL, curve_read_at = 'fork'"],
    ['a yield without its date', 'UPDATE generator_hubs SET measured_yield = 0.9'],
    [
      'a yield measured on no day',
      "UPDATE generator_hubs SET measured_yield = 0.9, measured_yield_on = 'now'",
    ],
    ['a rim priced in small letters', "UPDATE generator_hubs SET rim_cost_currency = 'eur'"],
    ['spokes priced in small letters', "UPDATE generator_hubs SET spokes_cost_currency = 'eur'"],
    ['labour priced in small letters', "UPDATE generator_hubs SET labour_currency = 'eur'"],
    ['an unknown load on the hub', "UPDATE converters SET hub_load = 'lamp'"],
    ['a cable that is twice for the hub', 'UPDATE accessories SET for_hub = 2'],
    ['an unknown port standard', "UPDATE ports SET standard = 'barrel'"],
    ['an unknown cable', "UPDATE ports SET cable = 'braided' WHERE direction = 'in'"],
    ['a sink without a cable', "UPDATE ports SET cable = NULL WHERE direction = 'in'"],
    ['an outlet with a cable', "UPDATE ports SET cable = 'c-3a' WHERE direction = 'out'"],
    ['a ninth outlet', "UPDATE ports SET position = 8 WHERE direction = 'out'"],
    ['a start date before 1900', "UPDATE tours SET start_date = '1899-12-31'"],
    ['a start date in words', "UPDATE tours SET start_date = 'now'"],
    ['a leg without station and coordinates', 'UPDATE legs SET station = NULL WHERE position = 0'],
    ['a leg with station and latitude', 'UPDATE legs SET lat_deg = 41 WHERE position = 0'],
    ['an unknown terrain', "UPDATE legs SET terrain_class = 'swamp'"],
    ['an unknown wind', "UPDATE legs SET wind = 'storm', wind_kmh = 10"],
    ['calm air with a speed', 'UPDATE legs SET wind_kmh = 5'],
    ['wind along the road without a speed', "UPDATE legs SET wind = 'along'"],
    ['wind from all sides below zero', "UPDATE legs SET wind = 'around', wind_kmh = -1"],
    ['an unknown night', "UPDATE leg_nights SET night = 'hammock'"],
    ['nights given another way', "UPDATE legs SET nights_by = 'week'"],
    ['a night beyond the longest tour', 'UPDATE leg_nights SET position = 366 WHERE position = 0'],
    ['an unknown method', "UPDATE scenarios SET method = 'wind'"],
    ['a panel aimed while riding', "UPDATE scenario_placements SET while_riding = 'aimed'"],
    ['an unknown placement at stops', "UPDATE scenario_placements SET at_stops = 'hung'"],
    ['an unknown placement in camp', "UPDATE scenario_placements SET in_camp = 'hung'"],
    ['hours in camp that are turned', 'UPDATE scenario_placements SET camp_from_h = 12, camp_to_h = 9'],
    ['hours in camp without extent', 'UPDATE scenario_placements SET camp_from_h = 9, camp_to_h = 9'],
    ['a stop without a name', "INSERT INTO scenario_placement_stops VALUES ('demo-panel', 0, ' ')"],
    ['a 21st named stop', "INSERT INTO scenario_placement_stops VALUES ('demo-panel', 20, 'Lunch')"],
    ['a month 0', "INSERT INTO leg_radiation VALUES ('demo-tour', 0, 0, 4)"],
    ['a 13th month', "INSERT INTO leg_radiation VALUES ('demo-tour', 0, 13, 4)"],
    ['an unknown rule', "UPDATE scenarios SET at_wall = 'none'"],
    ['an unknown use of a post', "UPDATE scenarios SET at_post = 'all'"],
    ['an unknown order when short', "UPDATE scenarios SET when_short = 'wait'"],
    ['an unknown place for cells', "UPDATE scenarios SET cells_sleep = 'fridge'"],
    ['second settings', "INSERT INTO settings (id, currency, theme, step_min) VALUES (2, 'EUR', 'dark', 15)"],
    ['an unknown way to draw the weather', "UPDATE settings SET sky_method = 'guess'"],
    ['an unknown light of the sky', "UPDATE settings SET sky_diffuse = 'grey'"],
    ['a step of 7 minutes', 'UPDATE settings SET step_min = 7'],
    ['an unknown theme', "UPDATE settings SET theme = 'sepia'"],
    [
      'a scale whose bounds are turned',
      "UPDATE criterion_scales SET satisfied = 900 WHERE criterion = 'cost'",
    ],
    [
      'days without a wall that are turned',
      "UPDATE criterion_scales SET satisfied = 1 WHERE criterion = 'daysWithoutWall'",
    ],
    [
      'a criterion of the core left uncounted',
      "UPDATE criterion_scales SET counted = 0 WHERE criterion = 'cost'",
    ],
    [
      'an extra that says not whether it counts',
      "UPDATE criterion_scales SET counted = NULL WHERE criterion = 'risk'",
    ],
    ['an unknown criterion', "UPDATE criterion_scales SET criterion = 'looks' WHERE criterion = 'risk'"],
    ['air travel by halves', 'UPDATE settings SET limit_by_air = 2'],
    [
      'a scale without extent',
      "UPDATE criterion_scales SET unacceptable = satisfied WHERE criterion = 'margin'",
    ],
  ])('for %s', (_, sql) => {
    expect(() => db.exec(sql)).toThrow(/CHECK constraint failed/);
  });

  it('for text where a number belongs', () => {
    expect(() => db.exec("UPDATE items SET mass_g = 'heavy'")).toThrow(/cannot store TEXT/);
  });

  it('for a missing value', () => {
    expect(() => db.exec('UPDATE tours SET label = NULL')).toThrow(/NOT NULL/);
  });

  it.each([
    ['a figure of no item', "INSERT INTO wall_chargers (item_id, total_w) VALUES ('gone', 30)"],
    [
      'a figure of an item of another kind',
      "INSERT INTO wall_chargers (item_id, total_w) VALUES ('demo-phone', 30)",
    ],
    ['a change of kind that leaves figures behind', "UPDATE items SET kind = 'bank' WHERE id = 'demo-phone'"],
    ['a night of no leg', "INSERT INTO leg_nights VALUES ('demo-tour', 50, 0, 'wall')"],
    ['radiation of no leg', "INSERT INTO leg_radiation VALUES ('demo-tour', 50, 1, 4)"],
    [
      'a placement of no scenario',
      "INSERT INTO scenario_placements VALUES ('gone', 'flat', 'flat', 'flat', 1, 0, 0, 0, 0, 24)",
    ],
    ['a stop of no placement', "INSERT INTO scenario_placement_stops VALUES ('gone', 0, 'Lunch')"],
    ['a kit line of no item', "INSERT INTO scenario_kit VALUES ('demo-hub', 20, 'gone', 1)"],
    ['the removal of an item in a kit', "DELETE FROM items WHERE id = 'demo-bank-20'"],
    ['settings of no tour', "UPDATE settings SET tour_id = 'gone'"],
  ])('for %s', (_, sql) => {
    expect(() => db.exec(sql)).toThrow(/FOREIGN KEY constraint failed/);
  });

  it('for an item twice in one kit', () => {
    const twice = "INSERT INTO scenario_kit VALUES ('demo-hub', 20, 'demo-hub-3', 1)";
    expect(() => db.exec(twice)).toThrow(/UNIQUE/);
  });
});

describe('an item that is removed', () => {
  it('takes its figures, ports and place at home along', () => {
    const { read, write } = openedDemo();
    write.exec("INSERT INTO tour_left_at_home VALUES ('demo-tour', 0, 'demo-phone')");
    write.exec("DELETE FROM items WHERE id = 'demo-phone'");
    const left = ['devices', 'ports', 'tour_left_at_home'].map((table) =>
      read.prepare(`SELECT count(*) FROM ${table} WHERE item_id = 'demo-phone'`).pluck().get(),
    );
    expect(left).toEqual([0, 0, 0]);
  });
});
