import {
  againstUsual,
  comingOf,
  recordGaps,
  type WeatherCorrections,
  type WeatherSeries,
} from '@neckfall/engine';
import { useEffect, useRef, useState } from 'preact/hooks';
import { type Coming, questionOf } from '../../garden/weather-of.ts';
import { voice } from '../../state/settings.ts';
import { weatherHere } from '../../state/weather.ts';
import type { WeatherFound } from '../../worker/weather-read.ts';
import { Columns } from './Columns.tsx';
import { Doubts } from './Doubts.tsx';
import { daysMeasured } from './days-measured.ts';
import { FirstDays } from './FirstDays.tsx';
import { againstSentences, fileSentences, gapSentence } from './found-words.ts';
import { type Choice, Overlap } from './Overlap.tsx';

type Props = {
  found: WeatherFound;
  usual: WeatherSeries | null;
  /** Day number from which on it is forecast; null: none of it. */
  forecastFrom: number | null;
  /** Null where the columns are no question. */
  correct: { corrections: WeatherCorrections; on: (corrections: WeatherCorrections) => void } | null;
  onKeep: (coming: Coming, choice: Choice) => void;
  onLeave: () => void;
};

/** What was found, before anything is kept. */
export function Found({ found, usual, forecastFrom, correct, onKeep, onLeave }: Props) {
  const speaker = voice.value;
  const { say, dayWithYear } = speaker;
  const head = useRef<HTMLHeadingElement>(null);
  // a thermometer in the garden is nearer to it than a model
  const [choice, choose] = useState<Choice>(forecastFrom === null ? 'take' : 'keep');
  const { record, files, check } = found;
  const read = comingOf(found, '', null);
  const coming = read && check.impossible === null ? { ...read, forecastFrom } : null;
  const against =
    usual && coming
      ? againstSentences(againstUsual(record, usual, daysMeasured(record, forecastFrom)), speaker)
      : null;
  const question = coming && questionOf(weatherHere.value, coming);
  // what was found is what the reader asked for: go on there
  useEffect(() => {
    head.current?.focus();
    head.current?.scrollIntoView?.({ block: 'start' });
  }, []);
  return (
    <section class="found" aria-labelledby="found">
      <h2 id="found" ref={head} tabIndex={-1}>
        {say('app.weather.found')}
      </h2>
      {files.map((file, at) => (
        <p key={file.file}>{fileSentences(file, found.awayKm[at], speaker).join(' ')}</p>
      ))}
      {coming && (
        <>
          {forecastFrom !== null && (
            <p>{say('app.weather.forecast-from', { date: dayWithYear(forecastFrom) })}</p>
          )}
          <p>{gapSentence(record, recordGaps(record), speaker)}</p>
          {against && <p>{against.told}</p>}
          {against?.asked && <p class="alarm">{against.asked}</p>}
          {question && <Overlap question={question} choice={choice} onChoice={choose} />}
        </>
      )}
      {check.impossible !== null && read && (
        <p class="alarm">{say(`app.weather.impossible.${check.impossible}`)}</p>
      )}
      <div class="row">
        {coming && (
          <button type="button" class="do" onClick={() => onKeep(coming, choice)}>
            {say('app.weather.keep')}
          </button>
        )}
        <button type="button" onClick={onLeave}>
          {say('app.weather.leave')}
        </button>
      </div>
      {record.days > 0 && <FirstDays record={record} />}
      <Doubts
        flagged={files.flatMap(({ flagged }) => flagged)}
        count={files.reduce((sum, { flaggedCount }) => sum + flaggedCount, 0)}
        findings={check.findings}
      />
      {correct &&
        files.map((file, at) => (
          <Columns
            key={file.file}
            id={`columns-${at}`}
            title={
              files.length === 1
                ? say('app.weather.columns')
                : say('app.weather.columns.of', { file: file.file })
            }
            found={file}
            corrections={correct.corrections}
            onCorrect={correct.on}
          />
        ))}
    </section>
  );
}
