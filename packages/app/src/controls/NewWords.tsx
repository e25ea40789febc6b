import { voice } from '../state/settings.ts';

const words = ['day-length', 'long', 'sets', 'sown', 'tops', 'flower', 'neck', 'middling', 'range'] as const;

/** Words of the trade explained where they are first met, folded away for those who know them. */
export function NewWords() {
  const { say } = voice.value;
  return (
    <details class="new-words">
      <summary>{say('words.title')}</summary>
      <dl>
        {words.map((word) => (
          <div key={word}>
            <dt>{say(`words.${word}`)}</dt>
            <dd>{say(`words.${word}.is`)}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
