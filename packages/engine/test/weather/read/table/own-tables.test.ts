import { describe, expect, it } from 'vitest';
import { daysRead, foundIn, hours, two } from './days-read.ts';

/** Tables of rows that are days, as people keep them. */
const daily: [what: string, text: string, days: string[]][] = [
  [
    'English names, day before month, as day 25 tells',
    'Date,Max Temp (°C),Min Temp (°C),Rainfall (mm)\n25/03/2024,12.5,3.1,0.4\n26/03/2024,13,4,0',
    ['2024-03-25 3.1/12.5/0.4', '2024-03-26 4/13/0'],
  ],
  [
    'American units and order, thousands set off',
    'Date,High (°F),Low (°F),Precip (in),Pressure (ft)\n3/25/24,68,41,0.50,"1,013.2"\n3/26/24,50,32,0.00,"1,012.9"',
    ['2024-03-25 5/20/12.7', '2024-03-26 0/10/0'],
  ],
  [
    'German, decimal commas, semicolons and dots in dates',
    'Datum;Höchsttemperatur;Tiefsttemperatur;Niederschlag (mm);Taupunkt\n01.03.2024;9,5;-1,5;2,4;-3\n02.03.2024;10,0;0,5;0,0;1\n15.03.2024;12,0;1,0;1,1;1',
    [
      '2024-03-01 -1.5/9.5/2.4',
      '2024-03-02 0.5/10/0',
      ...Array.from({ length: 12 }, (_, at) => `2024-03-${two(at + 3)} -/-/-`),
      '2024-03-15 1/12/1.1',
    ],
  ],
  [
    'French, letters lost, units in a row of their own',
    'Date;Temp\uFFFDrature max;Temp\uFFFDrature min;Pr\uFFFDcipitations\n;\uFFFDC;\uFFFDC;mm\n2024-06-01;21,5;11,0;0,0\n2024-06-02;22,0;12,5;3,6',
    ['2024-06-01 11/21.5/0', '2024-06-02 12.5/22/3.6'],
  ],
  [
    'Spanish, month names',
    'Fecha\tT. máxima (°C)\tT. mínima (°C)\tLluvia (mm)\n1 ene 2024\t8,5\t-2\t0\n2 ene 2024\t9\t0,5\tIp\n3 ene 2024\t7\t1\t12,5',
    ['2024-01-01 -2/8.5/0', '2024-01-02 0.5/9/0', '2024-01-03 1/7/12.5'],
  ],
  [
    'English, the month before the day by its name, units behind values',
    '"Garden, exported 2024-03-01 10:22"\n\n"Date","High","Low","Rain"\n"Mar 1, 2024","12.0 °C","3.5 °C","1.2 mm"\n"Mar 2, 2024","11.0 °C","4.0 °C","0.0 mm"',
    ['2024-03-01 3.5/12/1.2', '2024-03-02 4/11/0'],
  ],
  [
    'Spanish, days of the week that begin as months do',
    'Fecha;Máxima;Mínima\nlun 04-03-2024;12;3\nmar 05-03-2024;11;4\nmié 06-03-2024;10;5',
    ['2024-03-04 3/12/-', '2024-03-05 4/11/-', '2024-03-06 5/10/-'],
  ],
  [
    'a winter below 38 °F whose units nothing states',
    `Date,High,Low,Precip\n${Array.from({ length: 20 }, (_, at) => `1/${at + 1}/24,23,5,${at < 8 ? '0.07' : '0.00'}`).join('\n')}`,
    Array.from({ length: 20 }, (_, at) => `2024-01-${two(at + 1)} -15/-5/${at < 8 ? '1.78' : '0'}`),
  ],
  [
    'Portuguese, year, month and day apart',
    'Ano,Mês,Dia,Temperatura máxima,Temperatura mínima,Chuva\n2023,12,31,30.2,20.1,5\n2024,1,1,29.5,19.8,0',
    ['2023-12-31 20.1/30.2/5', '2024-01-01 19.8/29.5/0'],
  ],
  [
    'Italian, a pipe between cells, two digits for the year',
    'Data | Temp. massima | Temp. minima | Pioggia mm\n28/02/24 | 14,2 | 5,1 | 0\n29/02/24 | 15,0 | 6,3 | 1,2\n',
    ['2024-02-28 5.1/14.2/0', '2024-02-29 6.3/15/1.2'],
  ],
  [
    'Dutch, runs of spaces, tenths without a word',
    'datum     maximumtemperatuur minimumtemperatuur neerslag\n20240101  82   -21   34\n20240102  95   14    0\n20240103  101  -90   12\n20240104  310   120    12',
    ['2024-01-01 -2.1/8.2/3.4', '2024-01-02 1.4/9.5/0', '2024-01-03 -9/10.1/1.2', '2024-01-04 12/31/1.2'],
  ],
  [
    'Fahrenheit and inches that nothing states, told by their level',
    'date,tmax,tmin,rain\n2024-07-01,86,59,0.25\n2024-07-02,95,68,0\n2024-07-03,77,50,1.00',
    ['2024-07-01 15/30/6.35', '2024-07-02 20/35/0', '2024-07-03 10/25/25.4'],
  ],
  [
    'a preamble, a unit behind each name, a blank row, a repeated head and a sum below',
    'Pencarreg Bank\nkept by: Ines Tarrant\n\nday,min temp C,max temp C,rain mm,\n2024-05-01,4,15,1,\n\nday,min temp C,max temp C,rain mm,\n2024-05-02,5,16,2,\nTotal,,,3,',
    ['2024-05-01 4/15/1', '2024-05-02 5/16/2'],
  ],
  [
    'comment lines, a head in one of them',
    '# station: Pencarreg Bank\n# lat: 52.08\n# date tmin tmax rain\n2024-05-01 4.5 15.5 0.0\n2024-05-02 5.0 16.0 2.2',
    ['2024-05-01 4.5/15.5/0', '2024-05-02 5/16/2.2'],
  ],
  [
    'an index without a name, one cell more than names',
    'date,tmin_c,tmax_c\n1,2024-05-01,4.5,15.5\n2,2024-05-02,5.0,16.0',
    ['2024-05-01 4.5/15.5/-', '2024-05-02 5/16/-'],
  ],
  [
    'rows with too few cells, and words for nothing',
    'Date,Tmax,Tmin,Rain mm\n2024-05-01,15,4\n2024-05-02,n/a,5,0.2\n2024-05-03,--,M,',
    ['2024-05-01 4/15/-', '2024-05-02 5/-/0.2', '2024-05-03 -/-/-'],
  ],
  [
    'days of the year',
    'Year,DOY,Tmax (C),Tmin (C),Solar (MJ/m2)\n2024,60,11,2,9.5\n2024,61,12,3,10',
    ['2024-02-29 2/11/-/9.5', '2024-03-01 3/12/-/10'],
  ],
  [
    'days of a spreadsheet, counted from 1900',
    'Date,Max,Min\n45292,8,2\n45293,9,3',
    ['2024-01-01 2/8/-', '2024-01-02 3/9/-'],
  ],
  [
    'kelvins, and sun in kWh',
    'time;air_temperature_max (K);air_temperature_min (K);global radiation (kWh/m²)\n2024-04-01;288,15;278,15;2,5\n2024-04-02;289,15;279,15;3',
    ['2024-04-01 5/15/-/9', '2024-04-02 6/16/-/10.8'],
  ],
  [
    'langleys, centimetres, and cells that carry their units',
    'Date,Hi Temp,Low Temp,Rain (cm),Solar Energy (Ly)\n2024-04-01,"59 °F","41 °F",0.25,500\n2024-04-02,"68 °F","50 °F",0,100',
    ['2024-04-01 5/15/2.5/20.92', '2024-04-02 10/20/0/4.18'],
  ],
  [
    'a head of two rows',
    'Date,Temperature (°C),,,Humidity,,Precip.\n,High,Avg,Low,High,Low,Sum (mm)\n2024-04-01,15,10,5,90,40,0.3\n2024-04-02,16,11,6,91,50,0',
    ['2024-04-01 5/15/0.3', '2024-04-02 6/16/0'],
  ],
  [
    'mean watts of a day, and a rain counter of the month',
    `Date,Tmin,Tmax,Solar W/m2,Monthly Rain (mm)\n${[0, 2, 2, 5, 5, 5, 8, 9, 9, 12].map((rain, at) => `2024-04-${two(at + 1)},5,15,100,${rain}`).join('\n')}`,
    [0, 2, 0, 3, 0, 0, 3, 1, 0, 3].map(
      (rain, at) => `2024-04-${two(at + 1)} 5/15/${at === 0 ? '-' : rain}/8.64`,
    ),
  ],
  [
    'midnights of the place, told in UTC',
    'time,tmin,tmax\n2024-06-30T22:00:00Z,10,20\n2024-07-01T22:00:00Z,11,21',
    ['2024-07-01 10/20/-', '2024-07-02 11/21/-'],
  ],
  [
    'rain of several columns: the wider one that is filled',
    'Date,Total Rain (mm),Total Snow (cm),Total Precip (mm),Max Temp (C),Min Temp (C)\n2024-01-01,,0,1.2,3,-1\n2024-01-02,,0,0,4,0',
    ['2024-01-01 -1/3/1.2', '2024-01-02 0/4/0'],
  ],
  [
    'days of the week before dates, and names of half a word',
    'sep=;\nTag;Höchst;Tiefst;Regen\nMo 03.06.2024;20,1;10,2;0\nDi 04.06.2024;21,1;11,2;1,5',
    ['2024-06-03 10.2/20.1/0', '2024-06-04 11.2/21.1/1.5'],
  ],
  [
    'dates in words, °F and inches unsaid',
    'Date,High,Low,Rain\n"Saturday, June 1, 2024",68,50,0.1\n"Sunday, June 2, 2024",86,59,0',
    ['2024-06-01 10/20/2.54', '2024-06-02 15/30/0'],
  ],
  [
    'a station and its place, days as one number, rain named by two letters',
    'NUM_POSTE;NOM_USUEL;LAT;LON;ALTI;AAAAMMJJ;RR;QRR;TN;QTN;HTN;TX;QTX;TM\n01;PENCARREG;46.27;5.66;534;20240601;1.2;1;9.1;1;450;20.1;1;14.6\n01;PENCARREG;46.27;5.66;534;20240602;;9;10.1;1;450;21.1;1;15.6',
    ['2024-06-01 9.1/20.1/1.2', '2024-06-02 10.1/21.1/-'],
  ],
  [
    'inches with all the marks of quality beside them',
    'Stn Id,Date,Jul,ETo (in),qc,Precip (in),qc,Sol Rad (Ly/day),qc,Max Air Temp (F),qc,Min Air Temp (F),qc,Avg Air Temp (F),qc\n6,6/1/2024,153,0.25,,0.10,,650,,86,,59,,72,\n6,6/2/2024,154,0.25,R,0.00,,100,,77,,50,,73,',
    ['2024-06-01 15/30/2.54/27.2', '2024-06-02 10/25/0/4.18'],
  ],
  [
    'long names in words',
    'day of observation|maximum air temperature in the last 24 hours (degC)|minimum air temperature in the last 24 hours (degC)|rainfall total in the last 24 hours (mm)\n2024-06-01|20|10|1\n2024-06-02|21|11|2',
    ['2024-06-01 10/20/1', '2024-06-02 11/21/2'],
  ],
  [
    'a winter in °F that nothing states but inches of rain',
    `date,high,low,precip\n${Array.from({ length: 20 }, (_, at) => `2024-01-${two(at + 1)},${at % 2 === 0 ? 50 : 32},${at % 2 === 0 ? 32 : 14},${at % 3 === 0 ? 0.25 : 0}`).join('\n')}`,
    Array.from(
      { length: 20 },
      (_, at) => `2024-01-${two(at + 1)} ${at % 2 === 0 ? '0/10' : '-10/0'}/${at % 3 === 0 ? 6.35 : 0}`,
    ),
  ],
  [
    'whole degrees with -99 for nothing',
    `date,max,min\n${Array.from({ length: 20 }, (_, at) => `2024-01-${two(at + 1)},${at % 4 === 0 ? '-99,-99' : '9,1'}`).join('\n')}`,
    Array.from({ length: 20 }, (_, at) => `2024-01-${two(at + 1)} ${at % 4 === 0 ? '-/-' : '1/9'}/-`),
  ],
  [
    'temperature of other things beside that of the air',
    'Date,Soil Temp Max,Soil Temp Min,Max Temp,Min Temp,Dew Point Max,Indoor Temp Max,Water Temp Min\n2024-05-01,11,9,15,4,8,24,7\n2024-05-02,12,10,16,5,9,25,8',
    ['2024-05-01 4/15/-', '2024-05-02 5/16/-'],
  ],
];

describe('a table of days', () => {
  it.each(daily)('of %s', (_, text, days) => {
    expect(daysRead(text)).toEqual(days);
    // as Windows writes it, with the mark that spreadsheets begin with
    expect(daysRead(`\uFEFF${text.replaceAll('\n', '\r\n')}\r\n\r\n`)).toEqual(days);
  });
});

/** Two days of hours: the coldest at hour 5 with `low` of the day, the warmest at 15 with `high`. */
const degrees = (hour: number, low: number, high: number) =>
  hour === 5 ? low : hour === 15 ? high : (low + high) / 2;
const twoDays = (row: (date: number, hour: number) => string) =>
  [1, 2].map((date) => hours((hour) => row(date, hour))).join('\n');

const readings: [what: string, text: string, days: string[]][] = [
  [
    'a day counter, beside rain rate, event, week and year',
    `Time,Outdoor Temp(C),Indoor Temp(C),Rain Rate(mm/hr),Event Rain(mm),Daily Rain(mm),Weekly Rain(mm),Yearly Rain(mm)\n${twoDays(
      (date, hour) =>
        `2024-10-0${date} ${two(hour)}:00,${degrees(hour, 4, 14)},21,6,${hour},${(hour * date) / 10},${hour},${100 + hour}`,
    )}`,
    ['2024-10-01 4/14/2.3', '2024-10-02 4/14/4.6'],
  ],
  [
    'half past twelve before one, with AM and PM, in °F and inches',
    `Date & Time,Temp Out - °F,Temp In - °F,Rain - in\n${twoDays(
      (date, hour) =>
        `09/${date + 12}/2024 ${hour % 12 === 0 ? 12 : hour % 12}:30 ${hour < 12 ? 'AM' : 'PM'},${degrees(hour, 41, 59)},70,${hour === 3 ? 0.1 : 0}`,
    )}`,
    ['2024-09-13 5/15/2.54', '2024-09-14 5/15/2.54'],
  ],
  [
    'German columns of date and time, inside and outside',
    `Datum;Uhrzeit;Innentemperatur °C;Außentemperatur °C;Luftfeuchte außen %;Regen mm\n${twoDays(
      (date, hour) =>
        `${two(date + 12)}.10.2024;${hour}:00 Uhr;21,5;${String(degrees(hour, 4.5, 14.5)).replace('.', ',')};80;${hour === 12 ? '0,3' : '0,0'}`,
    )}`,
    ['2024-10-13 4.5/14.5/0.3', '2024-10-14 4.5/14.5/0.3'],
  ],
  [
    'a counter that goes on, latest reading first',
    `timestamp,temperature,rain_total\n${twoDays(
      (date, hour) =>
        `2024-10-0${date}T${two(hour)}:00,${degrees(hour, 4, 14)},${(500 + (date - 1) * 24 + hour) / 10}`,
    )
      .split('\n')
      .reverse()
      .join('\n')}`,
    ['2024-10-01 4/14/2.4', '2024-10-02 4/14/2.3'],
  ],
  [
    'a counter named rain alone that is set back at midnight',
    `timestamp,temp_c,rain_mm\n${twoDays((date, hour) => `2024-10-0${date} ${two(hour)}:15,${degrees(hour, 4, 14)},${(hour * 3 * date) / 10}`)}`,
    ['2024-10-01 4/14/6.9', '2024-10-02 4/14/13.8'],
  ],
  [
    'rain of an hour, of the last 24 and in all: the last overlaps nothing',
    `Datum/Uhrzeit;Temperatur außen [°C];Temperatur innen [°C];Regen 1h [mm];Regen 24h [mm];Regen gesamt [mm]\n${twoDays(
      (date, hour) =>
        `0${date}.10.2024 ${two(hour)}:05;${degrees(hour, 4, 14)};21,0;${hour === 7 ? '0,5' : '0,0'};0,5;${100 + date * 0.5 + (hour >= 7 ? 0.5 : 0)}`.replaceAll(
          '.5;',
          ',5;',
        ),
    )}`,
    ['2024-10-01 4/14/0.5', '2024-10-02 4/14/0.5'],
  ],
  [
    'a head of two rows between tabs, noon and midnight as 12:00p and 12:00a',
    `\t\tTemp\tHi\tLow\tOut\tDew\t\tRain\tIn\nDate\tTime\tOut\tTemp\tTemp\tHum\tPt.\tRain\tRate\tTemp\n${twoDays(
      (date, hour) =>
        `6/${date + 13}/24\t${hour % 12 || 12}:00${hour < 12 ? 'a' : 'p'}\t${degrees(hour, 41, 59)}\t60\t40\t80\t---\t${hour === 7 ? '0.10' : '0.00'}\t0.00\t70.1`,
    )}`,
    ['2024-06-14 5/15/2.54', '2024-06-15 5/15/2.54'],
  ],
  [
    'a logger: names, units and kinds in three rows, below a row of its own',
    `"LOG5","Pencarreg","1","os"\n"TIMESTAMP","RECORD","AirTC_Avg","RH","Rain_mm_Tot","SlrW_Avg"\n"TS","RN","Deg C","%","mm","W/m^2"\n"","","Avg","Smp","Tot","Avg"\n${twoDays(
      (date, hour) =>
        `"2024-05-2${date} ${two(hour)}:00:00",${hour},${degrees(hour, 8, 20)},80,${hour === 9 ? 0.4 : 0},${hour === 11 ? 500 : 0}`,
    )}`,
    ['2024-05-21 8/20/0.4/1.8', '2024-05-22 8/20/0.4/1.8'],
  ],
  [
    'French hours as 13h00, the hour 24 and the sun in W/m²',
    `Date;Heure;Température extérieure;Température intérieure;Pluie (mm);Rayonnement solaire (W/m²)\n${twoDays(
      (date, hour) =>
        `${two(date + 20)}/05/2024;${two(hour + 1)}h00;${degrees(hour, 8, 20)};22;0;${hour === 11 ? 500 : 0}`,
    )}`,
    ['2024-05-21 8/20/0/1.8', '2024-05-22 8/20/0/1.8'],
  ],
  [
    'hours in a column of their own, the sensors numbered',
    `year,month,day,hour,temp1,temp2,rain\n${twoDays((date, hour) => `2024,5,${date},${hour},${degrees(hour, 8, 20)},${degrees(hour, 9, 21)},0.1`)}`,
    ['2024-05-01 8/20/2.4', '2024-05-02 8/20/2.3'],
  ],
  [
    'hours and minutes as one number',
    `YYYYMMDD,HHMM,TempAir\n${twoDays((date, hour) => `2024050${date},${hour * 100 + 30},${degrees(hour, 8, 20)}`)}`,
    ['2024-05-01 8/20/-', '2024-05-02 8/20/-'],
  ],
  [
    'hours that carry their offset, at that of winter',
    `time,temp\n2024-03-30T23:00:00+01:00,9\n${twoDays((date, hour) => `2024-04-0${date}T${two(hour)}:00:00+02:00,${hour === 0 ? 1 : degrees(hour, 8, 20)}`)}\n`,
    // an hour before midnight of standard time: the first reading of 1 April belongs to the day before
    ['2024-03-30 -/-/-', '2024-03-31 -/-/-', '2024-04-01 1/20/-', '2024-04-02 8/20/-'],
  ],
];

describe('a table of readings within days', () => {
  it.each(readings)('of %s', (_, text, days) => {
    expect(daysRead(text)).toEqual(days);
  });

  it('counts seconds since 1970 from UTC, in the standard time of the place', () => {
    // 2024-10-01T00:00Z
    const text = `dateTime,outTemp,rain\n${Array.from({ length: 48 }, (_, hour) => `${1727740800 + hour * 3600},${degrees((hour + 3) % 24, 4, 14)},0`).join('\n')}`;
    expect(daysRead(text, {}, 3)[0]).toBe('2024-10-01 4/14/0');
    expect(foundIn(text, {}, 3)).toMatchObject({ timeBase: 'utc', utcOffset: { offsetH: 3, from: 'place' } });
    expect(foundIn(text, { utcOffsetH: -4 }, 3).utcOffset).toEqual({ offsetH: -4, from: 'correction' });
  });
});
