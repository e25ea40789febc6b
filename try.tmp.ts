import { climateOf } from './test/season/places.ts';
import { openSite, runPlan, jobsOf, planDefaults, dayNumber, formatDay, groundUnsaid, jobsInWeek } from './packages/engine/src/index.ts';
const cases: any[] = [
 ['Lyon seed', 45.76, 4.84, {type:'northern-long', start:'direct-seed', startDay: dayNumber(2027,3,10)}, dayNumber(2027,5,3)],
 ['Pencarreg raised', 52.08,-3.13, {type:'northern-long', start:'raised-seedlings', startDay: dayNumber(2027,2,10)}, dayNumber(2027,3,20)],
 ['Hannover overwintered', 52.4, 9.7, {type:'intermediate', start:'sets', startDay: dayNumber(2026,10,1)}, dayNumber(2027,4,3)],
 ['Adelaide seed', -34.9, 138.6, {type:'intermediate', start:'direct-seed', startDay: dayNumber(2027,6,10)}, dayNumber(2027,11,3)],
 ['Kano', 12, 8.5, {type:'tropical-short', start:'raised-seedlings', startDay: dayNumber(2027,9,20)}, dayNumber(2027,11,3)],
 ['Helsinki short', 60.2, 24.9, {type:'northern-long', start:'direct-seed', startDay: dayNumber(2027,5,10)}, dayNumber(2027,6,3)],
 ['Quito long', -0.2, -78.5, {type:'northern-long', start:'sets', startDay: dayNumber(2027,5,10)}, dayNumber(2027,6,3)],
];
for (const [n, lat, lon, p, today] of cases) {
  const site = openSite({climate: climateOf(lat, lon), years: 30, seed: 1});
  const plan = {...planDefaults, ...p} as any;
  const summary = runPlan(site, plan);
  const t0 = performance.now();
  const jobs = jobsOf({crop:{site, plan, summary, ground: groundUnsaid, observations: [], today, liftedOn: null}, water:null, feed:null, marks:[]});
  console.log('==', n, summary.outcome, formatDay(today), Math.round(performance.now()-t0),'ms');
  for (const j of jobs) console.log(j.id.padEnd(22), formatDay(j.from), formatDay(j.best), formatDay(j.to), j.state.padEnd(8), j.why.code, JSON.stringify(j.why.values));
  const w = jobsInWeek(jobs, today); console.log('WEEK', w.due.map(j=>j.id).join(' '), '| NEXT', w.next.map(j=>j.id).join(' '));
}
