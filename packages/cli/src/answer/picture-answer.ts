import { pictureSource, sourcePlace } from '@neckfall/answers';
import { type DataTableProps, paperColours, stillFigure, svgText } from '@neckfall/pictures';
import type { VNode } from 'preact';
import { type YearLineNumbers, yearLineDocument } from '../documents/year-line-document.ts';
import type { Frame } from '../frame/frame.ts';
import type { PictureForm } from '../options/picture-options.ts';
import { jsonText } from '../output/json-text.ts';

/** Pictures are drawn at the width of a page of the app on a desk, px. */
export const pictureWidth = 960;

/** A picture with all that goes with it. */
export type PictureAnswer = {
  frame: Frame;
  /** The answer that it shows, in a sentence. */
  title: string;
  drawn: VNode;
  /** What it says, for those who don't see it. */
  summary: string;
  /** Words that stand under it. */
  note: string | null;
  table: DataTableProps;
  /** What a year line is drawn from; null for other pictures. */
  numbers: YearLineNumbers | null;
};

/** A picture as a file of a form. */
export async function pictureFile(answer: PictureAnswer, form: PictureForm): Promise<string | Uint8Array> {
  const { frame, title, drawn, summary, note, table, numbers } = answer;
  const source = sourceOf(frame);
  const svg = (head: string, caption: readonly string[]) =>
    svgText(drawn, { colours: paperColours, title, head, description: summary, caption });
  switch (form) {
    case 'json':
      return jsonText(yearLineDocument(frame, numbers!), 1);
    case 'svg':
      return svg(title, [source]);
    case 'html':
      return stillFigure({
        svg: svg('', []),
        title,
        summary,
        caption: [...(note === null ? [] : [note]), source],
        table,
        lang: frame.speaker.locale,
      });
    case 'png': {
      // the rasteriser is large, and no other command waits for it
      const { pngOfSvgText } = await import('../raster/png-of-svg-text.ts');
      return pngOfSvgText(svg(title, [source]));
    }
  }
}

function sourceOf({ place, options, speaker }: Frame): string {
  return pictureSource(
    {
      where: sourcePlace(place, null, speaker),
      years: options.years,
      weather: options.weather ? 'some' : 'drawn',
      today: options.today,
    },
    speaker,
  );
}
