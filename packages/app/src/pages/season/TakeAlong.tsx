import { dayOf } from '@neckfall/answers';
import { formatDay } from '@neckfall/engine';
import { useState } from 'preact/hooks';
import { Fold } from '../../controls/Fold.tsx';
import { printSheet } from '../../device/printing.ts';
import { csvText } from '../../files/csv-text.ts';
import { fileName } from '../../files/file-name.ts';
import { saveFile } from '../../files/save-file.ts';
import { placeName } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';

type Told = { state: 'done'; file: string } | { state: 'failed'; file: string; reason: string };

/** Copies to take along: the days as a table, a sheet of paper. Pictures have theirs under them. */
export function TakeAlong({ ahead }: { ahead: SeasonAhead }) {
  const { say } = voice.value;
  const [told, tell] = useState<Told | null>(null);
  const { plan } = ahead.summary;
  const words = [asked.value.name ?? placeName.value, formatDay(plan.startDay)];

  async function save(file: string, make: () => Blob | Promise<Blob>): Promise<void> {
    try {
      saveFile(file, await make());
      tell({ state: 'done', file });
    } catch (error) {
      tell({ state: 'failed', file, reason: (error as Error).message });
    }
  }

  return (
    <Fold class="take-along" id="take-along" title={say('app.season.save')}>
      <div class="row">
        <button
          type="button"
          onClick={() =>
            save(
              fileName([...words, 'days'], '.csv'),
              () => new Blob([csvText(ahead.days.map(dayOf))], { type: 'text/csv' }),
            )
          }
        >
          {say('app.season.save.csv')}
        </button>
        <button type="button" onClick={printSheet}>
          {say('app.season.save.print')}
        </button>
      </div>
      <p role="status">
        {told?.state === 'done' && say('app.season.save.done', { file: told.file })}
        {told?.state === 'failed' && say('app.season.save.failed', { file: told.file, reason: told.reason })}
      </p>
    </Fold>
  );
}
