import { expect, test } from 'vitest';
import { cancelled, type Work } from '../../src/worker/protocol.ts';
import { surveyAt } from '../../src/worker/survey.ts';
import { type WhereAsked, where } from '../../src/worker/where.ts';
import { whereAhead } from '../../src/worker/where-ahead.ts';
import { temperate } from './a-site.ts';

const asked = (latitudeDeg: number): WhereAsked => ({
  site: { ...temperate, climate: { ...temperate.climate, latitudeDeg } },
  today: 20_819,
  options: {},
});

/** A message is a copy of what was sent. */
const sent = (request: WhereAsked): WhereAsked => structuredClone(request);

function workCalledOffAt(step: number): Work {
  let steps = 0;
  return {
    part: () => {},
    isCancelled: () => steps >= step,
    async pause() {
      steps += 1;
      if (steps >= step) throw cancelled;
    },
  };
}

test('what was worked out ahead is told when it is asked, and of that place, day and growing alone', async () => {
  const request = asked(47);
  await whereAhead(sent(request), workCalledOffAt(Number.POSITIVE_INFINITY));
  const survey = surveyAt(request.site, request.today, request.options);
  const reply = where(sent(request));
  expect(where(sent(request))).toBe(reply);
  expect(surveyAt(sent(request).site, request.today, {})).toBe(survey);
  expect(reply.lead).toBe(survey.lead());
  const others: WhereAsked[] = [
    { ...request, today: request.today + 1 },
    { ...request, options: { sunHours: 5 } },
    { ...request, site: { ...request.site, frostHollow: true } },
    { ...request, site: { ...request.site, atHand: ['sets'] } },
  ];
  for (const other of others) expect(where(sent(other))).not.toBe(reply);
});

test('called off at any step, it leaves an answer that is the same as without it', async () => {
  const plain = where(asked(46));
  for (let step = 1; step <= 5; step++) {
    // a hair's breadth off: a survey of its own
    const request = asked(46 + step * 1e-9);
    await expect(whereAhead(request, workCalledOffAt(step))).rejects.toBe(cancelled);
    const { lead, now, better } = where(request);
    expect([lead.class, lead.summary.plan.startDay, now?.until, better?.class]).toEqual([
      plain.lead.class,
      plain.lead.summary.plan.startDay,
      plain.now?.until,
      plain.better?.class,
    ]);
  }
});
