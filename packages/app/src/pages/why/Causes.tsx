import {
  causeAdvice,
  causeLabel,
  causeLook,
  chanceText,
  evidenceSentence,
  unseenSentence,
  whatIfSentence,
} from '@neckfall/answers';
import type { CauseFound, Evidence, WhyAnswer } from '@neckfall/engine';
import { ChanceBar } from '@neckfall/pictures';
import { useState } from 'preact/hooks';
import { voice } from '../../state/settings.ts';
import { WhatIfFigure } from './WhatIfFigure.tsx';

/** Each cause with its chance, the likeliest told in full and the others folded. */
export function Causes({ answer }: { answer: WhyAnswer }) {
  const { say } = voice.value;
  const [first, ...others] = answer.causes;
  return (
    <section class="causes" aria-labelledby="causes">
      <h2 id="causes">{say('app.why.causes')}</h2>
      {first && (
        <ol>
          <li key={first.cause} class="cause first">
            <Head found={first} />
            <Grounds found={first} answer={answer} />
          </li>
          {others.map((found) => (
            <li key={found.cause} class="cause">
              <Head found={found} />
              <FoldedGrounds found={found} answer={answer} />
            </li>
          ))}
        </ol>
      )}
      <p class="unlisted">
        <ChanceBar share={answer.unseen} />
        <span>{unseenSentence(answer, voice.value)}</span>
      </p>
    </section>
  );
}

function Head({ found: { cause, probability } }: { found: CauseFound }) {
  return (
    <>
      <h3>{causeLabel(cause, voice.value)}</h3>
      <p class="chance">
        <ChanceBar share={probability} />
        {chanceText(probability, voice.value)}
      </p>
    </>
  );
}

type Props = { found: CauseFound; answer: WhyAnswer };

function FoldedGrounds({ found, answer }: Props) {
  const { say } = voice.value;
  const [isOpen, open] = useState(false);
  return (
    <details onToggle={(event) => open(event.currentTarget.open)}>
      <summary aria-label={say('app.why.more-of', { cause: causeLabel(found.cause, voice.value) })}>
        {say('app.why.more')}
      </summary>
      {isOpen && (
        <>
          <Grounds found={found} answer={answer} />
          <h4>{say('app.why.advice')}</h4>
          <p>{causeAdvice(found.cause, voice.value)}</p>
        </>
      )}
    </details>
  );
}

function Grounds({ found, answer }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  const { cause, whatIf } = found;
  const look = causeLook(cause, speaker);
  return (
    <>
      <Sentences title={say('app.why.for')} of={found.for} />
      <Sentences title={say('app.why.against')} of={found.against} />
      {look !== null && (
        <>
          <h4>{say('app.why.look')}</h4>
          <p>{look}</p>
        </>
      )}
      {whatIf && (
        <>
          <h4>{say('app.why.what-if')}</h4>
          <WhatIfFigure whatIf={whatIf} />
          <p>{whatIfSentence(whatIf, answer.asGrown, speaker)}</p>
        </>
      )}
    </>
  );
}

function Sentences({ title, of }: { title: string; of: readonly Evidence[] }) {
  if (of.length === 0) return null;
  return (
    <>
      <h4>{title}</h4>
      <ul>
        {of
          .map((evidence) => evidenceSentence(evidence, voice.value))
          .map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
      </ul>
    </>
  );
}
