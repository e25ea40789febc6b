import { saltSentence, waterAssumptions, waterCautions, waterRows, waterSentences } from '@neckfall/answers';
import type { WaterAnswer } from '@neckfall/engine';
import { useState } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { Fault } from '../../controls/Fault.tsx';
import { Fold } from '../../controls/Fold.tsx';
import { MeasureField } from '../../controls/MeasureField.tsx';
import { Working } from '../../controls/Working.tsx';
import { isPrinting } from '../../device/printing.ts';
import { cropAsked } from '../../state/crop-asked.ts';
import { ground } from '../../state/ground.ts';
import { grownSite, grownSiteKey } from '../../state/grown-site.ts';
import { planOptions } from '../../state/plan-asked.ts';
import { seen } from '../../state/planting.ts';
import { units, voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';
import type { WaterAhead } from '../../worker/water-ahead.ts';

/** From a tub to a field, m²; from a can to a tank, l. */
const areas = [0.1, 1_000_000] as const;
const butts = [1, 1_000_000] as const;

/** Whether the crop asks for water, how much and until when. Worked out once it is looked at. */
export function Water({ ahead }: { ahead: SeasonAhead }) {
  const { say } = voice.value;
  const [isOpen, open] = useState(false);
  return (
    <Fold class="water" id="water" title={say('watering.title')} onToggle={open}>
      {(isOpen || isPrinting.value) && <Asked ahead={ahead} />}
    </Fold>
  );
}

function Asked({ ahead }: { ahead: SeasonAhead }) {
  const { say } = voice.value;
  const unit = units.value === 'us' ? 'inch' : 'cm';
  // of this page alone; the bed of a garden is told there
  const [said, sayArea] = useState<number | null>(null);
  const [buttLitres, sayButt] = useState<number | null>(null);
  const known = { ...ground.value, areaM2: said ?? ground.value.areaM2 };
  const request = {
    ...cropAsked.value,
    options: planOptions.value,
    today: today.value,
    seen: [...seen.value].reverse(),
    ground: known,
  };
  const key = grownSiteKey.value && JSON.stringify([grownSiteKey.value, request]);
  const { answer, isFresh, failed } = useAnswer(key, () =>
    ask('waterAhead', { site: grownSite.value!, ...request }),
  );
  if (failed !== null) return <Fault reason={failed} />;
  if (!answer) return <Working />;
  return (
    <div class={isFresh ? '' : 'waiting'} data-waiting={isFresh ? undefined : true}>
      <Told ahead={ahead} of={answer} areaM2={known.areaM2} />
      <form class="form" onSubmit={(event) => event.preventDefault()}>
        <MeasureField
          label={say('watering.area', { unit })}
          hint={say('watering.area.hint', { unit })}
          measure="m2"
          value={known.areaM2}
          range={areas}
          onValue={sayArea}
        />
        <MeasureField
          label={say('watering.butt', { unit })}
          hint={say('watering.butt.hint')}
          measure="litres"
          value={buttLitres}
          range={butts}
          onValue={sayButt}
        />
      </form>
      <p role="status">{buttSentence(answer.water, known.areaM2, buttLitres)}</p>
      <Grounds water={answer.water} />
    </div>
  );
}

function Told({ ahead, of, areaM2 }: { ahead: SeasonAhead; of: WaterAhead; areaM2: number | null }) {
  const speaker = voice.value;
  const { say } = speaker;
  const { summary } = ahead;
  const { water, liftedOn } = of;
  const crop = { plan: summary.plan, summary, today: today.value, liftedOn };
  const salt = saltSentence(water, speaker);
  const rows = waterRows(water, areaM2, speaker);
  return (
    <>
      <p>{waterSentences(water, crop, speaker).join(' ')}</p>
      {rows.length > 0 && (
        <>
          <div class="scroll">
            <table>
              <caption>{say('watering.table')}</caption>
              <thead>
                <tr>
                  <th scope="col">{say('app.season.dates.what')}</th>
                  <th scope="col">{say('watering.column.ordinary')}</th>
                  <th scope="col">{say('watering.column.dry')}</th>
                </tr>
              </thead>
              <tbody>
                {rows.map(({ key, title, ordinary, dry }) => (
                  <tr key={key}>
                    <th scope="row">{title}</th>
                    <td data-name={say('watering.column.ordinary')}>{ordinary}</td>
                    <td data-name={say('watering.column.dry')}>{dry}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          <p>{say('watering.dry-year')}</p>
        </>
      )}
      {salt !== null && <p>{salt}</p>}
    </>
  );
}

/** How many fillings of what stands under the gutter a season takes. */
function buttSentence({ seasonMm }: WaterAnswer, areaM2: number | null, litres: number | null): string {
  if (!seasonMm || areaM2 === null || litres === null) return '';
  const { say, number } = voice.value;
  const full = (mm: number) => (mm * areaM2) / litres;
  const [ordinary, dry] = [full(seasonMm.need.p50), full(seasonMm.need.p90)];
  const code = dry <= 1 ? 'plenty' : ordinary <= 1 ? 'enough' : 'is';
  return say(`watering.butt.${code}`, { ordinary: number(ordinary, 1), dry: number(dry, 1) });
}

/** What it rests on, and where watering can do harm. */
function Grounds({ water }: { water: WaterAnswer }) {
  const speaker = voice.value;
  return (
    <ul>
      {[...waterCautions(speaker), ...waterAssumptions(water, speaker)].map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
