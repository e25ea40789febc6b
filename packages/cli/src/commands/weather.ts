import { formatDay, type WeatherText } from '@neckfall/engine';
import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import type { Answer } from '../answer/answer.ts';
import { deliver } from '../answer/deliver.ts';
import { monthDay } from '../documents/values.ts';
import { weatherDays, weatherDocument } from '../documents/weather-document.ts';
import { readingOf } from '../files/weather-reading.ts';
import { namedFile, readWeatherTexts } from '../files/weather-texts.ts';
import { askedReading } from '../frame/asked-reading.ts';
import { readingGrounds } from '../frame/reading-grounds.ts';
import { readingWarnings } from '../frame/reading-warnings.ts';
import { addOutputOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import type { RawOutputOptions } from '../options/place-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { addCorrectionOptions, type RawCorrections, readCorrections } from '../options/weather-options.ts';
import { csv } from '../output/csv.ts';
import { refuse } from '../refusal/refusal.ts';
import { weatherText } from '../text/weather-text.ts';

type Raw = RawOutputOptions & RawCorrections & { days?: boolean; ask?: string };

export function addWeather(root: Command, say: Say): void {
  const command = root
    .command('weather')
    .description(say('help.weather-command'))
    .argument('[files...]', say('help.weather-files'))
    .option('--ask <place>', say('help.weather-ask'))
    .option('--days', say('help.weather-days'));
  addCorrectionOptions(command, say);
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'weather station.csv --dates dmy --column "Out=tempMaxC:°F"'))
    .action(async (files: string[], raw: Raw) => deliver(await weather(files, raw), raw));
}

/** What files of weather are, or what a service answers, as one record, before anything of it is used. */
async function weather(files: readonly string[], raw: Raw): Promise<Answer> {
  const speaker = speakerFor(raw);
  const corrections = readCorrections(raw, speaker);
  if (raw.ask !== undefined && files.length > 0) {
    throw refuse('ask-and-files', { field: '--ask', values: { value: raw.ask } });
  }
  const asked = raw.ask === undefined ? null : await askedReading(raw.ask, speaker);
  const reading = asked?.reading ?? readingOf(textsOf(files), corrections, { utcOffsetH: null }, null);
  const assumed = [...(asked?.grounds ?? []), ...readingGrounds(reading, speaker)];
  const warnings = readingWarnings(reading, null, speaker);
  const sources = [...new Set(reading.files.map(({ format }) => speaker.say(`record.format.${format}`)))];
  const said = { assumed, warnings, sources };
  return {
    text: () => weatherText(reading, assumed, speaker),
    json: () => weatherDocument(reading, said, raw.days === true, asked?.forecastFrom),
    csv: () => csv(weatherDays(reading.record, reading.typicalYear ? monthDay : formatDay)),
    warnings,
  };
}

function textsOf(files: readonly string[]): WeatherText[] {
  if (files.length === 0) {
    throw refuse('missing-argument', {
      values: { command: 'neckfall weather', example: 'neckfall weather station.csv' },
      expected: '<files>',
    });
  }
  return files.flatMap((path) => readWeatherTexts(path, namedFile(path, null)));
}
