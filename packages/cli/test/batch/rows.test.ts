import { describe, expect, test } from 'vitest';
import { neckfallQuick } from '../run-neckfall.ts';
import { errorsIn, header, linesOf, makeFolder } from './lines-of.ts';

makeFolder();

describe('season', () => {
  test('answers or refuses a row whatever word stands in it, and goes on', () => {
    const words = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'none'];
    const columns = 'id,latitude,longitude,class,cultivar,start,date,cover,water,set_store';
    const rows = words.flatMap((word) => [
      `${word},45,5,,${word},sets,03-25,,,`,
      `${word},45,5,${word},,sets,03-25,,,`,
      `${word},45,5,long,,${word},03-25,,,`,
      `${word},45,5,long,,sets,${word},,,`,
      `${word},45,5,long,,sets,03-25,${word},,`,
      `${word},45,5,long,,sets,03-25,,${word},`,
      `${word},45,5,long,,sets,03-25,,,${word}`,
    ]);
    const { code, lines } = linesOf(
      'season',
      [columns, ...rows, 'last,45,5,long,,sets,03-25,,,', ''].join('\n'),
    );
    expect(code).toBe(0);
    const fields = ['cultivar', 'class', 'start', 'date', 'cover', 'water', 'set_store'];
    const refused = words.flatMap((word) => fields.map((field) => [word, expect.any(String), field]));
    // no cover is a cover
    refused[refused.findIndex(([id, , field]) => id === 'none' && field === 'cover')] = [
      'none',
      'answered',
      null,
    ];
    expect(errorsIn(lines)).toEqual([...refused, ['last', 'answered', null]]);
  });

  test('answers each row as the command by itself would', () => {
    const { code, stderr, lines } = linesOf(
      'season',
      'id,latitude,longitude,elevation_m,class,start,date,plant_out,density_per_m2,set_size_mm,set_store,cover,sun_hours,water\n' +
        'full,52.08,-3.13,160,long,sets,2028-03-25,,60.5,12,warm,fleece,7,rain\n' +
        'bare,-33.03,-68.9,,short,bought-transplants,09-01,,,,,,,\n',
    );
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    const alone = (...args: string[]) => JSON.parse(neckfallQuick('season', '--json', ...args).stdout);
    const [full, bare] = lines;
    const sets = [
      '--start',
      'sets',
      '--date',
      '2028-03-25',
      '--density',
      '60.5',
      '--set-size',
      '12',
      '--set-store',
      'warm',
    ];
    expect(full).toEqual({
      id: 'full',
      ...alone(
        '--at',
        '52.08,-3.13,160',
        '--class',
        'long',
        ...sets,
        '--cover',
        'fleece',
        '--sun',
        '7',
        '--water',
        'rain',
      ),
    });
    expect(bare).toEqual({
      id: 'bare',
      ...alone('--at=-33.03,-68.9', '--class', 'short', '--start', 'bought-transplants', '--date', '09-01'),
    });
  });

  test('takes columns in any order, and their line for an id where there is none', () => {
    const { lines } = linesOf(
      'season',
      'Date , start,CLASS,longitude,latitude\n03-25,sets,long,4.84,45.76\n\n04-02,sets,long,4.84,45.76\n',
    );
    expect(lines.map(({ id, plan }) => [id, plan.date])).toEqual([
      [2, '2028-03-25'],
      [4, '2028-04-02'],
    ]);
  });

  test('takes what a row leaves out from the command line', () => {
    const { lines } = linesOf(
      'season',
      'id,latitude,longitude,start,set_size_mm\na,45.76,4.84,,\nb,45.76,4.84,sets,20\nc,45.76,4.84,sets,\n',
      ...[
        '--class',
        'long',
        '--start',
        'direct-seed',
        '--date',
        '03-25',
        '--soil',
        'clay',
        '--set-size',
        '12',
      ],
    );
    expect(lines.map(({ plan }) => [plan.start, plan.soil, plan.setSizeMm])).toEqual([
      ['direct-seed', 'clay', null],
      ['sets', 'clay', 20],
      ['sets', 'clay', 12],
    ]);
  });

  test('takes an onion by its name', () => {
    const { lines } = linesOf(
      'season',
      'id,latitude,longitude,class,cultivar\n' +
        'named,45.76,4.84,,walla walla\nclass,45.76,4.84,short,\ncommon,45.76,4.84,,\nwrong,45.76,4.84,,Wala Wala Sweeet\nboth,45.76,4.84,long,Sturon\n',
      ...['--start', 'bought-transplants', '--date', '03-25', '--cultivar', 'Sturon'],
    );
    expect(lines.slice(0, 3).map(({ plan }) => plan.cultivar)).toEqual(['Walla Walla', null, 'Sturon']);
    expect(errorsIn(lines.slice(3))).toEqual([
      ['wrong', 'cultivar-unknown', 'cultivar'],
      ['both', 'contradiction', 'class'],
    ]);
  });

  test('finds the sowing of own seedlings of which only the planting out is given', () => {
    const { lines } = linesOf(
      'season',
      'id,latitude,longitude,class,start,plant_out\na,51.5,-0.12,long,raised-seedlings,2028-04-10\n',
    );
    const [{ plan, plantOut }] = lines;
    expect(plan.plantOut).toBe('2028-04-10');
    expect(plan.date < '2028-03-14' && plan.date >= '2028-01-10').toBe(true);
    expect(plantOut.p50).toBe('2028-04-10');
  });

  test('gives a row at fault a line that says why, and goes on', () => {
    const { code, stderr, lines } = linesOf(
      'season',
      [
        header,
        'sea,0,0,long,sets,03-25',
        'north,91,0,long,sets,03-25',
        'empty,,4.84,long,sets,03-25',
        'word,45.76,4.84,lang,sets,03-25',
        'day,45.76,4.84,long,sets,02-30',
        'late,45.76,4.84,long,sets,2099-03-25',
        'bare,45.76,4.84,,sets,03-25',
        'short,45.76,4.84,long',
        'nul,45.7\0,4.84,long,sets,03-25',
        '__proto__,45.76,4.84,long,sets,03-25',
        '',
      ].join('\n'),
    );
    expect(errorsIn(lines)).toEqual([
      ['sea', 'at-sea', 'latitude'],
      ['north', 'number', 'latitude'],
      ['empty', 'row-empty', 'latitude'],
      ['word', 'choice', 'class'],
      ['day', 'date-not-in-calendar', 'date'],
      ['late', 'date-limits', 'date'],
      ['bare', 'missing-option', 'class'],
      [9, 'row-cells', null],
      ['nul', 'number', 'latitude'],
      ['__proto__', 'answered', null],
    ]);
    expect(code).toBe(0);
    expect(stderr).toMatch(/^9 rows of 10 were not answered; their lines say why\. The first: .*\n$/);
    for (const { error } of lines) if (error) expect(error.message).not.toMatch(/--[a-z]/);
  });

  test('is in order on all cores, and the same every time', () => {
    const rows = Array.from({ length: 60 }, (_, i) => {
      // some rows are refused at once, some share a place, some are opened anew
      const latitude = i % 5 === 0 ? 'x' : i % 5 === 1 ? 45.76 : 45 + i / 50;
      return `r${i},${latitude},4.84,long,sets,03-25`;
    });
    const first = linesOf('season', `${header}\n${rows.join('\n')}`, '--years', '1');
    expect(first.lines.map(({ id }) => id)).toEqual(rows.map((_, i) => `r${i}`));
    expect(linesOf('season', `${header}\n${rows.join('\n')}`, '--years', '1').stdout).toBe(first.stdout);
  });
});

test('where answers each row as the command by itself would', () => {
  const { code, lines } = linesOf(
    'where',
    'id;latitude;longitude;elevation_m\n"Talgarth; hill";52,08;-3,13;160\n;0;0;\n',
  );
  expect(code).toBe(0);
  expect(errorsIn(lines)).toEqual([
    ['Talgarth; hill', 'answered', null],
    [3, 'at-sea', 'latitude'],
  ]);
  const alone = JSON.parse(neckfallQuick('where', '--json', '--at', '52.08,-3.13,160').stdout);
  expect(lines[0]).toEqual({ id: 'Talgarth; hill', ...alone });
});
