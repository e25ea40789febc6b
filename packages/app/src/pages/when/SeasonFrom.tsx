import { leavesGoneSentence, type SeasonRowKey, seasonRows, sharesSentence } from '@neckfall/answers';
import type { CropAsked, Plan, SeasonSummary } from '@neckfall/engine';
import { DataTable, type OnionLook, SectionRow, sectionOf } from '@neckfall/pictures';
import { useMemo } from 'preact/hooks';
import { Fault } from '../../controls/Fault.tsx';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { Working } from '../../controls/Working.tsx';
import { grownSite, grownSiteKey } from '../../state/grown-site.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { useLiveSeason } from './use-live-season.ts';

type Props = {
  plan: Plan;
  /** The onion; a class may mean another kind in autumn than in spring. */
  crop: CropAsked;
  name: string | null;
  look: OnionLook;
  /** What the address needs for the same plan, its day apart. */
  link: Parameters<typeof hrefTo>[1];
};

/** What a grower looks for first; the Season page has the rest. */
const shown: readonly SeasonRowKey[] = [
  'season.row.emergence',
  'season.row.sprouting',
  'season.row.plant-out',
  'season.row.onset',
  'season.row.leaves-green',
  'season.row.neck-fall',
  'season.row.diameter',
  'season.row.bolted',
  'season.row.winter-killed',
];

/** The season of the start that is chosen: it follows while that is moved. */
export function SeasonFrom({ plan, crop, name, look, link }: Props) {
  const { type: _, traits: __, ...chosen } = plan;
  const key = JSON.stringify([grownSiteKey.value, { ...plan, startDay: null }]);
  const { summary, isFresh, failed } = useLiveSeason(key, {
    site: grownSite.value!,
    crop,
    plan: chosen,
    days: false,
  });
  const speaker = voice.value;
  // drawn once for each answer, not again for each day on which the next is awaited
  const drawn = useMemo(
    () => summary && <Drawn summary={summary} name={name} look={look} link={link} />,
    [summary, name, look, speaker],
  );
  if (failed !== null) return <Fault reason={failed} />;
  if (summary === null) return <Working />;
  return (
    <section class="season-from" aria-labelledby="season-from" data-waiting={isFresh ? undefined : true}>
      {drawn}
    </section>
  );
}

function Drawn({ summary, name, look, link }: Omit<Props, 'plan' | 'crop'> & { summary: SeasonSummary }) {
  const speaker = voice.value;
  const { say, day, reason } = speaker;
  const { type, start, startDay } = summary.plan;
  const { picture, table } = sectionOf(summary, look, speaker);
  const gone = leavesGoneSentence(summary, speaker);
  const words = say(`crop.${start}`, { type: name ?? say(`type-head.${type}`), date: day(startDay) });
  return (
    <>
      <h2 id="season-from">{words}</h2>
      <p>{sharesSentence(summary, speaker)}</p>
      <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>
      <TakePicture
        name="bulbs"
        day={startDay}
        what={() => words}
        draw={(width) => <SectionRow width={width} {...picture} />}
        summary={picture.summary}
        table={() => table}
        weather={grownSite.value?.weather ? 'some' : 'drawn'}
      />
      <details class="fold">
        <summary>{say('season.table')}</summary>
        <p>{reason(summary.reason)}</p>
        <div class="scroll">
          <table class="key-dates">
            <caption class="unseen">{say('season.table')}</caption>
            <thead>
              <tr>
                <td />
                <th scope="col">{say('season.column.likely')}</th>
                <th scope="col">{say('season.column.range')}</th>
              </tr>
            </thead>
            <tbody>
              {seasonRows(summary, speaker)
                .filter(({ key }) => shown.includes(key))
                .map(({ key, title, middle, range }) => (
                  <tr key={key}>
                    <th scope="row">{title}</th>
                    <td data-name={say('season.column.likely')}>{middle}</td>
                    <td data-name={say('season.column.range')}>{range}</td>
                  </tr>
                ))}
            </tbody>
          </table>
        </div>
        {gone !== null && <p>{gone}</p>}
      </details>
      <p class="onward">
        <a href={hrefTo('season', { ...link, date: startDay })}>{say('app.when.season')}</a>
      </p>
      <details>
        <summary>{say('app.when.table.onions')}</summary>
        <div class="scroll">
          <DataTable {...table} />
        </div>
      </details>
    </>
  );
}
