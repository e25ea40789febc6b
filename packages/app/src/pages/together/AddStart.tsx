import { startName } from '@neckfall/answers';
import { type StartMethod, startMethods } from '@neckfall/engine';
import { useState } from 'preact/hooks';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { DayField } from '../../controls/DayField.tsx';
import { go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import type { LineFound } from './drawn-lines.ts';
import { mostLines, writeStarts } from './together-address.ts';

type Props = { found: readonly { found: LineFound }[]; tell: (told: string) => void };

/** How far from today a start may lie, days. */
const reachDays = 730;

/** Puts one more start at the end, by its way and its day; a seventh is refused in words. */
export function AddStart({ found, tell }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  const [start, choose] = useState<StartMethod>('sets');
  const [startDay, setDay] = useState<number | null>(today.value);
  function add(event: Event): void {
    event.preventDefault();
    if (startDay === null) return;
    const starts = found.map(({ found }) => found.reply.told.summary.plan);
    const name = startName({ start, startDay }, speaker);
    if (starts.some((other) => other.start === start && other.startDay === startDay))
      tell(say('app.together.twice', { name }));
    else if (starts.length >= mostLines) tell(say('app.together.full'));
    else {
      go({ starts: writeStarts([...starts, { start, startDay }]) }, { replace: true });
      tell(say('app.together.added', { name }));
    }
  }
  return (
    <form class="form" onSubmit={add} aria-label={say('app.together.add-start')}>
      <h3 class="wide">{say('app.together.add-start')}</h3>
      <ChoiceField
        label={say('app.together.way')}
        value={start}
        options={startMethods.map((value) => ({ value, label: say(`start.${value}`) }))}
        onValue={choose}
      />
      <DayField
        label={say('app.together.begun')}
        hint={say('app.together.begun.hint')}
        value={startDay}
        min={today.value - reachDays}
        max={today.value + reachDays}
        onValue={setDay}
      />
      <div class="wide">
        <button type="submit">{say('app.together.add-start')}</button>
      </div>
    </form>
  );
}
