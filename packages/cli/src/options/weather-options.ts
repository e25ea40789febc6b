import { type DateOrder, type WeatherCorrections, weatherQuantities } from '@neckfall/engine';
import type { Say, Speaker } from '@neckfall/words';
import type { Command } from 'commander';
import { refuse } from '../refusal/refusal.ts';
import { parseChoice } from '../values/choice.ts';
import { parseNumber } from '../values/number.ts';
import { another } from './add-options.ts';

/** What the reader of a file says of it that was guessed otherwise. */
export type RawCorrections = { column?: string[]; dates?: string; utcOffset?: string };

const dateOrders: readonly DateOrder[] = ['dmy', 'mdy', 'ymd'];
/** A column that is left out. */
const notUsed = 'none';
const choices = [...weatherQuantities, notUsed] as const;

export function addCorrectionOptions(command: Command, say: Say): Command {
  return command
    .option('--column <name=what:unit>', say('help.column', { choices: choices.join(', ') }), another)
    .option('--dates <dmy|mdy|ymd>', say('help.dates'))
    .option('--utc-offset <hours>', say('help.utc-offset'));
}

export function readCorrections(raw: RawCorrections, speaker: Speaker): WeatherCorrections {
  return {
    columns: (raw.column ?? []).map((text) => readColumn(text, speaker)),
    dateOrder: raw.dates === undefined ? null : parseChoice(raw.dates, '--dates', dateOrders, speaker),
    utcOffsetH:
      raw.utcOffset === undefined
        ? null
        : parseNumber(raw.utcOffset, { field: '--utc-offset', min: -12, max: 14, unit: 'h' }),
  };
}

/** NAME=WHAT or NAME=WHAT:UNIT; the name may itself have an equals sign in it. */
function readColumn(text: string, speaker: Speaker): WeatherCorrections['columns'][number] {
  const field = '--column';
  const [, column, asked, unit] = /^(.+)=([^=:]*)(?::([^=]*))?$/s.exec(text) ?? [];
  if (column === undefined || asked === undefined) {
    throw refuse('column-form', { field, values: { value: text } });
  }
  // the names of quantities have capitals, which a reader may not mind
  const lower = asked.trim().toLowerCase();
  const known = choices.find((choice) => choice.toLowerCase() === lower);
  const as = known ?? parseChoice(asked, field, choices, speaker);
  return { column: column.trim(), as: as === notUsed ? null : as, unit: unit?.trim() || null };
}
