import { freezesEachWinter, type PlaceFacts, skyAndFrost } from '@neckfall/answers';
import { Fold } from '../../controls/Fold.tsx';
import { voice } from '../../state/settings.ts';

/** Day lengths and frosts in words, with their spread. */
export function FrostLines({ facts }: { facts: PlaceFacts }) {
  const { say, quantity } = voice.value;
  const { frostFreeDays, meanAnnualMinimumC } = facts.frost;
  return (
    <Fold id="frost" title={say('app.where.frost')}>
      {skyAndFrost(facts, voice.value).map((line) => (
        <p key={line}>{line}</p>
      ))}
      <p>
        {freezesEachWinter(facts) && `${say('app.where.frost-free', { days: frostFreeDays })} `}
        {say('app.where.coldest', { coldest: quantity('temperature', meanAnnualMinimumC) })}
      </p>
    </Fold>
  );
}
