import { classOfType, dayLengthClasses, type OnionType, onionTypes, startMethods } from '@neckfall/engine';
import {
  type CatalogueAsset,
  type CatalogueEntry,
  entryFields,
} from '../../src/catalogue/catalogue-entry.ts';
import { colours, cropKinds, cultivarUses, maturities, shapes, typeReasons } from '../../src/index.ts';

const sets: Record<string, readonly unknown[]> = {
  kind: cropKinds,
  class: dayLengthClasses,
  type: onionTypes,
  argued: typeReasons,
  colour: colours,
  shape: shapes,
  uses: cultivarUses,
  mild: [true, false],
  hybrid: [true, false],
  bolting: ['slow', 'ready'],
  maturity: maturities,
  starts: startMethods,
};
/** Numbers without a unit in their names mean nothing. */
const units = /(H|Deg|Days|Months|Share)$/;
const required = ['name', 'class', 'type', 'argued', 'regions', 'starts'] as const;
const known = new Set<string>([...entryFields, 'type', 'argued', 'source', 'from', 'memory']);

/** What is wrong with an entry of the catalogue; empty where all is well. */
export function entryIssues(entry: CatalogueEntry, sources: CatalogueAsset['sources']): string[] {
  const issues: string[] = [];
  const fields = entry as Record<string, unknown>;
  for (const field of required) if (fields[field] === undefined) issues.push(`${field} is missing`);
  for (const field of Object.keys(fields)) if (!known.has(field)) issues.push(`${field} is no field`);
  for (const [field, allowed] of Object.entries(sets)) {
    for (const value of [fields[field] ?? []].flat()) {
      if (!allowed.includes(value)) issues.push(`${field} ${value}: expected ${allowed.join(', ')}`);
    }
  }
  for (const code of entry.soldIn ?? []) {
    if (!/^[A-Z]{2}$/.test(code)) issues.push(`soldIn ${code}: a country code of two capitals was expected`);
  }
  issues.push(...numberIssues(entry), ...originIssues(entry, sources), ...kindIssues(entry));
  return issues;
}

function numberIssues(entry: CatalogueEntry): string[] {
  const issues: string[] = [];
  const visit = (name: string, value: unknown) => {
    if (typeof value === 'number') {
      if (!units.test(name)) issues.push(`${name} ${value} has no unit in its name`);
      else if (!Number.isFinite(value)) issues.push(`${name} is no number`);
    } else if (Array.isArray(value)) for (const item of value) visit(name, item);
    else if (value !== null && typeof value === 'object') {
      for (const [key, item] of Object.entries(value)) visit(key, item);
    }
  };
  for (const [field, value] of Object.entries(entry)) visit(field, value);
  const { need, daysToMaturity, keepsMonths } = entry;
  if (need && !(need.fromH >= 8 && need.fromH <= need.toH && need.toH <= 18)) issues.push('need: 8 to 18 h');
  if (need && (need.latitudeDeg === null) !== (need.light === 'lamps')) {
    issues.push('need: under lamps there is no latitude, elsewhere there must be one');
  }
  if (
    daysToMaturity &&
    !(daysToMaturity.fromDays >= 50 && daysToMaturity.fromDays <= daysToMaturity.toDays)
  ) {
    issues.push('daysToMaturity: from 50 days up, the first no later than the last');
  }
  if (keepsMonths && !(keepsMonths[0] > 0 && keepsMonths[0] <= keepsMonths[1])) {
    issues.push('keepsMonths: above 0, the first no more than the last');
  }
  return issues;
}

/** Every field is from a source that is listed, or marked as memory, and not both. */
function originIssues(entry: CatalogueEntry, sources: CatalogueAsset['sources']): string[] {
  const { source, from = {}, memory = [] } = entry;
  const issues: string[] = [];
  for (const key of [...(source === undefined ? [] : [source]), ...Object.values(from)]) {
    if (!(key in sources)) issues.push(`source ${key} is not listed`);
  }
  for (const field of [...Object.keys(from), ...memory]) {
    if ((entry as Record<string, unknown>)[field] === undefined)
      issues.push(`${field} has an origin and no value`);
  }
  for (const field of memory) if (field in from) issues.push(`${field} is both memory and from a source`);
  if (entry.keepsMonths && memory.includes('keepsMonths')) {
    issues.push('keepsMonths from memory: leave them out, the usual ones of its kind are taken');
  }
  return issues;
}

/** What must fit together. */
function kindIssues(entry: CatalogueEntry): string[] {
  const issues: string[] = [];
  const isBulb = (entry.kind ?? 'bulb-onion') === 'bulb-onion';
  const starts = entry.starts ?? [];
  if (isBulb && starts.length === 0) issues.push('starts: a bulb onion is sold as something');
  if (!isBulb && starts.length > 0) issues.push('starts: shallots and multiplier onions are not modelled');
  if (isBulb && starts.includes('sets') !== (entry.uses ?? []).includes('sets')) {
    issues.push('sets are a start if and only if they are a use');
  }
  if ((entry.argued ?? []).length === 0) issues.push('argued: say what told the type');
  if ((entry.argued ?? []).includes('need') !== (entry.need !== undefined)) {
    issues.push('argued: a need argues if and only if there is one');
  }
  const isPrinted = entry.source !== undefined && !entry.memory?.includes('class');
  const typesClass = classOfType[entry.type as OnionType];
  if (!isPrinted && typesClass !== entry.class)
    issues.push(`class ${entry.class} is not that of ${entry.type}`);
  return issues;
}
