import { describe, expect, it } from 'vitest';
import { daysRead } from './days-read.ts';

/** Tables whose rows begin with the day alone, below the name of its month. */
const blocks: [what: string, text: string, days: string[]][] = [
  [
    'months one below the other, with the day alone in each row',
    `Rain book 2024\n\nJanuary\nDay,Max,Min,Rain\n${[28, 29, 30, 31].map((day) => `${day},9,2,0.5`).join('\n')}\nTotal,,,2.0\n\nFebruary\nDay,Max,Min,Rain\n${[1, 2, 3, 4].map((day) => `${day},7,-1,1.5`).join('\n')}\nTotal,,,6.0`,
    [
      ...[28, 29, 30, 31].map((day) => `2024-01-${day} 2/9/0.5`),
      ...[1, 2, 3, 4].map((day) => `2024-02-0${day} -1/7/1.5`),
    ],
  ],
  [
    'a report of a month, parted by spaces',
    `CLIMATE OF THE MONTH, JUN. 2024\n\nELEV:  150 m\n\nDAY  MEAN  HIGH   TIME   LOW    TIME   RAIN\n-------------------------------------------\n${[1, 2, 3, 4, 5, 6, 7, 8].map((day) => ` ${day}  15.0  20.5   15:00   9.5    5:00   2.4`).join('\n')}\n-------------------------------------------\n    15.0  20.5      1    9.5       1   19.2`,
    [1, 2, 3, 4, 5, 6, 7, 8].map((day) => `2024-06-0${day} 9.5/20.5/2.4`),
  ],
];

describe('days below the name of their month', () => {
  it.each(blocks)('are read of %s', (_, text, days) => {
    expect(daysRead(text)).toEqual(days);
  });

  it('are none where no year is told', () => {
    expect(() => daysRead('June\nDay,Max,Min\n1,20,9\n2,21,10\n3,19,8\n4,18,8')).toThrow('no-dates');
  });
});
