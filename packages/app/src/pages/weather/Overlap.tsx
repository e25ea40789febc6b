import type { Overlap as Question } from '@neckfall/engine';
import { useId } from 'preact/hooks';
import { voice } from '../../state/settings.ts';

/** What is kept stands, or what comes takes its place. */
export type Choice = 'keep' | 'take';

type Props = { question: Question; choice: Choice; onChoice: (choice: Choice) => void };

/** Days that are kept already and differ: the reader says which shall stand. */
export function Overlap({ question, choice, onChoice }: Props) {
  const { say, quantity } = voice.value;
  const name = useId();
  const { tempMinC, tempMaxC, rainMm } = question.largest;
  const mostC = Math.max(tempMinC, tempMaxC);
  return (
    <fieldset class="overlap">
      <legend>
        {say('app.weather.overlap.differs', {
          days: question.differing,
          temperature: mostC > 0 ? quantity('temperatureDifference', mostC) : 'none',
          rain: rainMm > 0 ? quantity('rain', rainMm) : 'none',
        })}
      </legend>
      {(['keep', 'take'] as const).map((value) => (
        <label key={value}>
          <input
            type="radio"
            name={name}
            value={value}
            checked={choice === value}
            onChange={() => onChoice(value)}
          />
          {say(`app.weather.overlap.${value}`)}
        </label>
      ))}
    </fieldset>
  );
}
