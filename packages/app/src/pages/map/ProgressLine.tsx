import { voice } from '../../state/settings.ts';
import type { Atlas } from './use-atlas.ts';

/** How far the map has come, and the button that stops it or has it go on. */
export function ProgressLine({ atlas, finest }: { atlas: Atlas; finest: number }) {
  const { say, number } = voice.value;
  const { wholeDeg, working, failed, isStopped, stop, goOn } = atlas;
  const isWhole = wholeDeg === finest;
  return (
    <div class="row atlas-progress">
      <p>
        {working && !isStopped
          ? say('app.atlas.working', { step: number(working.stepDeg, 1), left: working.left })
          : wholeDeg !== null &&
            say('app.atlas.whole', { step: number(wholeDeg, 1), done: isWhole ? 'yes' : 'no' })}
      </p>
      {failed === null && !isWhole && (
        <button type="button" onClick={isStopped ? goOn : stop}>
          {say(isStopped ? 'app.atlas.go-on' : 'app.atlas.stop')}
        </button>
      )}
      {failed !== null && (
        <p role="alert" class="alarm">
          {say('app.atlas.failed', { reason: failed })}{' '}
          <button type="button" onClick={() => location.reload()}>
            {say('app.try-again')}
          </button>
        </p>
      )}
      <p role="status" class="unseen">
        {wholeDeg !== null &&
          say('app.atlas.whole', { step: number(wholeDeg, 1), done: isWhole ? 'yes' : 'no' })}
      </p>
    </div>
  );
}
