import type { OddValue } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** The question that an odd value asks. */
export function oddSentence({ code, values }: OddValue, speaker: Speaker): string {
  const words = Object.entries(values).map(([name, value]) => told(name, value, speaker));
  return speaker.say(`odd.${code}`, Object.fromEntries(words));
}

/** Each value under the name that its sentence has for it, in words by its unit. */
function told(name: string, value: number, speaker: Speaker): [string, string] {
  const { number, quantity, dayWithYear } = speaker;
  switch (name) {
    case 'neckMm':
      return ['neck', quantity('bulbLength', value)];
    case 'bulbMm':
      return ['bulb', quantity('bulbLength', value)];
    case 'litres':
      return ['water', quantity('water', value)];
    case 'grams':
      return ['feed', quantity('bulbMass', value)];
    case 'areaM2':
      return ['area', quantity('area', value)];
    case 'sharePct':
      return ['share', number(value)];
    case 'beforePct':
      return ['before', number(value)];
    case 'day':
    case 'beforeDay':
      return ['date', dayWithYear(value)];
    case 'startDay':
      return ['start', dayWithYear(value)];
    case 'today':
      return ['today', dayWithYear(value)];
    default:
      return [name, number(value, 1)];
  }
}
