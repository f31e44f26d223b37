import { z } from 'zod';
import {
  catalogueFormat,
  catalogueFormatVersion,
  exchangeLists,
  mostEntries,
} from '../../../shared-types/exchange.ts';
import { isoDate, label } from '../../../shared-types/field.ts';
import { formatNumber, wordsLocale } from '../../../shared-types/figures.ts';
import { failure, success, badInput, type Outcome } from '../../../shared-types/outcome.ts';
import { parseJson } from './parse-json.ts';

const entries = `at most ${formatNumber(mostEntries, { locale: wordsLocale })} entries`;
const most = `a list of ${entries}`;
/** A list that is left out of a file is an empty one. */
const list = z.array(z.unknown(), { error: most }).max(mostEntries, { error: most }).default([]);

/** A file around its entries, each of which is judged by itself. */
const fileAround = z.strictObject({
  format: z.literal(catalogueFormat),
  formatVersion: z.literal(catalogueFormatVersion),
  madeOn: isoDate({ label: 'Made on' }).optional(),
  program: label({ label: 'Program' }).optional(),
  items: list,
  tours: list,
  scenarios: list,
  readings: list,
  estimates: list,
  settings: z.unknown().optional(),
});
const catalogueFile = fileAround.refine(
  (file) => exchangeLists.reduce((sum, name) => sum + file[name].length, 0) <= mostEntries,
  { error: `lists of together ${entries}` },
);
export type CatalogueFile = z.output<typeof catalogueFile>;

/** The entries of a file as they stand there; anything else than a catalogue file is told by its own word. */
export function readCatalogueFile(text: string): Outcome<CatalogueFile> {
  const json = parseJson(text);
  if (!json.ok) return json;
  const foreign = whyForeign(json.value);
  if (foreign !== null) return failure('unreadable', `${foreign} Nothing was changed.`);
  const parsed = catalogueFile.safeParse(json.value);
  return parsed.success ? success(parsed.data) : badInput(parsed.error, json.value);
}

const comparisonFormat = 'chargewright-comparison';

/** Why a file is not one to read at all; null when it is. */
function whyForeign(value: unknown): string | null {
  const { format, formatVersion } = headOf(value);
  if (format === comparisonFormat)
    return 'This is the JSON of a comparison sheet: it holds results, and no catalogue to take in.';
  if (format !== catalogueFormat) {
    const beginning = `"format": "${catalogueFormat}"`;
    return `This is not a Chargewright catalogue file, which has ${beginning} and lists of ${exchangeLists.join(', ')}.`;
  }
  if (typeof formatVersion === 'number' && formatVersion > catalogueFormatVersion)
    return (
      `This file was written by a newer version of Chargewright (format ${formatVersion}); this one reads up to ` +
      `${catalogueFormatVersion}. Take it in with the newer version.`
    );
  return null;
}

const head = z.looseObject({ format: z.unknown().optional(), formatVersion: z.unknown().optional() });

function headOf(value: unknown): z.output<typeof head> {
  return head.safeParse(value).data ?? {};
}
