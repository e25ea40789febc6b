import { dayLengthClasses, passedOver } from '@neckfall/engine';
import { useState } from 'preact/hooks';
import { cropAsked } from '../../state/crop-asked.ts';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { Asking, Given } from './asking.ts';

const about = ['start', 'class'] as const;
type About = (typeof about)[number];

/** What has to be known of the crop before any question on what befell it tells much; nothing where it was said. */
export function useCropQuestions(): { ask: Asking | null; given: readonly Given[]; passed: number } {
  const { say } = voice.value;
  const [here, tell] = useState<Partial<Record<About, 'said' | 'passed'>>>({});
  const isSaid = { start: cropAsked.value.start !== null, class: cropAsked.value.crop !== null };
  const open = about.find((one) => !isSaid[one] && here[one] !== 'passed');
  const words = {
    start: (start: string) => say(`app.season.start.${start as 'sets'}`),
    class: (of: string) => say(`class.${of as 'long'}`),
  };
  const answers = { start: cropAsked.value.starts, class: dayLengthClasses };
  const put = (one: About, value: string | null) => {
    tell({ ...here, [one]: value === null ? 'passed' : 'said' });
    if (value !== null) go({ taken: null, [one]: value });
  };
  return {
    ask: open
      ? {
          question: say(`app.why.ask.${open}`),
          answers: [
            ...answers[open].map((value) => ({
              label: words[open](value),
              onPress: () => put(open, value),
            })),
            { label: say(`why.${passedOver}`), onPress: () => put(open, null) },
          ],
        }
      : null,
    given: about.flatMap((one) => {
      const value = asked.value[one];
      if (here[one] !== 'said' || value === null) return [];
      const onTakeBack = () => {
        tell({ ...here, [one]: undefined });
        go({ taken: null, [one]: null });
      };
      return [{ question: say(`app.why.ask.${one}`), answer: words[one](value), onTakeBack }];
    }),
    passed: about.filter((one) => here[one] === 'passed').length,
  };
}
