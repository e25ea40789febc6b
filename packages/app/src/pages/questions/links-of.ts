import { type CommonAnswer, classOfType, type Plan, planDefaults } from '@neckfall/engine';
import type { MessageKey } from '@neckfall/words';
import type { PageName } from '../../address/address.ts';
import type { Asked } from '../../address/address-form.ts';
import { noOnion } from '../../address/no-onion.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

type Link = { href: string; text: string };

/** Nothing of another crop goes along. */
const noCrop = {
  ...noOnion,
  start: null,
  date: null,
  plantOut: null,
  planting: null,
  bed: null,
  symptoms: null,
  answers: null,
  taken: null,
  shows: null,
} as const satisfies Partial<Asked>;

/** Where an answer leads, the next step first, with the plan that it was read from filled in. */
export function linksOf(answer: CommonAnswer): Link[] {
  const link = (
    key: Extract<MessageKey, `app.questions.to.${string}`>,
    to: PageName,
    changes: Partial<Asked> = {},
  ): Link => ({ href: hrefTo(to, { ...noCrop, ...changes }), text: voice.value.say(key) });
  switch (answer.question) {
    case 'never-bulbed':
      return [
        link('app.questions.to.why', 'why', { symptoms: ['no-bulb'] }),
        link('app.questions.to.which', 'which'),
      ];
    case 'which-onion':
    case 'too-late': {
      const { summary } = answer.now ?? answer.classes[0];
      const when = link('app.questions.to.when', 'when', startOf(summary.plan));
      const season = link('app.questions.to.season', 'season', cropOf(summary.plan));
      return answer.question === 'too-late'
        ? [when, season]
        : [link('app.questions.to.which', 'which'), when, season];
    }
    case 'too-small':
      return [
        link('app.questions.to.why', 'why', { symptoms: ['small'] }),
        link('app.questions.to.season', 'season', cropOf(answer.own.plan)),
      ];
    case 'sets-flower':
      return [
        link('app.questions.to.why', 'why', { symptoms: ['flowered'] }),
        link('app.questions.to.season-large', 'season', cropOf(answer.large.plan)),
      ];
    case 'kitchen-onions':
      return [
        link('app.questions.to.which', 'which'),
        link('app.questions.to.season-kitchen', 'season', cropOf(answer.bulb.plan)),
      ];
    case 'from-abroad':
      return [link('app.questions.to.packet', 'which'), link('app.questions.to.latitudes', 'latitudes')];
    case 'sow-autumn':
      return [
        link('app.questions.to.season', 'season', cropOf(answer.autumn.plan)),
        link('app.questions.to.when', 'when', startOf(answer.autumn.plan)),
      ];
    case 'start-indoors': {
      const { plan } = answer.stretch?.best ?? answer.starts.starts[0].summary;
      return [
        link('app.questions.to.when', 'when', startOf(plan)),
        link('app.questions.to.season', 'season', cropOf(plan)),
      ];
    }
    case 'how-many':
      return [link('app.questions.to.keep', 'keep')];
  }
}

function startOf(plan: Plan): Partial<Asked> {
  return { class: classOfType[plan.type], start: plan.start };
}

function cropOf(plan: Plan): Partial<Asked> {
  return {
    ...startOf(plan),
    date: plan.startDay,
    ...(plan.start === 'sets' && {
      setSize: plan.setSizeMm === planDefaults.setSizeMm ? null : plan.setSizeMm,
      setStore: plan.setStore === 'warm' ? plan.setStore : null,
    }),
  };
}
