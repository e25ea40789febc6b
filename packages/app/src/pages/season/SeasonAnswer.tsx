import {
  coldBedSentence,
  cultivarAssumption,
  packetAssumptions,
  practiceAssumptions,
  spanPartsSentence,
} from '@neckfall/answers';
import { type Garden, jobsInWeek } from '@neckfall/engine';
import type { MessageKey } from '@neckfall/words';
import { AnswerFoot } from '../../controls/AnswerFoot.tsx';
import { Cautions } from '../../controls/Cautions.tsx';
import { HowWeKnow } from '../../controls/HowWeKnow.tsx';
import { LearntFrom } from '../../controls/LearntFrom.tsx';
import { withPlan } from '../../garden/planting-of.ts';
import { onion } from '../../state/onion.ts';
import { planting } from '../../state/planting.ts';
import { voice } from '../../state/settings.ts';
import { weatherGrounds } from '../../state/weather-grounds.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import type { SeasonAhead } from '../../worker/season-ahead.ts';
import { Days } from './Days.tsx';
import { Expect } from './Expect.tsx';
import { Feed } from './Feed.tsx';
import { AllWork } from './jobs/AllWork.tsx';
import { ThisWeek } from './jobs/ThisWeek.tsx';
import { keepPlan, planToSave } from './keep-plan.ts';
import { Lead, Learnt, Now, Onward } from './Lead.tsx';
import { Lift } from './Lift.tsx';
import { PlanForm } from './PlanForm.tsx';
import { pinned } from './pinned.ts';
import { Risks } from './Risks.tsx';
import { SavePlan } from './SavePlan.tsx';
import { SectionFigure } from './SectionFigure.tsx';
import { Sheet } from './Sheet.tsx';
import { SeenEntry } from './seen/SeenEntry.tsx';
import { SeenList } from './seen/SeenList.tsx';
import { TakeAlong } from './TakeAlong.tsx';
import { Water } from './Water.tsx';
import { YearFigure } from './YearFigure.tsx';
import { Yield } from './Yield.tsx';

/** The answer first, then pictures, figures, what to take along, and the grounds. */
export function SeasonAnswer({ ahead }: { ahead: SeasonAhead }) {
  const { summary, cold } = ahead;
  // who keeps a crop comes to note something of it; who looks at one sees its year first
  const isKept = planting.value !== null;
  const entry = <SeenEntry ahead={ahead} />;
  return (
    <InTurn>
      <div class="spread">
        <InTurn>
          <div class="said">
            <InTurn>
              <Lead ahead={ahead} />
              <ThisWeek ahead={ahead} />
              <Now ahead={ahead} />
              {isKept && entry}
              <Learnt ahead={ahead} />
            </InTurn>
          </div>
          <div class="seen">
            <YearFigure ahead={ahead} />
          </div>
          <div class="rest">
            {!isKept && entry}
            <Onward summary={summary} />
            {cold && <p class="alarm">{coldBedSentence(cold, summary.plan.startDay, voice.value)}</p>}
            <PlanForm summary={summary} />
            <LearntFrom unkept={asKept(ahead)} />
          </div>
        </InTurn>
      </div>
      <SeenList ahead={ahead} />
      <SectionFigure summary={summary} />
      <AllWork ahead={ahead} />
      <Expect summary={summary} />
      <Lift ahead={ahead} />
      <Water ahead={ahead} />
      <Feed />
      <Risks summary={summary} />
      <Yield summary={summary} />
      <Days days={ahead.days} />
      <SavePlan ahead={ahead} />
      <TakeAlong ahead={ahead} />
      <Cautions of={cautionsOf(ahead)} />
      <Grounds ahead={ahead} />
      <AnswerFoot shown={pinned(summary)} />
      <Sheet ahead={ahead} />
    </InTurn>
  );
}

function Grounds({ ahead }: { ahead: SeasonAhead }) {
  const { summary, spans } = ahead;
  return (
    <HowWeKnow
      assumed={assumptionsOf(ahead)}
      plan={summary.plan}
      span={spanPartsSentence(summary, spans, voice.value)}
    />
  );
}

/** The onion first, as on the command line. */
function assumptionsOf({ summary, notes, learnt }: SeasonAhead): string[] {
  const { cultivar } = onion.value;
  const speaker = voice.value;
  const { type, traits } = summary.plan;
  return [
    ...(cultivar
      ? [cultivarAssumption(cultivar, speaker)]
      : packetAssumptions({ type, traits, notes }, speaker)),
    ...practiceAssumptions(summary.plan, speaker),
    ...weatherGrounds(summary.plan.startDay),
    ...(learnt ? learntGrounds(learnt) : []),
  ];
}

/** The planting that keeping the plan shown would make. */
function asKept(ahead: SeasonAhead) {
  const plan = planToSave(ahead);
  return {
    asKept(garden: Garden) {
      const { garden: next, plantingId } = withPlan(garden, null, plan);
      return next.plantings.find(({ id }) => id === plantingId)!;
    },
    keep: () => keepPlan(plan, null),
  };
}

/** What learning rests on. */
function learntGrounds({ season, hasEarlier }: NonNullable<SeasonAhead['learnt']>): string[] {
  const { say, day, number } = voice.value;
  const { observations, effectiveDraws, later, asOf, liftedOn } = season;
  return [
    ...(hasEarlier ? [say('learnt.before')] : []),
    ...(observations > 0 ? [say('app.seen.draws', { draws: number(effectiveDraws) })] : []),
    ...(later > 0 ? [say('learnt.later', { count: later, date: day(asOf) })] : []),
    ...(liftedOn === null ? [] : [say('learnt.lifted', { date: day(liftedOn) })]),
  ];
}

/** Beside those of the work, which stand with it. */
function cautionsOf({ summary, stand, jobs }: SeasonAhead): Extract<MessageKey, `app.caution.${string}`>[] {
  const { plan, boltedPlantsShare, plantOut } = summary;
  const isInTrays = stand.day >= plan.startDay && stand.day < (plantOut?.days?.p50 ?? 0);
  const areSaid = jobsInWeek(jobs, stand.day).due.some(({ cautions }) => cautions.includes('lamps'));
  return [
    ...((boltedPlantsShare?.p90 ?? 0) >= 0.1 ? (['app.caution.flower'] as const) : []),
    ...(isInTrays && !areSaid ? (['app.caution.lamps'] as const) : []),
    'app.caution.store',
    'app.caution.promise',
  ];
}
