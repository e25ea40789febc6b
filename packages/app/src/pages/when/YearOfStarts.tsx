import { type PlaceYear, startsYearDays, tropicsSentence } from '@neckfall/answers';
import type { WhenAnswer } from '@neckfall/engine';
import {
  hillsDayAt,
  StartHills,
  StartMarkOverlay,
  startHillsOf,
  startHillsTableOf,
  YearLine,
  yearLineOf,
  yearTableOf,
} from '@neckfall/pictures';
import type { ComponentChildren } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { grownSite } from '../../state/grown-site.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';

import { StartSlider } from './StartSlider.tsx';

type Props = {
  answer: WhenAnswer;
  year: PlaceYear;
  needSunUpH: number;
  /** The start that is chosen, a day number of the year shown. */
  day: number;
  onDay: (day: number) => void;
  /** The day to start, from today on. */
  best: number;
};

/** The year line, and under it the starts of the same days as hills; the start is moved by hand or by keys. */
export function YearOfStarts({ answer, year, needSunUpH, day, onDay, best }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  const { firstDay } = year;
  const now = today.value;
  // the year does not change while a start is moved, and is not drawn anew
  const { note, line, stillLine } = useMemo(() => {
    const { note, ...line } = yearLineOf({ year, needSunUpH, today: now, crop: null, speaker });
    return {
      note,
      stillLine: (
        <FitWidth>{(width) => <YearLine id="starts-year" width={width} note={null} {...line} />}</FitWidth>
      ),
      line,
    };
  }, [year, needSunUpH, now, speaker]);
  const weather = grownSite.value?.weather ? 'some' : 'drawn';
  const hills = useMemo(
    () => startHillsOf({ answer, firstDay, today: now, chosen: null, speaker }),
    [answer, firstDay, now, speaker],
  );
  const tropics = useMemo(() => {
    const months = year.months.map(({ rainMm, highC }, i) => ({ month: i + 1, rainMm, tempMaxC: highC }));
    return tropicsSentence(year.sunUpH, months, speaker);
  }, [year, speaker]);
  return (
    <section aria-labelledby="starts">
      <h2 id="starts" class="unseen">
        {say('app.when.year')}
      </h2>
      <InTurn live>
        {stillLine}
        <FitWidth>
          {(width) => (
            <Handle width={width} firstDay={firstDay} onDay={onDay}>
              <StillHills width={width} hills={hills} />
              <StartMarkOverlay
                width={width}
                firstDay={firstDay}
                days={startsYearDays}
                sizeText={hills.sizeText}
                leavesText={hills.leavesText}
                day={day}
                text={say('picture.hills.start', { date: speaker.day(day) })}
              />
            </Handle>
          )}
        </FitWidth>
        <StartSlider answer={answer} firstDay={firstDay} day={day} onDay={onDay} />
        {answer.windows.length > 0 && day !== best && (
          <button type="button" class="plain" onClick={() => onDay(best)}>
            {say('app.when.best', { date: speaker.day(best) })}
          </button>
        )}
        <p class="hint on-screen">{say('app.when.year.move')}</p>
        <TakePicture
          opener={say('app.when.take.year')}
          name="year"
          what={() => say('app.take.of.place-year')}
          draw={(width) => <YearLine id="kept-year" width={width} {...line} note={null} />}
          summary={line.summary}
          note={note}
          table={() => yearTableOf({ year, speaker })}
          weather={weather}
        />
        <TakePicture
          opener={say('app.when.take.starts')}
          name="starts"
          what={() => say('app.when.year')}
          draw={(width) => (
            <StartHills
              id="kept-hills"
              width={width}
              {...startHillsOf({ answer, firstDay, today: now, chosen: day, speaker })}
            />
          )}
          summary={hills.summary}
          table={() => startHillsTableOf({ answer, firstDay, today: now, chosen: null, speaker })}
          weather={weather}
        />
        <details>
          <summary>{say('app.when.year.read')}</summary>
          <p>{say('app.when.year.lead')}</p>
          {note !== null && <p>{note}</p>}
          {tropics !== null && <p>{tropics}</p>}
        </details>
      </InTurn>
    </section>
  );
}

type Hills = ReturnType<typeof startHillsOf>;

/** The hills stand still likewise. */
function StillHills({ width, hills }: { width: number; hills: Hills }) {
  return useMemo(() => <StartHills id="start-hills" width={width} {...hills} />, [width, hills]);
}

type HandleProps = {
  width: number;
  firstDay: number;
  onDay: (day: number) => void;
  children: ComponentChildren;
};

/** Lets a finger or a mouse take the start and move it; for keys there is the slider. */
function Handle({ width, firstDay, onDay, children }: HandleProps) {
  const isHeld = useRef(false);
  const take = (event: PointerEvent & { currentTarget: HTMLElement }) => {
    const svg = event.currentTarget.querySelector('svg');
    if (!svg) return;
    // a picture's px grow with the reader's text
    const box = svg.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * width;
    onDay(hillsDayAt({ width, firstDay, days: startsYearDays }, x));
  };
  return (
    <div
      class="start-drag"
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        isHeld.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
        take(event);
      }}
      onPointerMove={(event) => isHeld.current && take(event)}
      onPointerUp={() => {
        isHeld.current = false;
      }}
      onPointerCancel={() => {
        isHeld.current = false;
      }}
    >
      {children}
    </div>
  );
}
