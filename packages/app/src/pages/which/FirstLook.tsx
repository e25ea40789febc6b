import type { CoarseChoice } from '@neckfall/engine';
import { voice } from '../../state/settings.ts';
import type { Growing } from './use-grown.ts';
import type { Wanted } from './wanted.ts';

type Props = { growing: Growing; wanted: Wanted };

/** While the years are tried, a quiet place for the picture; the kinds as a middling year has them where that stops. */
export function FirstLook({ growing, wanted }: Props) {
  const { say } = voice.value;
  const { state, coarse, progress, stop, goOn } = growing;
  if (state !== 'stopped') {
    return (
      <>
        <p role="status">{say('app.working')}</p>
        <div class="onions-to-come" aria-hidden="true">
          <span />
          <span />
          <span />
          <span />
        </div>
        {state === 'at-work' && (
          <div class="row">
            <Progress progress={progress} />
            <button type="button" onClick={stop}>
              {say('app.which.stop')}
            </button>
          </div>
        )}
      </>
    );
  }
  return (
    <>
      <p role="status">
        {say('app.which.stopped')}{' '}
        <button type="button" onClick={goOn}>
          {say('app.which.go-on')}
        </button>
      </p>
      {firstOfKinds(coarse, wanted).map((row) => (
        <FirstRow key={`${row.kind.type} ${row.kind.start}`} row={row} />
      ))}
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

function FirstRow({ row: { kind, trial } }: { row: CoarseChoice }) {
  const { say, day } = voice.value;
  const words = say(`crop-kind.${kind.start}`, { type: say(`type-head.${kind.type}`) });
  const { neckFallDay, verdict, startDay } = trial;
  const isGood = neckFallDay !== null && verdict === 'good';
  return (
    <p class="first-look" data-type={kind.type} data-start={kind.start}>
      {isGood
        ? say('app.which.coarse', { kind: words, date: day(startDay), neckFall: day(neckFallDay) })
        : say('app.which.coarse-none', { kind: words, comes: say(`verdict.${verdict}`) })}
    </p>
  );
}
