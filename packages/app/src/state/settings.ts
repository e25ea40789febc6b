import {
  type Language,
  languages,
  loadLanguage,
  type Speaker,
  speaker,
  spokenOf,
  type Units,
} from '@neckfall/words';
import { computed, effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { onRememberedElsewhere, remember, remembered } from '../device/remembered.ts';

export type Theme = 'system' | 'light' | 'dark';

/** Countries that measure in inches and °F; by the language the browser speaks, since nobody is asked. */
const inInches = /-(US|LR|MM)\b/i;

export const units: Signal<Units> = rememberedChoice(
  'units',
  ['metric', 'us'],
  inInches.test(navigator.language) ? 'us' : 'metric',
);
export const theme: Signal<Theme> = rememberedChoice('theme', ['system', 'light', 'dark'], 'system');

/** What the reader chose, else what the browser prefers. */
export const language: Signal<Language> = rememberedChoice(
  'language',
  languages,
  spokenOf(navigator.languages),
);
/** The language of the page: the chosen one as soon as its messages are here. */
const spoken: Signal<Language> = signal('en');

/** Words, dates and units for the reader. */
export const voice: ReadonlySignal<Speaker> = computed(() => speaker(units.value, spoken.value));

function rememberedChoice<Choice extends string>(key: string, choices: readonly Choice[], usual: Choice) {
  const known = (text: string | null) => choices.find((choice) => choice === text) ?? usual;
  const choice = signal(known(remembered(key)));
  onRememberedElsewhere(key, (text) => {
    choice.value = known(text);
  });
  return choice;
}

export function choose<Choice extends string>(
  key: 'units' | 'theme' | 'language',
  setting: Signal<Choice>,
  value: Choice,
) {
  setting.value = value;
  remember(key, value);
}

export function forgetSettings(): void {
  remember('units', null);
  remember('theme', null);
  remember('language', null);
  theme.value = 'system';
}

/**
 * The theme is a mark on the page, which the style sheets follow. Resolves once the language can be spoken; where its
 * messages cannot be had, the page goes on in the one before.
 */
export function followSettings(): Promise<void> {
  effect(() => {
    document.documentElement.dataset.theme = theme.value;
  });
  effect(() => {
    document.documentElement.lang = voice.value.locale;
  });
  const first = speak(language.value);
  language.subscribe((wanted) => void speak(wanted));
  return first;
}

async function speak(wanted: Language): Promise<void> {
  try {
    await loadLanguage(wanted);
    if (language.value === wanted) spoken.value = wanted;
  } catch {
    // the control shows what was chosen; the next load of the page tries again
  }
}
