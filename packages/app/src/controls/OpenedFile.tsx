import type { GardenChange } from '@neckfall/engine';
import { gardenStanding, openedFile } from '../state/garden.ts';
import { voice } from '../state/settings.ts';

/** Says which file was opened on this page, and what was mended in it. */
export function OpenedFile() {
  const { say } = voice.value;
  const opened = openedFile.value;
  const plans = gardenStanding.value?.garden?.plantings.length ?? 0;
  return (
    <div role="status" class="opened">
      {opened && (
        <>
          <p>
            {opened.plan === null
              ? say('app.garden.opened', { file: opened.file, plans })
              : say('app.garden.opened.plan', { file: opened.file, name: opened.plan })}{' '}
            {opened.plan !== null &&
              !opened.hasPlace &&
              say('app.garden.opened.no-place', { name: opened.plan })}{' '}
            {opened.hadGarden && say('app.garden.opened.replaced')}
          </p>
          {opened.changes.length > 0 && (
            <>
              <p>{say('app.garden.opened.changed')}</p>
              <Mended changes={opened.changes} />
            </>
          )}
        </>
      )}
    </div>
  );
}

const mostTold = 8;

/** What was changed in reading a garden. */
export function Mended({ changes }: { changes: readonly GardenChange[] }) {
  const { say } = voice.value;
  return (
    <ul>
      {changes.slice(0, mostTold).map(({ code, path, found }) => (
        <li key={`${code} ${path}`}>{say(`garden.change.${code}`, { path, found })}</li>
      ))}
      {changes.length > mostTold && (
        <li>{say('app.garden.opened.more', { count: changes.length - mostTold })}</li>
      )}
    </ul>
  );
}
