import { gardenRanges, type Observation } from '@neckfall/engine';
import { useState } from 'preact/hooks';
import { inUnits } from '../../../controls/MeasureField.tsx';
import { lastLookedAt } from '../../../garden/seen.ts';
import { seen } from '../../../state/planting.ts';
import { units, voice } from '../../../state/settings.ts';
import { today } from '../../../state/today.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { type Draft, emptyDraft, entryOf, kinds, saysSomething } from './draft.ts';
import { NumberFields } from './NumberFields.tsx';
import { daysToNote, likelyValue, type Question } from './question.ts';
import { Stepper } from './Stepper.tsx';
import { useDoubt } from './use-doubt.tsx';
import { When } from './When.tsx';

/** Millimetres and inches that a thumb adds at a time. */
const steps = { mm: 5, inch: 0.25 } as const;

type Props = { question: Question; ahead: SeasonAhead; onNoted: (entry: Observation) => Promise<boolean> };

/** The one thing to look for now: a number under the thumb, and a button. */
export function QuickEntry({ question, ahead, onNoted }: Props) {
  const { say } = voice.value;
  const [changed, change] = useState<Partial<Draft>>({});
  const usual = emptyDraft(today.value, lastLookedAt(seen.value));
  const draft: Draft = {
    ...usual,
    numbers: { [question]: likelyValue(question, ahead.stand, seen.value) },
    ...changed,
  };
  const put = (more: Partial<Draft>) => change((before) => ({ ...before, ...more }));
  const doubt = useDoubt(ahead, async (entry) => {
    if (await onNoted(entry)) change({});
  });
  const isOfPlants = question === 'leavesGreen' || question === 'bulbMm';
  return (
    <>
      <form
        class="quick"
        onSubmit={(event) => {
          event.preventDefault();
          const entry = entryOf(draft);
          if (saysSomething(entry)) doubt.offer(event.currentTarget, entry);
          else event.currentTarget.querySelector('input')?.focus();
        }}
      >
        {question === 'weighedKg' ? (
          <>
            <p class="asked">{say('app.seen.ask.weighedKg')}</p>
            <div class="form">
              <NumberFields fields={kinds.lifted} draft={draft} onDraft={put} />
            </div>
          </>
        ) : (
          <Stepper
            {...asked(question)}
            {...scaleOf(question, draft.numbers[question] ?? null, (value) =>
              put({ numbers: { [question]: value } }),
            )}
          />
        )}
        <button type="submit" class="note-it">
          {say('app.seen.note-it')}
        </button>
        <When
          draft={draft}
          days={daysToNote(ahead.summary, today.value)}
          isOverPlants={isOfPlants}
          onDraft={put}
        />
      </form>
      {doubt.shown}
    </>
  );
}

function asked(question: Exclude<Question, 'weighedKg'>) {
  const { say } = voice.value;
  return {
    question: say(`app.seen.ask.${question}`, { unit: units.value }),
    hint: say(`app.seen.ask.${question}.hint`),
  };
}

/** The number as the reader counts or measures it. */
function scaleOf(
  question: Exclude<Question, 'weighedKg'>,
  value: number | null,
  onValue: (value: number | null) => void,
) {
  if (question === 'leavesGreen') {
    const [min, max] = gardenRanges[question];
    return { value, step: 1, digits: 1, min, max, onValue };
  }
  if (question === 'topsOverShare') {
    return {
      value: value === null ? null : Math.round(value * 100) / 10,
      step: 1,
      digits: 1,
      min: 0,
      max: 10,
      onValue: (tenths: number | null) => onValue(tenths === null ? null : tenths / 10),
    };
  }
  const { shown, own, ...scale } = inUnits('mm', gardenRanges[question]);
  return {
    ...scale,
    value: shown(value),
    step: units.value === 'us' ? steps.inch : steps.mm,
    onValue: (given: number | null) => onValue(own(given)),
  };
}
