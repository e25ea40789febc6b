/** A small file of every format of weather that is read, of invented stations. */
const two = (number: number) => String(number).padStart(2, '0');
const days = Array.from({ length: 28 }, (_, at) => at + 1);
const hours = days.slice(0, 3).flatMap((day) => Array.from({ length: 24 }, (_, hour) => ({ day, hour })));
const max = (day: number) => 12 + (day % 9) + 0.5;
const min = (day: number) => max(day) - 8;
const rain = (day: number) => (day % 3 === 0 ? 2.4 : 0);
const warmth = (hour: number) => 10 - 5 * Math.cos((hour / 12) * Math.PI);

const monthOf = (element: string, value: (day: number) => number) =>
  `XX000000001202602${element}${days.map((day) => `${String(Math.round(value(day) * 10)).padStart(5)}  a`).join('')}${'-9999   '.repeat(3)}`;
const gsod = (day: number) =>
  `066000 99999  202602${two(day)}`.padEnd(102) +
  `${(32 + 1.8 * max(day)).toFixed(1).padStart(6)}* ${(32 + 1.8 * min(day)).toFixed(1).padStart(6)}  ${(rain(day) / 25.4).toFixed(2).padStart(5)}G 999.9  010000`;
const epw = (year: number, month: number) =>
  hours.map(({ day, hour }) => {
    const cells = Array.from({ length: 35 }, () => '0');
    cells.splice(
      0,
      7,
      String(year),
      String(month),
      String(day),
      String(hour + 1),
      '0',
      '?9',
      warmth(hour).toFixed(1),
    );
    return cells.join(',');
  });
const epwHead =
  'LOCATION,Pencarreg Bank,-,GBR,station,1,52.08,-3.13,0.0,210.0\nDATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\n';
const daily = <Value>(value: (day: number) => Value) =>
  Object.fromEntries(days.map((day) => [`202602${two(day)}`, value(day)]));
const stamps = hours.map(({ day, hour }) => `2026-02-${two(day)}T${two(hour)}:00`);
const lines = (head: string, row: (day: number) => string) => [head, ...days.map(row)].join('\n');

export const weatherFixtures: readonly string[] = [
  lines(
    'date,temp_min_c,temp_max_c,rain_mm',
    (day) => `2026-02-${two(day)},${min(day)},${max(day)},${rain(day)}`,
  ),
  [
    'Datum;Zeit;Temperatur Innen (°C);Temperatur Außen (°C);Regen heute (mm)',
    ...hours.map(
      ({ day, hour }) =>
        `${two(day)}.02.2026;${two(hour)}:00;21,5;${String(warmth(hour)).replace('.', ',')};${hour / 10}`,
    ),
  ].join('\r\n'),
  [monthOf('TMAX', max), monthOf('TMIN', min), monthOf('PRCP', rain)].join('\n'),
  lines(
    '"STATION","DATE","TMAX","TMAX_ATTRIBUTES","TMIN","PRCP"',
    (day) =>
      `"XX000000001","2026-02-${two(day)}","${max(day) * 10}",",,E","${min(day) * 10}","${rain(day) * 10}"`,
  ),
  lines(
    '"STATION","NAME","DATE","TMAX","TMIN","PRCP"',
    (day) =>
      `"XX1","PENCARREG","2026-02-${two(day)}","${Math.round(32 + 1.8 * max(day))}","${Math.round(32 + 1.8 * min(day))}","${rain(day)}"`,
  ),
  days
    .map(
      (day) =>
        `XX000000001,202602${two(day)},TMAX,${max(day) * 10},,,E,\nXX000000001,202602${two(day)},TMIN,${min(day) * 10},,,E,`,
    )
    .join('\n'),
  lines('STN--- WBAN   YEARMODA    TEMP       DEWP      SLP', gsod),
  lines(
    '"STATION","DATE","LATITUDE","LONGITUDE","TEMP","TEMP_ATTRIBUTES","MAX","MAX_ATTRIBUTES","MIN","MIN_ATTRIBUTES","PRCP","PRCP_ATTRIBUTES","FRSHTT"',
    (day) =>
      `"03772099999","2026-02-${two(day)}","51.4","-0.4","  45.5","24","  ${32 + 1.8 * max(day)}"," ","${32 + 1.8 * min(day)}","*","99.99"," ","010000"`,
  ),
  JSON.stringify({
    geometry: { type: 'Point', coordinates: [-3.13, 52.08, 210] },
    properties: { parameter: { T2M_MAX: daily(max), T2M_MIN: daily(min), PRECTOTCORR: daily(rain) } },
    header: { fill_value: -999 },
  }),
  `-BEGIN HEADER-\nLocation: Latitude  52.08   Longitude -3.13\nT2M_MAX   Maximum (C)\n-END HEADER-\n${lines('YEAR,MO,DY,T2M_MAX,T2M_MIN,PRECTOTCORR', (day) => `2026,2,${day},${max(day)},${min(day)},-999`)}`,
  JSON.stringify({
    latitude: 52.08,
    longitude: -3.13,
    utc_offset_seconds: 3600,
    hourly_units: { time: 'iso8601', temperature_2m: '°C', precipitation: 'mm' },
    hourly: {
      time: stamps,
      temperature_2m: hours.map(({ hour }) => warmth(hour)),
      precipitation: hours.map(() => 0.1),
    },
  }),
  `latitude,longitude,elevation,utc_offset_seconds,timezone\n52.08,-3.13,210.0,0,GMT\n\ntime,temperature_2m (°C),precipitation (mm)\n${stamps.map((stamp, at) => `${stamp},${warmth(at % 24)},0.1`).join('\n')}`,
  epwHead + epw(2026, 2).join('\n'),
  epwHead + [...epw(2009, 1), ...epw(2003, 2)].join('\r\n'),
  `999999,"PENCARREG BANK",GB,0.0,52.080,-3.130,210\nDate (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),Dry-bulb (C),Lprecip depth (mm)\n${hours.map(({ day, hour }) => `02/${two(day)}/1999,${two(hour + 1)}:00,0,${warmth(hour)},-9900`).join('\n')}`,
  lines(
    'STATIONS_ID;MESS_DATUM;QN_3; RSK; TXK; TNK;eor',
    (day) => `        430;202602${two(day)};   10; ${rain(day)}; ${max(day)}; ${min(day)};eor`,
  ),
  lines(
    '"Longitude (x)","Latitude (y)","Station Name","Climate ID","Date/Time","Year","Month","Day","Max Temp (°C)","Max Temp Flag","Min Temp (°C)","Min Temp Flag","Total Precip (mm)","Total Precip Flag"',
    (day) =>
      `"-3.13","52.08","PENCARREG","1","2026-02-${two(day)}","2026","02","${two(day)}","${max(day)}","","${min(day)}","E","","M"`,
  ),
  lines(
    'Product code,Bureau of Meteorology station number,Year,Month,Day,Maximum temperature (Degree C),Days of accumulation of maximum temperature,Quality',
    (day) => `IDCJAC0010,086338,2026,02,${two(day)},${max(day)},1,Y`,
  ),
  `REGIAO:;S\nUF:;SC\nESTACAO:;PENCARREG\nCODIGO (WMO):;A999\nLATITUDE:;-27,60\nLONGITUDE:;-48,62\nALTITUDE:;1,80\nDATA (YYYY-MM-DD);HORA (UTC);PRECIPITACAO TOTAL, HORARIO (mm);TEMPERATURA DO AR - BULBO SECO, HORARIA (°C);\n${hours.map(({ day, hour }) => `2026-02-${two(day)};${two(hour)}:00;,1;${String(warmth(hour)).replace('.', ',')};`).join('\n')}`,
];
