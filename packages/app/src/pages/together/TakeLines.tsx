import { lineSentence, sourcePlace, togetherTable } from '@neckfall/answers';
import { commonScaleOf, LowYearLine, stacked } from '@neckfall/pictures';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { voice } from '../../state/settings.ts';
import { type Compared, type Drawn, headOf, pictureOf, toldLines } from './drawn-lines.ts';

/** All lines as one picture, to be taken along. */
export function TakeLines({ drawn, compared }: { drawn: Drawn; compared: Compared }) {
  const speaker = voice.value;
  const { say } = speaker;
  const { lines } = drawn;
  const told = toldLines(lines, compared, speaker);
  const sentences = told.map((line) => lineSentence(line, speaker));
  const places = lines.map(({ asked, found: { located } }) =>
    sourcePlace(located, located.town ? null : asked.at.name, speaker),
  );
  return (
    <TakePicture
      name={compared}
      what={() => say('app.together')}
      draw={(width) => {
        const pictures = lines.map((line) => pictureOf(line, speaker));
        const common = commonScaleOf(pictures, width);
        return stacked(
          width,
          lines.map((line, i) => ({
            head: headOf(line, told[i], compared, speaker),
            words: sentences[i],
            picture: <LowYearLine id={`kept-${i}`} width={width} {...pictures[i]} common={common} />,
          })),
        );
      }}
      summary={sentences.join(' ')}
      note={say('app.together.dots')}
      table={() => togetherTable(told, compared, speaker)}
      of={{
        called: speaker.all(told.map(({ name }) => name)),
        where: [...new Set(places)].join('; '),
        years: lines[0].found.site.years,
      }}
    />
  );
}
