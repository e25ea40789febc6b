import { FitWidth, SectionRow, sectionRowOf } from '../../pictures/index.ts';
import { mostBeside } from '../../state/address-form.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { onwardTo } from './address-of.ts';
import { BesideButton } from './BesideButton.tsx';
import { colourOf } from './colour-of.ts';
import { type Crop, facts } from './facts-of.ts';
import { grownOf, type Seasons } from './use-grown.ts';
import { allKinds } from './wanted.ts';

/** Two to four onions side by side: cut through, then their facts in one table. */
export function Beside({ seasons }: { seasons: Seasons }) {
  const speaker = voice.value;
  const { say } = speaker;
  const crops = cropsBeside(seasons);
  if (crops.length === 0) return null;
  const { picture } = sectionRowOf(
    crops.map(({ name, kind, summary }) => ({
      name: say('which.kind', { type: name, start: say(`start.${kind.start}`) }),
      summary,
      colour: colourOf({ ...kind, names: [name] }),
    })),
    speaker,
  );
  return (
    <section class="beside" aria-labelledby="beside">
      <h2 id="beside">{say('app.which.beside')}</h2>
      {crops.length === 1 && <p>{say('app.which.beside.one')}</p>}
      {crops.length === mostBeside && <p>{say('app.which.beside.full')}</p>}
      <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard */}
      <section class="scroll" aria-labelledby="beside" tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">{say('app.which.beside.fact')}</th>
              {crops.map(({ name, kind }) => (
                <th key={`${kind.start} ${name}`} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {facts.map(([row, words]) => (
              <tr key={row}>
                <th scope="row">{say(row)}</th>
                {crops.map((crop) => (
                  <td key={`${crop.kind.start} ${crop.name}`}>{words(crop, speaker)}</td>
                ))}
              </tr>
            ))}
            <tr class="controls">
              <th scope="row">{say('app.where.next')}</th>
              {crops.map(({ name, kind, summary }) => {
                const { when, season } = onwardTo(name, kind.start, summary.plan.startDay);
                return (
                  <td key={`${kind.start} ${name}`}>
                    <a href={when}>{say('app.which.when')}</a>
                    <br />
                    <a href={season}>{say('app.which.season')}</a>
                    <br />
                    <BesideButton name={name} start={kind.start} />
                  </td>
                );
              })}
            </tr>
          </tbody>
        </table>
      </section>
    </section>
  );
}

/** Those of the address that we know, in its order. */
function cropsBeside(seasons: Seasons): (Crop & { name: string })[] {
  return (asked.value.beside ?? []).flatMap(({ start, name }) => {
    const kind = allKinds().find((candidate) => candidate.start === start && candidate.names.includes(name));
    return kind ? grownOf([kind], seasons).map((grown) => ({ ...grown, name })) : [];
  });
}
