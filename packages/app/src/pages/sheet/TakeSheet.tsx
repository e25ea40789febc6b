import { type Sheet, sheetHtml } from '@neckfall/pictures';
import { useState } from 'preact/hooks';
import { printSheet } from '../../device/printing.ts';
import { fileName } from '../../files/file-name.ts';
import { saveFile } from '../../files/save-file.ts';
import { placeName } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { facesOf } from './faces-of.ts';

type Told = { state: 'done'; file: string } | { state: 'failed'; reason: string };

/** Prints the sheet, or keeps it as a file. */
export function TakeSheet({ sheet }: { sheet: Sheet }) {
  const { say } = voice.value;
  const [told, tell] = useState<Told | null>(null);
  const keep = async () => {
    const file = fileName(['onions', asked.value.name ?? placeName.value], '.html');
    try {
      const html = sheetHtml(sheet, await facesOf(sheet));
      saveFile(file, new Blob([html], { type: 'text/html' }));
      tell({ state: 'done', file });
    } catch (error) {
      tell({ state: 'failed', reason: (error as Error).message });
    }
  };
  return (
    <div class="row">
      <button type="button" onClick={printSheet}>
        {say('app.sheet.print')}
      </button>
      <button type="button" class="plain" onClick={() => void keep()}>
        {say('app.sheet.keep')}
      </button>
      <span role="status">
        {told?.state === 'done' && say('app.sheet.kept', { file: told.file })}
        {told?.state === 'failed' && say('app.sheet.failed', { reason: told.reason })}
      </span>
    </div>
  );
}
