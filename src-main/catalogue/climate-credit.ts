import type { ClimateSource } from '../../shared-types/climate.ts';

/** Where the climate figures come from; shown in the app and printed wherever they are used. */
export const climateCredit =
  'Climate: monthly sunshine and air temperatures mostly from Wikipedia city articles and its list of cities by sunshine ' +
  'duration (Wikipedia contributors, CC BY-SA; articles collected in 2016, doi:10.1007/978-3-319-40581-0_36), after ' +
  'national weather services and the WMO; some temperatures from NOAA NCEI normals 1991-2020 (public domain), from ' +
  'single facts of climate pages and from DSSAT averages for Palmira; positions from the NOAA Integrated Surface ' +
  'Database (public domain).';

/**
 * The codes in a station's `source`, as db/climate/NOTES.md has them; there a code may go on with how (-monthly, -daily) or
 * with a station's number (-010260).
 */
export const climateSources: readonly ClimateSource[] = [
  {
    code: 'WW2016',
    what:
      'Climate tables of English Wikipedia city articles, collected in January 2016 (doi:10.1007/978-3-319-40581-0_36). ' +
      'Wikipedia contributors, CC BY-SA; the figures come from national weather services and the WMO. ' +
      'Monthly or daily tells which sunshine row was taken.',
  },
  {
    code: 'WL2020',
    what: 'The Wikipedia list of cities by sunshine duration, of about 2020. Wikipedia contributors, CC BY-SA.',
  },
  {
    code: 'CTT',
    what: 'Climate pages for Reykjavik and Tromsø: temperatures in whole degrees, 48 single facts.',
  },
  {
    code: 'NCEI9120',
    what: 'Monthly normals 1991-2020 of NOAA NCEI, station USW00026401: temperatures of Anchorage. Public domain.',
  },
  {
    code: 'DSSAT-CCPA',
    what: 'Averages of daily data 1978-1998 at Palmira, Colombia, from the DSSAT project: temperatures of Cali.',
  },
  {
    code: 'ISD',
    what:
      'Station history of the NOAA Integrated Surface Database: position and height of a weather station at or near the ' +
      'place, whose number follows. Public domain.',
  },
];
