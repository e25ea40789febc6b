import { formatDay } from '@neckfall/engine';
import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import type { Answer } from '../answer/answer.ts';
import { deliver } from '../answer/deliver.ts';
import { monthDay } from '../documents/values.ts';
import { weatherDays, weatherDocument } from '../documents/weather-document.ts';
import { readingOf } from '../files/weather-reading.ts';
import { namedFile, readWeatherTexts } from '../files/weather-texts.ts';
import { readingGrounds } from '../frame/reading-grounds.ts';
import { readingWarnings } from '../frame/reading-warnings.ts';
import { addOutputOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import type { RawOutputOptions } from '../options/place-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { addCorrectionOptions, type RawCorrections, readCorrections } from '../options/weather-options.ts';
import { csv } from '../output/csv.ts';
import { weatherText } from '../text/weather-text.ts';

type Raw = RawOutputOptions & RawCorrections & { days?: boolean };

export function addWeather(root: Command, say: Say): void {
  const command = root
    .command('weather')
    .description(say('help.weather-command'))
    .argument('<files...>', say('help.weather-files'))
    .option('--days', say('help.weather-days'));
  addCorrectionOptions(command, say);
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'weather station.csv --dates dmy --column "Out=tempMaxC:°F"'))
    .action((files: string[], raw: Raw) => deliver(weather(files, raw), raw));
}

/** What files of weather are, as one record, before anything of them is used. */
function weather(files: readonly string[], raw: Raw): Answer {
  const speaker = speakerFor(raw);
  const corrections = readCorrections(raw, speaker);
  const texts = files.flatMap((path) => readWeatherTexts(path, namedFile(path, null)));
  const reading = readingOf(texts, corrections, { utcOffsetH: null }, null);
  const assumed = readingGrounds(reading, speaker);
  const warnings = readingWarnings(reading, null, speaker);
  const sources = [...new Set(reading.files.map(({ format }) => speaker.say(`record.format.${format}`)))];
  return {
    text: () => weatherText(reading, assumed, speaker),
    json: () => weatherDocument(reading, { assumed, warnings, sources }, raw.days === true),
    csv: () => csv(weatherDays(reading.record, reading.typicalYear ? monthDay : formatDay)),
    warnings,
  };
}
