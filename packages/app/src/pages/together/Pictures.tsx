import { lineSentence, onWords } from '@neckfall/answers';
import { commonScaleOf, LowYearLine, pxPerRem, type YearLineProps } from '@neckfall/pictures';
import { useMemo } from 'preact/hooks';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import { DayBar } from './DayBar.tsx';
import {
  type Compared,
  type Drawn,
  type DrawnLine,
  headOf,
  lineOn,
  pictureOf,
  toldLines,
} from './drawn-lines.ts';
import { isOfBothHalves, linedUp } from './lined-up.ts';
import { movedDay } from './moved-day.ts';
import { Plumb, useDrag } from './Plumb.tsx';
import { shownDay } from './shown-day.ts';

type Props = { drawn: Drawn; compared: Compared };

/** The lines under each other, and the day that goes through all of them. */
export function Pictures({ drawn, compared }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  // the pictures stand still while the day is moved
  const still = useMemo(() => {
    const pictures = drawn.lines.map((line) => pictureOf(line, speaker));
    return (
      <FitWidth>
        {(width) => <Lines width={width} drawn={drawn} compared={compared} pictures={pictures} />}
      </FitWidth>
    );
  }, [drawn, compared, speaker]);
  return (
    <section aria-label={say('app.together')}>
      {isOfBothHalves(drawn) && (
        <p class="months-of">
          {say(drawn.isLinedUp ? 'app.together.lined-up' : 'app.together.calendar')}{' '}
          <button
            type="button"
            class="plain"
            onClick={() => go({ view: drawn.isLinedUp ? null : linedUp }, { replace: true })}
          >
            {say(drawn.isLinedUp ? 'app.together.months.calendar' : 'app.together.months.longest')}
          </button>
        </p>
      )}
      <DayBar drawn={drawn} />
      {still}
      <p class="picture-note">{say('app.together.dots')}</p>
      <p class="hint on-screen">{say('app.together.move')}</p>
    </section>
  );
}

type LinesProps = Props & { width: number; pictures: readonly Omit<YearLineProps, 'id' | 'width'>[] };

function Lines({ width, drawn, compared, pictures }: LinesProps) {
  const speaker = voice.value;
  const drag = useDrag(drawn.axis);
  const common = commonScaleOf(pictures, width);
  const told = toldLines(drawn.lines, compared, speaker);
  return (
    <div class="beside" style={{ '--wide': `${width / pxPerRem}rem` }}>
      <Plumb drawn={drawn} width={width} />
      <InTurn>
        {drawn.lines.map((line, i) => (
          <section key={line.asked.key} class="beside-line" aria-labelledby={`line-${i}`}>
            <h2 id={`line-${i}`}>{headOf(line, told[i], compared, speaker)}</h2>
            <p class="beside-crop">{lineSentence(told[i], speaker)}</p>
            <div class="beside-drag" {...drag}>
              <LowYearLine id={`beside-${i}`} width={width} {...pictures[i]} common={common} />
            </div>
            <OnDay drawn={drawn} line={line} />
          </section>
        ))}
      </InTurn>
    </div>
  );
}

/** A line on the day that is looked at. */
function OnDay({ drawn, line }: { drawn: Drawn; line: DrawnLine }) {
  return (
    <p class="beside-day">{onWords(lineOn(line, shownDay(drawn, movedDay.value)), voice.value).sentence}</p>
  );
}
