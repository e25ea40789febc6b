import { dayLengthClasses, startMethods } from '@neckfall/engine';
import { noOnion } from '../../address/no-onion.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { Compared } from './drawn-lines.ts';

/** The onion of all lines, and how it is started, where they are not to be each its best. */
export function OnionOfAll({ compared }: { compared: Compared }) {
  const { say } = voice.value;
  const { class: chosen, start } = asked.value;
  return (
    <form class="form" onSubmit={(event) => event.preventDefault()}>
      <ChoiceField
        label={say('app.together.onion')}
        value={chosen ?? 'best'}
        options={[
          {
            value: 'best' as const,
            label: say(compared === 'places' ? 'app.together.onion.best' : 'app.together.onion.place'),
          },
          ...dayLengthClasses.map((value) => ({ value, label: say(`class.${value}`) })),
        ]}
        onValue={(value) =>
          go({ ...noOnion, ...(value === 'best' ? { start: null } : { class: value }) }, { replace: true })
        }
      />
      {compared === 'places' && chosen !== null && (
        <ChoiceField
          label={say('app.together.way')}
          value={start ?? 'best'}
          options={[
            { value: 'best' as const, label: say('app.together.way.best') },
            ...startMethods.map((value) => ({ value, label: say(`start.${value}`) })),
          ]}
          onValue={(value) => go({ start: value === 'best' ? null : value }, { replace: true })}
        />
      )}
    </form>
  );
}
