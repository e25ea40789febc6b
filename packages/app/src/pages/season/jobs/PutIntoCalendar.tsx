import { useState } from 'preact/hooks';
import { fileName } from '../../../files/file-name.ts';
import { saveFile } from '../../../files/save-file.ts';
import { placeName } from '../../../state/place.ts';
import { planting } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';

/** The work as a file for the reader's own calendar; what writes it is fetched when asked for. */
export function PutIntoCalendar({ ahead }: { ahead: SeasonAhead }) {
  const { say } = voice.value;
  const [told, tell] = useState('');

  async function save(): Promise<void> {
    const file = fileName([planting.value?.name ?? placeName.value], '.ics');
    try {
      const { calendarFile } = await import('./calendar-file.ts');
      saveFile(file, calendarFile(ahead));
      tell(say('app.season.save.done', { file }));
    } catch (error) {
      tell(say('app.season.save.failed', { file, reason: (error as Error).message }));
    }
  }

  return (
    <div class="into-calendar">
      <button type="button" onClick={() => void save()}>
        {say('app.work.calendar')}
      </button>
      <p class="hint">{say('app.work.calendar.how')}</p>
      <p role="status">{told}</p>
    </div>
  );
}
