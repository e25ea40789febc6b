import { AnswerFoot } from '../../controls/AnswerFoot.tsx';
import { Cautions } from '../../controls/Cautions.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { Working } from '../../controls/Working.tsx';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import { Change } from './Change.tsx';
import { HowTogether } from './HowTogether.tsx';
import { Lead } from './Lead.tsx';
import { isLinedUpAsked } from './lined-up.ts';
import { NotDrawn } from './NotDrawn.tsx';
import { Numbers } from './Numbers.tsx';
import { OnThatDay } from './OnThatDay.tsx';
import { Pictures } from './Pictures.tsx';
import { TakeLines } from './TakeLines.tsx';
import { useComparison } from './use-comparison.ts';
import { useDrawn } from './use-drawn.ts';
import '../../look/together.css';

/** Up to six places, or six starts, under each other on common axes, with one day that moves through all. */
export function Together() {
  const { say } = voice.value;
  const comparison = useComparison();
  const { wanted, known, compared } = comparison;
  const found = wanted.flatMap((line, i) => {
    const one = known[i];
    return one?.state === 'found' ? [{ asked: line, found: one }] : [];
  });
  const { drawn, isFresh } = useDrawn(found, isLinedUpAsked(asked.value));
  const isWhole = isFresh && known.every((line) => line !== null);
  const isShown = drawn !== null && drawn.lines.length > 0 && found.length > 0;
  const failed = known.find((line) => line?.state === 'failed');
  if (failed?.state === 'failed' && !isShown) return <Fault reason={failed.message} />;
  return (
    <div class="together" data-waiting={isWhole ? undefined : true}>
      <InTurn>
        {isShown ? (
          <Lead drawn={drawn} compared={compared} />
        ) : (
          <h1 class={isWhole ? 'answer' : 'unseen'}>{say(isWhole ? 'app.together.none' : 'app.together')}</h1>
        )}
        <NotDrawn comparison={comparison} />
        {isShown && <Pictures drawn={drawn} compared={compared} />}
        {!isShown && !isWhole && <Working />}
        {isShown && <OnThatDay drawn={drawn} compared={compared} />}
        {isShown && <Numbers drawn={drawn} compared={compared} />}
        {isShown && <TakeLines drawn={drawn} compared={compared} />}
        <Change comparison={comparison} found={found} />
        <Cautions of={['app.caution.promise']} />
        <HowTogether found={found} />
        <AnswerFoot />
      </InTurn>
    </div>
  );
}
