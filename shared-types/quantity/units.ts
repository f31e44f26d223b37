/*
 * The units that riders type and read. Factors of the international pound, ounce, inch, foot, yard and mile: agreement of 1959, exact;
 * these and all others as in NIST Special Publication 811 (2008), Appendix B.
 */

const gPerPound = 453.592_37;
const ouncesPerPound = 16;
const mPerFoot = 0.3048;
const inchesPerFoot = 12;
const mPerYard = 0.9144;
const mPerMile = 1609.344;
const mPerKm = 1000;
const secondsPerHour = 3600;
const minutesPerHour = 60;
const minutesPerDay = 1440;
const joulesPerWh = 3600;
/** Kelvins, or degrees Celsius, in a degree Fahrenheit. */
const kPerDegF = 1 / 1.8;
const degFOfIce = 32;
const kelvinsOfIce = 273.15;

export interface Unit {
  readonly symbol: string;
  /** Other ways to write it, in small letters. */
  readonly also: readonly string[];
  /** The quantity's common unit in one of this. */
  readonly factor: number;
  /** Where its scale begins, in the common unit; 0 for all but temperatures. */
  readonly zero: number;
}

export type Quantity =
  'mass' | 'length' | 'speed' | 'temperature' | 'power' | 'energy' | 'charge' | 'voltage' | 'time';

function unit(symbol: string, factor: number, also: readonly string[] = [], zero = 0): Unit {
  return { symbol, factor, also, zero };
}

/** Each quantity's units; which one comes first where two are written alike matters. */
export const unitsOf: Readonly<Record<Quantity, readonly Unit[]>> = {
  mass: [
    unit('g', 1, ['gram', 'grams', 'gramme', 'grammes']),
    unit('kg', 1000, ['kilo', 'kilos', 'kilogram', 'kilograms']),
    unit('oz', gPerPound / ouncesPerPound, ['ounce', 'ounces']),
    unit('lb', gPerPound, ['lbs', 'pound', 'pounds']),
  ],
  length: [
    unit('m', 1, ['metre', 'metres', 'meter', 'meters']),
    unit('km', mPerKm, ['kilometre', 'kilometres', 'kilometer', 'kilometers']),
    unit('mm', 0.001),
    unit('cm', 0.01),
    unit('in', mPerFoot / inchesPerFoot, ['inch', 'inches', '"', '″']),
    unit('ft', mPerFoot, ['foot', 'feet', "'", '′']),
    unit('yd', mPerYard, ['yard', 'yards']),
    unit('mi', mPerMile, ['mile', 'miles']),
  ],
  speed: [
    unit('km/h', 1, ['kmh', 'kph', 'km/hr']),
    unit('mph', mPerMile / mPerKm, ['mi/h']),
    unit('m/s', secondsPerHour / mPerKm),
  ],
  temperature: [
    unit('°C', 1, ['c', 'degc', 'celsius']),
    unit('°F', kPerDegF, ['f', 'degf', 'fahrenheit'], -degFOfIce * kPerDegF),
    unit('K', 1, ['kelvin'], -kelvinsOfIce),
  ],
  power: [unit('W', 1, ['watt', 'watts']), unit('mW', 0.001), unit('kW', 1000)],
  energy: [unit('Wh', 1), unit('mWh', 0.001), unit('kWh', 1000), unit('kJ', 1000 / joulesPerWh)],
  charge: [unit('mAh', 1), unit('Ah', 1000)],
  voltage: [unit('V', 1, ['volt', 'volts']), unit('mV', 0.001)],
  time: [
    unit('min', 1, ['m', 'mins', 'minute', 'minutes']),
    unit('h', minutesPerHour, ['hr', 'hrs', 'hour', 'hours']),
    unit('d', minutesPerDay, ['day', 'days']),
    unit('s', 1 / minutesPerHour, ['sec', 'second', 'seconds']),
  ],
};

const quantities = Object.keys(unitsOf) as Quantity[];

/** The quantity that a unit of a field measures; null for a field whose unit has no relatives, or none at all. */
export function quantityOf(symbol: string | undefined): Quantity | null {
  return quantities.find((name) => unitsOf[name].some((each) => each.symbol === symbol)) ?? null;
}

export function unitNamed(quantity: Quantity, text: string): Unit | null {
  const units = unitsOf[quantity];
  const small = text.toLowerCase();
  return (
    units.find(({ symbol }) => symbol === text) ??
    units.find(({ symbol, also }) => symbol.toLowerCase() === small || also.includes(small)) ??
    null
  );
}

/** Binary fractions add something in the last places: 0.54 kg is 540 g, not 540.0000000000001. */
const significantDigits = 12;

export function tidied(value: number): number {
  return Number(value.toPrecision(significantDigits));
}

/** A value of one unit in another of the same quantity; untouched where there is nothing to convert. */
export function converted(value: number, from: string | undefined, to: string | undefined): number {
  const quantity = quantityOf(from);
  if (from === undefined || to === undefined || from === to || quantity === null) return value;
  const [given, wanted] = [unitNamed(quantity, from), unitNamed(quantity, to)];
  if (given === null || wanted === null) return value;
  return tidied((value * given.factor + given.zero - wanted.zero) / wanted.factor);
}
