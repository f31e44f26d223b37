import type { AirRule } from '../../../shared-types/air-check.ts';

/** Watt-hours of one battery up to which no approval is needed, and up to which an airline may approve it. */
export const noApprovalWh = 100;
export const approvableWh = 160;

/** Pieces a person. Spares over 100 Wh need an approval and are at most so many even then. */
export const mostPowerBanks = 2;
export const mostLargeSpares = 2;
/** An airline may allow more. */
export const mostDevices = 15;

/** ICAO Doc 9284 (2025-2026), Addendum 1. */
const powerBankRulesSince = '2026-03-27';
const addendum =
  'ICAO Doc 9284 (2025–2026), Addendum 1, as told by the UK Civil Aviation Authority, "Changes to rules on the carriage of lithium cells/batteries and power banks"';
const carriersGuide =
  'Guide to the passenger provisions of IATA and ICAO, lithium.batteriestransport.org, 2024';
const packSafe = 'FAA PackSafe, "Lithium batteries"; 49 CFR 175.10(a)(18), edition of 2018';

/** The rules that the check goes by. Sources that name no date from which a rule holds leave it open. */
export const airRules: readonly AirRule[] = [
  {
    text: `A lithium battery of up to ${noApprovalWh} Wh needs no approval. What counts is the label: ampere-hours times the voltage of the cells.`,
    since: null,
    source: `TSA, "Lithium batteries with 100 watt hours or less in a device"; ${carriersGuide}`,
  },
  {
    text: `Over ${noApprovalWh} and up to ${approvableWh} Wh, the airline must approve it; of spare batteries at most two a person. Power banks are counted among these two here: the stricter reading.`,
    since: null,
    source: packSafe,
  },
  {
    text: `A battery over ${approvableWh} Wh is not carried in passenger baggage.`,
    since: null,
    source: 'An airline’s notice to passengers; the wording of ICAO Doc 9284 was not at hand',
  },
  {
    text: 'Power banks count as spare batteries. Spares travel in the cabin only, out of a bag that is taken for the hold at the gate, with terminals protected: in the retail pack, taped, or each in its own bag or pouch.',
    since: null,
    source: packSafe,
  },
  {
    text: 'At most two power banks a person, each protected by itself.',
    since: powerBankRulesSince,
    source: addendum,
  },
  {
    text: 'No power bank is recharged on board, and none should charge a device there.',
    since: powerBankRulesSince,
    source: addendum,
  },
  {
    text: `At most ${mostDevices} devices with a battery inside a person; the airline may allow more.`,
    since: null,
    source: carriersGuide,
  },
  {
    text: 'A device is best carried in the cabin; in the hold only switched off, and protected from damage and from switching on.',
    since: null,
    source: 'UK Civil Aviation Authority, "Guidance of portable electronic devices"',
  },
  {
    text: 'Batteries are of a type that passed the tests of the UN Manual of Tests and Criteria, 38.3.',
    since: null,
    source: carriersGuide,
  },
];

export const whoDecides =
  'These are the rules as listed here, for one person. Rules change, and airlines and states may be stricter: ask the airline, and look up the states you fly from, over and to, shortly before each flight. They decide.';
