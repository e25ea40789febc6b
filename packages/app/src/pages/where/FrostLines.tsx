import { freezesEachWinter, type PlaceFacts, skyAndFrost } from '@neckfall/answers';
import { voice } from '../../state/settings.ts';

/** Day lengths and frosts in words, with their spread. */
export function FrostLines({ facts }: { facts: PlaceFacts }) {
  const { say, quantity } = voice.value;
  const { frostFreeDays, meanAnnualMinimumC } = facts.frost;
  return (
    <section aria-labelledby="frost">
      <h2 id="frost">{say('app.where.frost')}</h2>
      {skyAndFrost(facts, voice.value).map((line) => (
        <p key={line}>{line}</p>
      ))}
      <p>
        {freezesEachWinter(facts) && `${say('app.where.frost-free', { days: frostFreeDays })} `}
        {say('app.where.coldest', { coldest: quantity('temperature', meanAnnualMinimumC) })}
      </p>
    </section>
  );
}
