import type { Observation } from '@neckfall/engine';
import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { Doubt } from './Doubt.tsx';
import { oddQuestions } from './odd-questions.ts';

/** Notes an entry, once the grower stands by what is odd about it. */
export function useDoubt(ahead: SeasonAhead, note: (entry: Observation) => Promise<void>) {
  const [doubted, doubt] = useState<{ entry: Observation; questions: string[] } | null>(null);
  const form = useRef<HTMLFormElement | null>(null);
  const goOn = () => form.current?.querySelector<HTMLElement>('[type=submit]')?.focus();

  /** What is refused in words in its own field keeps the whole from being noted. */
  function offer(from: HTMLFormElement, entry: Observation): void {
    form.current = from;
    const refused = from.querySelector<HTMLElement>('[aria-invalid="true"]');
    if (refused) {
      refused.focus();
      return;
    }
    const questions = oddQuestions(entry, ahead);
    doubt(questions.length > 0 ? { entry, questions } : null);
    if (questions.length === 0) void note(entry);
  }

  const shown: JSX.Element | null = doubted && (
    <Doubt
      key={doubted.questions.join(' ')}
      questions={doubted.questions}
      onYes={() => {
        doubt(null);
        goOn();
        void note(doubted.entry);
      }}
      onNo={() => {
        doubt(null);
        form.current?.querySelector<HTMLElement>('input')?.focus();
      }}
    />
  );
  return { offer, shown };
}
