import { type Language, languages, loadLanguage, type Speaker, speaker, spokenOf } from '@neckfall/words';
import { parseChoice } from '../values/choice.ts';
import { outputForm, type RawOutputOptions } from './place-options.ts';

const unitSystems = ['metric', 'us'] as const;

/** Documents and tables for machines are metric and English whatever is asked for. */
export function speakerFor(raw: RawOutputOptions): Speaker {
  const usual = environmentLanguage();
  const language =
    raw.lang === undefined ? usual : parseChoice(raw.lang, '--lang', languages, speaker('metric', usual));
  const voice = speaker('metric', language);
  const units = raw.units === undefined ? 'metric' : parseChoice(raw.units, '--units', unitSystems, voice);
  return outputForm(raw) === 'text' ? speaker(units, language) : speaker('metric');
}

/** The speaker of the reader's own language, whatever form the answer has: for words that are typed. */
export function readersSpeaker({ json, csv, ...spoken }: RawOutputOptions): Speaker {
  return speakerFor(spoken);
}

/** The speaker of help and refusals, which is needed before the options are read; its language is loaded. */
export async function firstSpeaker(args: readonly string[]): Promise<Speaker> {
  const asked = wordAfter('--lang', args)?.trim().toLowerCase();
  const language = languages.find((known) => known === asked) ?? environmentLanguage();
  await loadLanguage(language);
  return speaker(wordAfter('--units', args) === 'us' ? 'us' : 'metric', language);
}

/** Words follow the environment as POSIX has it (LC_ALL before LC_MESSAGES before LANG); units never do. */
function environmentLanguage(): Language {
  const { LC_ALL, LC_MESSAGES, LANG } = process.env;
  return spokenOf([LC_ALL || LC_MESSAGES || LANG || '']);
}

function wordAfter(option: string, args: readonly string[]): string | undefined {
  const joined = args.find((word) => word.startsWith(`${option}=`));
  const at = args.indexOf(option);
  return joined?.slice(option.length + 1) ?? (at < 0 ? undefined : args[at + 1]);
}
