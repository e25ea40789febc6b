import { nearDays } from '../score/leads.ts';
import { percent, table } from './table.ts';

/** What is advised at the places of the calendars, without and with the practice of the district. */
export type LeadChecks = {
  dates: { id: string; alone: number; withPractice: number }[];
  leads: { place: string; alone: string; withPractice: string; used: readonly string[] }[];
};

/** Advice against calendars. */
export function leadPages({ dates, leads }: LeadChecks): string {
  const near = (of: 'alone' | 'withPractice') =>
    `${dates.filter((date) => date[of] <= nearDays).length} of ${dates.length} (${percent(
      dates.filter((date) => date[of] <= nearDays).length / dates.length,
    )})`;
  const told = (of: 'alone' | 'withPractice') =>
    `${leads.filter((lead) => lead.used.includes(lead[of])).length} of ${leads.length}`;
  return `## Advice against calendars

By parameters that never saw the neighbourhood, in the climate of the normals. *Alone*: as the model has it; *with practice*: as a
reader is told, where the calendars read in a source settle ties.

${table(
  ['', 'alone', 'with practice'],
  [
    [
      `best date of the class and start within ${nearDays} days of its published window`,
      near('alone'),
      near('withPractice'),
    ],
    ['leading class is one that the calendars of the place use', told('alone'), told('withPractice')],
  ],
)}

Farther off with practice: ${
    dates
      .filter((date) => date.withPractice > nearDays)
      .map(({ id, withPractice }) => `${id} ${Math.round(withPractice)} d`)
      .join(', ') || 'none'
  }.

Another class leads with practice: ${
    leads
      .filter((lead) => !lead.used.includes(lead.withPractice))
      .map(({ place, withPractice, used }) => `${place} (${withPractice}, not ${used.join(' or ')})`)
      .join('; ') || 'nowhere'
  }.
`;
}
