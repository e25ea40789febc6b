import { type PictureSource, pictureSource, sourcePlace } from '@neckfall/answers';
import { formatDay } from '@neckfall/engine';
import { type DataTableProps, paperColours, stillFigure, svgText } from '@neckfall/pictures';
import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import { pngOfSvg } from '../device/png-of-svg.ts';
import { fileName } from '../files/file-name.ts';
import { saveFile } from '../files/save-file.ts';
import { place, placeName, site } from '../state/place.ts';
import { asked } from '../state/route.ts';
import { voice } from '../state/settings.ts';
import { today } from '../state/today.ts';

/** What a picture is kept as is made when it is asked for. */
export type PictureToTake = {
  /** What its files are called after their place, in a word. */
  name: string;
  /** The day of the crop it shows, which its files are called by too; null or left out where it has none. */
  day?: number | null;
  /** What it shows: the head of the page, and the title of the file. Its words may come with those of the copies. */
  what: () => string;
  /** Draws it anew, px wide. */
  draw: (width: number) => VNode;
  /** What it says, for those who don't see it. */
  summary: string;
  /** Words that stand under it on the page. */
  note?: string | null;
  table: () => DataTableProps | null;
  also?: () => DataTableProps | null;
  /** Whether its days are those of the climate alone, or some or all as measured. */
  weather?: PictureSource['weather'];
  /** What it is of, where not of the reader's place alone. */
  of?: PictureOf;
};

/** What files are called by, what the source line names, and years of weather behind the numbers. */
export type PictureOf = { called: string; where: string; years: number };

/** Pictures are drawn at the width of a desk, px, but for those of a fixed one. */
const width = 960;

type Told = { file: string; reason: string | null };

/** The ways to keep a picture, each with its source line. */
export function PictureCopies(picture: PictureToTake) {
  const { say, locale } = voice.value;
  const [told, tell] = useState<Told | null>(null);
  const { name, day = null, what, summary, note = null } = picture;
  const called = picture.of?.called ?? asked.value.name ?? placeName.value;
  const title = say('app.take.title', { what: what(), place: called });

  async function save(ending: string, make: () => Promise<Blob>): Promise<void> {
    const file = fileName([called, ...(day === null ? [] : [formatDay(day)]), name], ending);
    try {
      saveFile(file, await make());
      tell({ file, reason: null });
    } catch (error) {
      tell({ file, reason: (error as Error).message });
    }
  }

  const source = () => sourceOf(picture);
  // kept to be put on paper, which is light whatever the page is
  const svg = (head: string, caption: readonly string[]) =>
    svgText(picture.draw(width), { colours: paperColours, title, head, description: summary, caption });
  const page = () =>
    stillFigure({
      svg: svg('', []),
      title,
      summary,
      caption: [...(note === null ? [] : [note]), source()],
      table: picture.table(),
      also: picture.also?.() ?? null,
      lang: locale,
    });
  const ways = [
    { ending: '.svg', make: async () => new Blob([svg(title, [source()])], { type: 'image/svg+xml' }) },
    { ending: '.png', make: () => pngOfSvg(svg(title, [source()])) },
    { ending: '.html', make: async () => new Blob([page()], { type: 'text/html' }) },
  ] as const;
  return (
    // biome-ignore lint/a11y/useSemanticElements: nothing is filled in here
    <div role="group" aria-label={title}>
      <p class="hint">{say('app.take.lead')}</p>
      <div class="row">
        {ways.map(({ ending, make }) => (
          <button key={ending} type="button" onClick={() => save(ending, make)}>
            {say(`app.take${ending}`)}
          </button>
        ))}
      </div>
      <p role="status">
        {told !== null &&
          (told.reason === null
            ? say('app.season.save.done', { file: told.file })
            : say('app.season.save.failed', { file: told.file, reason: told.reason }))}
      </p>
    </div>
  );
}

function sourceOf({ of, weather = 'drawn' }: PictureToTake): string {
  const { where, years } = of ?? ofHere();
  return pictureSource({ where, years, weather, today: today.value }, voice.value);
}

function ofHere(): Pick<PictureSource, 'where' | 'years'> {
  const here = place.value!;
  return {
    where: sourcePlace(here, here.town ? null : asked.value.name, voice.value),
    years: site.value!.years,
  };
}
