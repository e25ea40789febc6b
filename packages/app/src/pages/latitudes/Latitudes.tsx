import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { Fault } from '../../controls/Fault.tsx';
import { Working } from '../../controls/Working.tsx';
import { voice } from '../../state/settings.ts';
import { Walk } from './Walk.tsx';
import '../../look/latitudes.css';

/** A lesson that computes: from the equator to 70°, warmer or colder, sown on any day. */
export function Latitudes() {
  const { answer, failed } = useAnswer('climates', () => ask('latitudeClimates', undefined));
  if (failed !== null) return <Fault reason={failed} />;
  if (answer) return <Walk climates={answer} />;
  return (
    <>
      <h1 class="unseen">{voice.value.say('app.page.latitudes')}</h1>
      <Working />
    </>
  );
}
