import type { CoarseChoice } from '@neckfall/engine';
import { Working } from '../../controls/Working.tsx';
import { placeName, site } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { capital } from './capital.ts';
import { Narrow } from './Narrow.tsx';
import type { Growing } from './use-grown.ts';
import type { Filters, Wanted } from './wanted.ts';

type Props = { growing: Growing; wanted: Wanted; filters: Filters };

/** The kinds as a middling year has them, while the years are tried; or that nothing is all of what was asked. */
export function FirstLook({ growing, wanted, filters }: Props) {
  const { say } = voice.value;
  const { state, coarse, progress, stop, goOn } = growing;
  const rows = firstOfKinds(coarse, wanted);
  return (
    <>
      <h1>{say('app.which.title', { place: placeName.value })}</h1>
      <Narrow filters={filters} wanted={wanted} />
      {wanted.kinds.length > 0 && (
        <>
          {rows.length === 0 && state === 'at-work' && <Working />}
          {state === 'at-work' && (
            <div class="row">
              <Progress progress={progress} />
              <button type="button" onClick={stop}>
                {say('app.which.stop')}
              </button>
            </div>
          )}
          {state === 'stopped' && (
            <p role="status">
              {say('app.which.stopped')}{' '}
              <button type="button" onClick={goOn}>
                {say('app.which.go-on')}
              </button>
            </p>
          )}
          {rows.length > 0 && state === 'at-work' && (
            <p>{say('app.which.looking', { count: wanted.kinds.length, years: site.value?.years ?? 0 })}</p>
          )}
          <ol class="first-look">
            {rows.map((row) => (
              <li key={`${row.kind.type} ${row.kind.start}`}>{firstSentence(row)}</li>
            ))}
          </ol>
        </>
      )}
    </>
  );
}

function Progress({ progress }: Pick<Growing, 'progress'>) {
  const { done, total } = progress.value;
  const words = voice.value.say('app.which.progress', { done, total });
  return (
    <label class="progress">
      {words} <progress value={done} max={Math.max(1, total)} />
    </label>
  );
}

/** The best of each type and start, among those wanted. */
function firstOfKinds(coarse: readonly CoarseChoice[], { kinds }: Wanted): CoarseChoice[] {
  const names = new Set(kinds.flatMap((kind) => kind.names.map((name) => `${kind.start} ${name}`)));
  const seen = new Set<string>();
  return coarse.filter(({ kind }) => {
    const way = `${kind.type} ${kind.start}`;
    if (seen.has(way) || !kind.names.some((name) => names.has(`${kind.start} ${name}`))) return false;
    seen.add(way);
    return true;
  });
}

function firstSentence({ kind, trial }: CoarseChoice): string {
  const { say, day } = voice.value;
  const words = capital(say(`crop-kind.${kind.start}`, { type: say(`type.${kind.type}`) }));
  const { neckFallDay, verdict, startDay } = trial;
  if (neckFallDay === null || verdict !== 'good')
    return say('app.which.coarse-none', { kind: words, comes: say(`verdict.${verdict}`) });
  return say('app.which.coarse', { kind: words, date: day(startDay), neckFall: day(neckFallDay) });
}
