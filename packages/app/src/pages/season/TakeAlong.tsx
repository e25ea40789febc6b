import { dayOf } from '@neckfall/answers';
import { formatDay } from '@neckfall/engine';
import { SectionRow, svgText, YearLine } from '@neckfall/pictures';
import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import { Fold } from '../../controls/Fold.tsx';
import { inkOf } from '../../device/ink-of.ts';
import { pngOfSvg } from '../../device/png-of-svg.ts';
import { printSheet } from '../../device/printing.ts';
import { csvText } from '../../files/csv-text.ts';
import { fileName } from '../../files/file-name.ts';
import { saveFile } from '../../files/save-file.ts';
import { placeName } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';
import { seasonSection } from './SectionFigure.tsx';
import { seasonYearLine } from './YearFigure.tsx';

/** Pictures are drawn at the width of a desk, px. */
const pictureWidth = 960;

type Told = { state: 'done'; file: string } | { state: 'failed'; file: string; reason: string };

/** Copies to take along: pictures, the days as a table, a sheet of paper. */
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

  const pictures: { what: string; name: string; draw: () => VNode }[] = [
    {
      what: say('app.season.save.year'),
      name: 'year',
      draw: () => <YearLine id="kept-year" width={pictureWidth} {...seasonYearLine(ahead)} />,
    },
    {
      what: say('app.season.save.sections'),
      name: 'bulbs',
      draw: () => <SectionRow width={pictureWidth} {...seasonSection(ahead.summary).picture} />,
    },
  ];
  const svg = ({ what, draw }: (typeof pictures)[number]) =>
    svgText(draw(), { colours: inkOf(document.documentElement), title: `${what}: ${words.join(', ')}` });

  return (
    <Fold class="take-along" id="take-along" title={say('app.season.save')}>
      <div class="row">
        {pictures.map((picture) => {
          const { name, what } = picture;
          return [
            <button
              key={`${name}-svg`}
              type="button"
              onClick={() =>
                save(
                  fileName([...words, name], '.svg'),
                  () => new Blob([svg(picture)], { type: 'image/svg+xml' }),
                )
              }
            >
              {say('app.season.save.svg', { what })}
            </button>,
            <button
              key={`${name}-png`}
              type="button"
              onClick={() => save(fileName([...words, name], '.png'), () => pngOfSvg(svg(picture)))}
            >
              {say('app.season.save.png', { what })}
            </button>,
          ];
        })}
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
