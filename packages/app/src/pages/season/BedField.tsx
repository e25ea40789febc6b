import { emptyGarden } from '@neckfall/engine';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { bedsAt, intoBed } from '../../garden/bed-asked.ts';
import { bed } from '../../state/bed.ts';
import { gardenStanding } from '../../state/garden.ts';
import { asked, go, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

/** The bed in which the crop lies: what it says of soil, sun, cover and water holds then. */
export function BedField() {
  const { say } = voice.value;
  const garden = gardenStanding.value?.garden ?? emptyGarden();
  const here = bedsAt(garden, asked.value.at);
  const current = bed.value;
  const offered = current && !here.includes(current) ? [current, ...here] : here;
  if (offered.length === 0) {
    return (
      <p class="hint">
        <a href={hrefTo('kept')}>{say('app.bed.none')}</a>
      </p>
    );
  }
  const choose = (value: string) => {
    const to = offered.find(({ id }) => value === `in ${id}`) ?? null;
    go(intoBed(garden, asked.value, current, to), { replace: true });
  };
  return (
    <ChoiceField
      label={say('app.bed.lies-in')}
      value={current ? `in ${current.id}` : 'free'}
      options={[
        { value: 'free', label: say('app.bed.free') },
        ...offered.map(({ id, name }) => ({ value: `in ${id}`, label: say('app.bed.bed', { name }) })),
      ]}
      onValue={choose}
    />
  );
}
