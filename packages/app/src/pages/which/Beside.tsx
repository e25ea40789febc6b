import type { Kind } from '@neckfall/engine';
import { SectionRow, sectionRowOf } from '@neckfall/pictures';
import { mostBeside } from '../../address/address-form.ts';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TakePicture } from '../../controls/TakePicture.tsx';
import { onwardTo } from '../../state/onion-hrefs.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { BesideButton } from './BesideButton.tsx';
import { FactTable } from './FactTable.tsx';
import { type Crop, factRows } from './facts-of.ts';
import { lookOf } from './look-of.ts';
import { Onward } from './Onward.tsx';
import { useAllKinds } from './use-all-kinds.ts';
import { grownOf, type Seasons } from './use-grown.ts';

/** Two to four onions side by side: cut through, then their facts in one table. */
export function Beside({ seasons }: { seasons: Seasons }) {
  const speaker = voice.value;
  const { say } = speaker;
  const { kinds } = useAllKinds();
  const crops = cropsBeside(kinds, seasons);
  if (crops.length === 0) return null;
  const { picture, table } = sectionRowOf(
    crops.map(({ name, kind, summary }) => ({
      name: say('which.kind', { type: name, start: say(`start.${kind.start}`) }),
      summary,
      look: lookOf({ names: [name] }),
    })),
    speaker,
  );
  return (
    <div class="beside">
      <h2 id="beside" tabIndex={-1}>
        {say('app.which.beside')}
      </h2>
      {crops.length === 1 && <p>{say('app.which.beside.one')}</p>}
      {crops.length === mostBeside && <p>{say('app.which.beside.full')}</p>}
      <FitWidth>{(width) => <SectionRow width={width} {...picture} />}</FitWidth>
      <TakePicture
        name="beside"
        what={() => say('app.which.beside')}
        draw={(width) => <SectionRow width={width} {...picture} />}
        summary={picture.summary}
        table={() => table}
      />
      <FactTable
        labelledBy="beside"
        rows={factRows}
        columns={crops.map((crop) => {
          const { name, kind, summary } = crop;
          const onward = onwardTo(name, kind.start, summary.plan.startDay);
          return {
            key: `${kind.start} ${name}`,
            head: name,
            crop,
            foot: (
              <>
                <Onward onward={onward} name={name} start={kind.start} />
                <BesideButton name={name} start={kind.start} isThere />
              </>
            ),
          };
        })}
      />
    </div>
  );
}

/** Those of the address that we know, in its order. */
function cropsBeside(kinds: readonly Kind[], seasons: Seasons): (Crop & { name: string })[] {
  return (asked.value.beside ?? []).flatMap(({ start, name }) => {
    const kind = kinds.find((candidate) => candidate.start === start && candidate.names.includes(name));
    return kind ? grownOf([kind], seasons).map((grown) => ({ ...grown, name })) : [];
  });
}
