import { classOfType, startedOn, type WhenAnswer } from '@neckfall/engine';
import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import { Working } from '../../controls/Working.tsx';
import { onion } from '../../state/onion.ts';
import { onionLook } from '../../state/onion-look.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { startOptions } from '../../state/start-options.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import { OnionFields } from './OnionFields.tsx';
import { SeasonFrom } from './SeasonFrom.tsx';
import { StartedOn } from './StartedOn.tsx';
import { StartTables } from './StartTables.tsx';
import { useMovedDay } from './use-moved-day.ts';
import { useShownYear } from './use-shown-year.ts';
import { YearOfStarts } from './YearOfStarts.tsx';

type Props = {
  answer: WhenAnswer;
  /** The day to start. */
  ahead: number;
  needSunUpH: number;
  name: string | null;
  /** The answer, which stands beside the picture, and why. */
  said: ComponentChildren;
  why: ComponentChildren;
};

/** All that follows the start day while it is moved; the rest of the page stands still. */
export function Moving({ answer, ahead, needSunUpH, name, said, why }: Props) {
  const [day, onDay] = useMovedDay(asked.value.date ?? ahead);
  const year = useShownYear(answer, day);
  const { plan } = answer.starts[0].summary;
  const { type, start } = plan;
  const fields = useMemo(() => <OnionFields type={type} start={start} />, [type, start]);
  const { crop } = onion.value;
  const { plantOut } = asked.value;
  const plantOutDay = plantOut !== null && plantOut > day ? plantOut : null;
  return (
    <InTurn live>
      <div class="spread">
        <InTurn live>
          {said}
          <div class="seen">
            {year ? (
              <YearOfStarts
                answer={answer}
                year={year}
                needSunUpH={needSunUpH}
                day={day}
                onDay={onDay}
                best={ahead}
              />
            ) : (
              <Working />
            )}
          </div>
          <div class="rest">
            {why}
            <details>
              <summary>{voice.value.say('app.when.other')}</summary>
              <form class="form" onSubmit={(event) => event.preventDefault()}>
                {fields}
                <StartedOn start={start} day={day} />
              </form>
            </details>
          </div>
        </InTurn>
      </div>
      <SeasonFrom
        plan={startedOn({ ...plan, ...startOptions.value }, day, plantOutDay)}
        crop={crop === null || 'class' in crop ? { class: classOfType[type] } : { type, traits: plan.traits }}
        name={name}
        look={onionLook.value}
        link={{ ...(crop === null ? { class: classOfType[type] } : {}), start }}
      />
      {year && <StartTables answer={answer} year={year} />}
    </InTurn>
  );
}
