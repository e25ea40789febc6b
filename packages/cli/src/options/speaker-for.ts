import { type Speaker, speaker } from '@neckfall/words';
import { parseChoice } from '../values/choice.ts';
import { outputForm, type RawOutputOptions } from './place-options.ts';

const unitSystems = ['metric', 'us'] as const;

/** Documents and tables for machines are metric whatever the units asked for. */
export function speakerFor(raw: RawOutputOptions): Speaker {
  const metric = speaker('metric');
  const units = raw.units === undefined ? 'metric' : parseChoice(raw.units, '--units', unitSystems, metric);
  return outputForm(raw) === 'text' ? speaker(units) : metric;
}
