import {
  comingDay,
  coordinateWords,
  namedOf,
  type PlaceProblem,
  placeLabel,
  whereHeadline,
} from '@neckfall/answers';
import { noOnion } from '../../address/no-onion.ts';
import { ask, askGround } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { siteOn } from '../../state/place.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';
import type { Located } from '../../worker/locate.ts';
import type { WhereReply } from '../../worker/where.ts';
import type { Cross } from './map-asked.ts';

/** What Where says of the point under the cross. */
export function PointAnswer({ cross }: { cross: Cross }) {
  const { say } = voice.value;
  const { latitudeDeg, longitudeDeg, name } = cross;
  const point = JSON.stringify([latitudeDeg, longitudeDeg, name]);
  const found = useAnswer(point, () =>
    askGround('locate', { latitudeDeg, longitudeDeg, name, elevationM: null }, { topic: 'mapPoint' }),
  );
  const located = found.isFresh && found.answer && !('problem' in found.answer) ? found.answer : null;
  const day = today.value;
  const options = startOptions.value;
  const site = located && siteOn(located);
  const key = site && JSON.stringify([point, day, options, site.frostHollow, site.atHand]);
  const where = useAnswer(key, () => ask('where', { site: site!, today: day, options }));
  const failed = found.failed ?? where.failed;
  if (failed !== null) return <Fault reason={failed} />;
  if (found.isFresh && found.answer && 'problem' in found.answer) {
    return <p>{problemText(found.answer, cross)}</p>;
  }
  if (!located || !where.isFresh || !where.answer) {
    return <p data-waiting>{say('app.atlas.asking', coordinateWords(cross, voice.value))}</p>;
  }
  return <Told located={located} reply={where.answer} cross={cross} />;
}

function Told({ located, reply, cross }: { located: Located; reply: WhereReply; cross: Cross }) {
  const speaker = voice.value;
  const { say, years, quantity } = speaker;
  const day = today.value;
  const named = namedOf(reply);
  const { plan, seasonShares, neckFall, bulbDiameterMm } = named.summary;
  const { latitudeDeg, longitudeDeg, name } = cross;
  const here = { at: { latitudeDeg, longitudeDeg }, name, elevation: null, shows: null, view: null } as const;
  const chosen = { ...here, ...noOnion, class: named.class, start: named.bestStart, plantOut: null } as const;
  const rows = [
    [say('app.atlas.point.good'), years(seasonShares.good, named.summary.years)],
    [say('app.atlas.point.start'), comingDay(plan.startDay, day, speaker)],
    [say('app.atlas.point.tops'), neckFall.days ? comingDay(neckFall.days.p50, day, speaker) : say('never')],
    [say('app.atlas.point.size'), bulbDiameterMm ? quantity('bulbLength', bulbDiameterMm.p50) : say('none')],
  ];
  return (
    <>
      <p class="atlas-said">{whereHeadline(reply, placeLabel(located, speaker), day, speaker)}</p>
      <dl class="atlas-figures">
        {rows.map(([what, value]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <AnswerLinks
        links={[
          { href: hrefTo('where', here), text: say('app.atlas.point.where') },
          { href: hrefTo('when', { ...chosen, date: null }), text: say('app.where.next.when') },
          { href: hrefTo('season', { ...chosen, date: plan.startDay }), text: say('app.where.next.season') },
        ]}
      />
    </>
  );
}

function problemText(problem: PlaceProblem, cross: Cross): string {
  const { say } = voice.value;
  return say(`app.atlas.point.${problem.problem}`, coordinateWords(cross, voice.value));
}
