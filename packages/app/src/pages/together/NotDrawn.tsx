import { problemSentence } from '../../controls/problem-sentence.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { type Comparison, ownPlace } from './use-comparison.ts';

/** What of the link is left out, and places for which there is no line, or none yet. */
export function NotDrawn({ comparison }: { comparison: Comparison }) {
  const speaker = voice.value;
  const { say, all } = speaker;
  const { unread, beyond, wanted, known, compared } = comparison;
  const needsPlace = asked.value.starts !== null && ownPlace(asked.value) === null;
  const quoted = (parts: readonly string[]) => all(parts.map((part) => `“${part}”`));
  return (
    <>
      {needsPlace && <p role="status">{say('app.together.needs-place')}</p>}
      {unread.length > 0 && (
        <p role="status" class="alarm">
          {say('app.together.left-out', { parts: quoted(unread) })}
        </p>
      )}
      {beyond.length > 0 && (
        <p role="status" class="alarm">
          {say('app.together.too-many', { parts: quoted(beyond) })}
        </p>
      )}
      {wanted.map(({ key, at }, i) => {
        const line = known[i];
        const name = at.name ?? '';
        if (line === null || line === undefined)
          return compared === 'places' && name !== '' ? (
            <p key={key} class="hint">
              {say('app.together.working', { name })}
            </p>
          ) : null;
        if (line.state === 'found') return null;
        const reason = line.state === 'failed' ? line.message : problemSentence(line.problem, speaker);
        return (
          <p key={key} role="status" class="alarm">
            {name === '' ? reason : say('app.together.refused', { name, reason })}
          </p>
        );
      })}
    </>
  );
}
