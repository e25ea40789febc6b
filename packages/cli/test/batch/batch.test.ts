import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { afterAll, describe, expect, test } from 'vitest';
import { neckfall, neckfallQuick, program, testDay } from '../run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-batch-'));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const ajv = new Ajv({ strict: true, allowUnionTypes: true });
const isLine = {
  season: ajv.compile(schema('season-line')),
  where: ajv.compile(schema('where-line')),
};
function schema(name: string) {
  return JSON.parse(readFileSync(new URL(`../../schemas/${name}@1.json`, import.meta.url), 'utf8'));
}

/** The lines of a batch, each checked against the published schema. */
function linesOf(command: 'season' | 'where', content: string | Uint8Array, ...args: string[]) {
  const run = neckfallQuick(command, '--batch', file('rows.csv', content), ...args);
  const lines = run.stdout
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line));
  for (const line of lines) {
    isLine[command](line);
    expect(isLine[command].errors).toBeNull();
  }
  return { ...run, lines };
}

const errorsIn = (lines: { id: string | number; error?: { code: string; field: string | null } }[]) =>
  lines.map(({ id, error }) => [id, error?.code ?? 'answered', error?.field ?? null]);

const header = 'id,latitude,longitude,class,start,date';

describe('season', () => {
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

describe('a file', () => {
  const rows = `${header}\né,45.76,4.84,long,sets,03-25\n`;

  test.each([
    ['UTF-8 with a mark', Buffer.from(`\ufeff${rows}`)],
    ['UTF-16, little end first', Buffer.from(`\ufeff${rows}`, 'utf16le')],
    ['UTF-16, big end first', Buffer.from(`\ufeff${rows}`, 'utf16le').swap16()],
  ])('may be in %s', (_, bytes) => {
    const { code, lines } = linesOf('season', bytes);
    expect({ code, id: lines[0].id }).toEqual({ code: 0, id: 'é' });
  });

  test('may come in by standard input', () => {
    const { status, stdout } = spawnSync(
      process.execPath,
      [program, 'season', '--batch', '-', '--years', '1', '--today', testDay],
      { input: rows, encoding: 'utf8' },
    );
    expect(status).toBe(0);
    expect(JSON.parse(stdout).id).toBe('é');
  });

  test('in another encoding, or cut in the middle of a character, fails the rows it cannot read', () => {
    const latin = Buffer.from(rows, 'latin1');
    const whole = Buffer.from(`${rows}b,45.76,4.84,long,sets,03-25\nù`);
    expect(
      errorsIn(linesOf('season', Buffer.concat([latin, Buffer.from('b,45,4,long,sets,03-25')])).lines),
    ).toEqual([
      [2, 'row-encoding', null],
      ['b', 'answered', null],
    ]);
    expect(errorsIn(linesOf('season', whole.subarray(0, whole.length - 1)).lines).at(-1)?.[1]).toBe(
      'row-encoding',
    );
  });

  test('with a line of ten million characters fails that row alone', () => {
    const { code, lines } = linesOf(
      'season',
      `${header}\n${'7'.repeat(10_000_000)}\nb,45.76,4.84,long,sets,03-25\n`,
    );
    expect(code).toBe(0);
    expect(errorsIn(lines)).toEqual([
      [2, 'row-too-long', null],
      ['b', 'answered', null],
    ]);
  });

  test.each([
    ['of which every row fails', `${header}\na,91,0,long,sets,03-25\n`, /its one row was not answered/],
    ['without rows', `${header}\n`, /has no rows/],
    ['without anything', '', /has no rows/],
    [
      'with an unknown column',
      'latitude,longitude,cover_\n1,2,3\n',
      /no column is called "cover_". Did you mean cover\?/,
    ],
    ['with a column twice', 'latitude,longitude,Latitude\n1,2,3\n', /"Latitude" comes twice/],
    ['without a column it needs', 'latitude,class\n1,long\n', /"longitude" is missing/],
    ['in UTF-16 without a mark', Buffer.from(`${header}\n`, 'utf16le'), /is not text in UTF-8/],
    ['that is no text', Uint8Array.from({ length: 4000 }, (_, i) => (i * 89) % 256), /is not text in UTF-8/],
  ])('%s is refused', (_, content, message) => {
    const { code, stderr } = linesOf('season', content);
    expect(code).toBe(3);
    expect(stderr).toMatch(message);
    expect(stderr.split('\n')).toHaveLength(2);
  });

  test('that is missing or a folder is refused', () => {
    for (const [path, message] of [
      [join(folder, 'none.csv'), /there is no such file/],
      [folder, /is a folder/],
    ] as const) {
      const { code, stdout, stderr } = neckfall('season', '--batch', path);
      expect({ code, stdout }).toEqual({ code: 3, stdout: '' });
      expect(stderr).toMatch(message);
    }
  });
});

test.each([
  [['Lyon'], /^Lyon does not go with --batch/],
  [['--at', '45,4'], /^--at does not go with --batch/],
  [['--csv'], /^--csv does not go with --batch/],
  [['--weather', 'w.csv'], /^--weather does not go with --batch/],
  [['--years', '0'], /^--years 0: expected/],
])('--batch with %s is refused', (args, message) => {
  const { code, stdout, stderr } = neckfall('where', '--batch', 'no.csv', ...args);
  expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
  expect(stderr).toMatch(message);
});

describe('--out', () => {
  const rows = file('out-rows.csv', `${header}\na,45.76,4.84,long,sets,03-25\nb,91,0,long,sets,03-25\n`);

  test('holds the lines, whole', () => {
    const out = join(folder, 'lines.jsonl');
    const { code, stdout } = neckfallQuick('season', '--batch', rows, '--out', out);
    expect({ code, stdout }).toEqual({ code: 0, stdout: '' });
    expect(readFileSync(out, 'utf8').trimEnd().split('\n')).toHaveLength(2);
  });

  test('is left as it was where no row could be answered', () => {
    const out = file('older.jsonl', 'older\n');
    const bad = file('bad-rows.csv', `${header}\na,91,0,long,sets,03-25\n`);
    expect(neckfallQuick('season', '--batch', bad, '--out', out).code).toBe(3);
    expect(readFileSync(out, 'utf8')).toBe('older\n');
  });

  test.skipIf(!existsSync('/dev/full'))('to a full disk is refused', () => {
    const { code, stderr } = neckfallQuick('season', '--batch', rows, '--out', '/dev/full');
    expect(code).toBe(3);
    expect(stderr).toMatch(/^--out \/dev\/full: the disk is full\./);
  });
});

/** More rows than are answered before anyone can react. */
const many = file(
  'many.csv',
  `${header}\n${Array.from({ length: 3000 }, (_, i) => `r${i},${45 + (i % 50) / 100},4.84,long,sets,03-25\n`).join('')}`,
);

test.skipIf(process.platform === 'win32')(
  'Ctrl-C in the middle ends with 130 and leaves no file behind',
  async () => {
    const target = mkdtempSync(join(folder, 'stopped-'));
    const child = spawn(process.execPath, [
      program,
      'season',
      '--batch',
      many,
      '--out',
      join(target, 'lines.jsonl'),
    ]);
    let stderr = '';
    child.stderr.on('data', (chunk) => {
      stderr += chunk;
    });
    // the draft of the file is there as soon as rows are being answered
    while (readdirSync(target).length === 0) await new Promise((resolve) => setImmediate(resolve));
    child.kill('SIGINT');
    const code = await new Promise((resolve) => child.on('close', resolve));
    expect({ code, stderr, left: readdirSync(target) }).toEqual({ code: 130, stderr: '', left: [] });
  },
);

test('a reader that has seen enough ends a batch quietly', async () => {
  const child = spawn(process.execPath, [program, 'season', '--batch', many]);
  let stderr = '';
  child.stderr.on('data', (chunk) => {
    stderr += chunk;
  });
  child.stdout.once('data', () => child.stdout.destroy());
  const code = await new Promise((resolve) => child.on('close', resolve));
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
});

test.skipIf(process.platform === 'win32')('a disk that fills up in the middle leaves no file behind', () => {
  const target = mkdtempSync(join(folder, 'filled-'));
  const out = join(target, 'lines.jsonl');
  // a file may grow to 100 blocks of at most 1 kB and no further
  const command = 'ulimit -f 100; exec "$0" "$@"';
  const batch = [program, 'season', '--batch', many, '--years', '1', '--out', out];
  const { status, stderr } = spawnSync('sh', ['-c', command, process.execPath, ...batch], {
    encoding: 'utf8',
  });
  expect(status).toBe(3);
  expect(stderr).toBe(`--out ${out} could not be written (EFBIG). Nothing was written.\n`);
  expect(readdirSync(target)).toEqual([]);
});
