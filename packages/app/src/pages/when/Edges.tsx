import { windowEdges } from '@neckfall/answers';
import type { WhenAnswer } from '@neckfall/engine';
import { Fold } from '../../controls/Fold.tsx';
import { voice } from '../../state/settings.ts';

/** What goes wrong with starts before and after each window. */
export function Edges({ answer }: { answer: WhenAnswer }) {
  const speaker = voice.value;
  const edges = answer.windows.flatMap((window) => {
    const found = windowEdges(answer, window, speaker);
    return found ? [found.earlier, found.later] : [];
  });
  if (edges.length === 0) return null;
  return (
    <Fold id="edges" title={speaker.say('app.when.edges')}>
      <ul>
        {edges.map((edge) => (
          <li key={edge}>{edge}</li>
        ))}
      </ul>
    </Fold>
  );
}
