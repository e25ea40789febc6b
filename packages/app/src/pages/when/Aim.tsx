import { whenHeadline, windowEdges } from '@neckfall/answers';
import type { WhenAnswer } from '@neckfall/engine';
import { voice } from '../../state/settings.ts';

/** The window to aim for, why, and what goes wrong earlier and later. */
export function Aim({ answer, name }: { answer: WhenAnswer; name: string | null }) {
  const speaker = voice.value;
  const edges = answer.windows.flatMap((window) => {
    const found = windowEdges(answer, window, speaker);
    return found ? [found.earlier, found.later] : [];
  });
  return (
    <section aria-labelledby="aim">
      <h2 id="aim">{speaker.say('app.when.aim')}</h2>
      <p>
        {whenHeadline(answer, name, null, speaker)} {speaker.reason(answer.reason)}
      </p>
      {edges.length > 0 && (
        <ul>
          {edges.map((edge) => (
            <li key={edge}>{edge}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
