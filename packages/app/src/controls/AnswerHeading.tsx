import { placeName } from '../state/place.ts';
import { voice } from '../state/settings.ts';

/**
 * The answer as the head of its page. The place it begins with stands in the bar above it: on a screen it is left to
 * those who listen and to what is copied, on paper it is there for all.
 */
export function AnswerHeading({ text }: { text: string }) {
  const front = voice.value.say('app.answer.place', { place: placeName.value });
  if (!text.startsWith(front)) return <h1 class="answer">{text}</h1>;
  return (
    <h1 class="answer">
      <span class="place-said">{front} </span>
      {text.slice(front.length).trimStart()}
    </h1>
  );
}

/** The head of a page while its answer is worked out. */
export function HeadingToCome() {
  return <h1 class="unseen">{placeName.value}</h1>;
}
