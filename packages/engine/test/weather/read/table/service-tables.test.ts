import { describe, expect, it } from 'vitest';
import { daysRead, foundIn, hours, two } from './days-read.ts';

const degrees = (hour: number, low: number, high: number) =>
  hour === 5 ? low : hour === 15 ? high : (low + high) / 2;

describe('tables of services', () => {
  it('of GHCN-Daily, a line a value: the archive by year, in tenths, with flags of quality', () => {
    const text = [
      'UKE00105001,20240301,TMAX,105,,,E,',
      'UKE00105001,20240301,TMIN,-12,,,E,',
      'UKE00105001,20240301,PRCP,34,,,E,0900',
      'UKE00105001,20240301,SNWD,0,,,E,',
      'UKE00105002,20240301,TMAX,300,,,E,',
      'UKE00105001,20240302,TMAX,995,,X,E,',
      'UKE00105001,20240302,TMIN,-9999,,,E,',
      'UKE00105001,20240302,MDPR,500,,,E,',
      'UKE00105001,20240303,PRCP,0,T,,E,',
    ].join('\n');
    const found = foundIn(text);
    expect(daysRead(text)).toEqual(['2024-03-01 -1.2/10.5/3.4', '2024-03-02 -/-/-', '2024-03-03 -/-/0']);
    expect(found).toMatchObject({
      format: 'ghcn-daily-table',
      otherStations: ['UKE00105002'],
      unused: ['SNWD'],
      flagged: [
        { field: 'tempMaxC', value: 99.5, why: 'quality-flag', leftOut: true },
        { field: 'rainMm', value: 50, why: 'accumulated', leftOut: true },
      ],
    });
  });

  it('of GHCN-Daily, a line a day: tenths with attributes', () => {
    const text = [
      '"STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","PRCP","PRCP_ATTRIBUTES","SNWD","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"',
      '"UKE00105001","2024-07-01","52.1","-3.1","120.0","PENCARREG, UK","   34",",,E","    0","  216",",,E","  101",",,E"',
      '"UKE00105001","2024-07-02","52.1","-3.1","120.0","PENCARREG, UK","    0","T,,E","    0","  305",",I,E","  112",",,E"',
    ].join('\n');
    expect(daysRead(text)).toEqual(['2024-07-01 10.1/21.6/3.4', '2024-07-02 11.2/-/0']);
    expect(foundIn(text)).toMatchObject({
      format: 'ghcn-daily-table',
      station: { name: 'PENCARREG, UK', latitudeDeg: 52.1, longitudeDeg: -3.1, elevationM: 120 },
      flagged: [{ field: 'tempMaxC', value: 30.5, why: 'quality-flag', leftOut: true }],
    });
  });

  it.each([
    ['°F and inches', '68","41","0.50', '2024-07-01 5/20/12.7'],
    ['°C and mm', '20.0","5.0","12.7', '2024-07-01 5/20/12.7'],
    ['tenths', '200","50","127', '2024-07-01 5/20/12.7'],
  ])('of NCEI, that never says its units: %s', (_, values, day) => {
    const text = `"STATION","NAME","DATE","TMAX","TMIN","PRCP"\n"USW0001","PENCARREG","2024-07-01","${values}"`;
    expect(daysRead(text)).toEqual([day]);
  });

  it('of NCEI, as it was: a column of quality behind each value, all named alike', () => {
    const behind = 'Measurement Flag,Quality Flag,Source Flag,Time of Observation';
    const text = `STATION,DATE,PRCP,${behind},TMAX,${behind},TMIN,${behind}\nGHCND:USW0001,20150101,24, , ,W,2400,156, , ,W,2400,-21, ,I,W,2400\nGHCND:USW0001,20150102,0,T, ,W,2400,-9999, , , , ,11, , ,W,2400`;
    expect(daysRead(text)).toEqual(['2015-01-01 -/15.6/2.4', '2015-01-02 1.1/-/0']);
    expect(foundIn(text).flagged).toMatchObject([
      { field: 'tempMinC', value: -2.1, why: 'quality-flag', leftOut: true },
    ]);
  });

  it('of hours in UTC below a preamble that has dates and a place itself', () => {
    const text = `Stationsnamn;Stationsnummer\nTrädgården;1\n\nTidsperiod (fr.o.m);Tidsperiod (t.o.m);Höjd (meter över havet);Latitud (decimalgrader);Longitud (decimalgrader)\n1945-01-01 00:00:00;2024-01-02 23:00:00;50.0;55.6930;15.2252\n\nDatum;Tid (UTC);Lufttemperatur;Kvalitet;;\n${hours((hour) => `2024-01-01;${two(hour)}:00:00;${degrees(hour, -4, 2)};G;;`)}`;
    // an hour ahead of UTC by its longitude: 23 of its hours are of the day
    expect(daysRead(text)).toEqual(['2024-01-01 -4/2/-', '2024-01-02 -/-/-']);
    expect(foundIn(text)).toMatchObject({
      station: { latitudeDeg: 55.693, longitudeDeg: 15.2252 },
      utcOffset: { offsetH: 1, from: 'longitude' },
    });
  });

  it('of GSOD, in °F and inches with nines for nothing', () => {
    const head =
      '"STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","TEMP","TEMP_ATTRIBUTES","DEWP","DEWP_ATTRIBUTES","SLP","SLP_ATTRIBUTES","STP","STP_ATTRIBUTES","VISIB","VISIB_ATTRIBUTES","WDSP","WDSP_ATTRIBUTES","MXSPD","GUST","MAX","MAX_ATTRIBUTES","MIN","MIN_ATTRIBUTES","PRCP","PRCP_ATTRIBUTES","SNDP","FRSHTT"';
    const row = (date: string, max: string, min: string, rain: string, flag: string) =>
      `"03772099999","${date}","51.478","-0.461","25.3","PENCARREG, UK","  45.5","24","  40.0","24","1015.1","24","999.9"," 0","  9.9","24","  5.0","24","  9.9","999.9","${max}"," ","${min}","*","${rain}","${flag}","999.9","010000"`;
    const text = [
      head,
      row('2024-01-01', '  50.0', '  41.0', ' 0.10', 'G'),
      row('2024-01-02', '9999.9', '  32.0', '99.99', ' '),
      row('2024-01-03', '  50.0', '  32.0', ' 0.00', 'I'),
    ].join('\n');
    expect(daysRead(text)).toEqual(['2024-01-01 5/10/2.54', '2024-01-02 0/-/-', '2024-01-03 0/10/0']);
    expect(foundIn(text)).toMatchObject({
      format: 'gsod-table',
      flagged: [{ field: 'rainMm', value: 0, why: 'quality-flag', leftOut: false }],
    });
  });

  const power = (columns: string, rows: string[], unit = 'MJ/m^2/day') =>
    `-BEGIN HEADER-
NASA/POWER CERES/MERRA2 Native Resolution Daily Data
Dates (month/day/year): 01/01/2024 through 01/02/2024 in LST
Location: Latitude  52.08   Longitude -3.13
Elevation from MERRA-2: Average for 0.5 x 0.625 degree lat/lon region = 231.34 meters
The value for missing source data that cannot be computed or is outside of the sources availability range: -999
Parameter(s):
T2M_MAX               MERRA-2 Temperature at 2 Meters Maximum (C)
T2M_MIN               MERRA-2 Temperature at 2 Meters Minimum (C)
TS                    MERRA-2 Earth Skin Temperature (C)
PRECTOTCORR           MERRA-2 Precipitation Corrected (mm/day)
ALLSKY_SFC_SW_DWN     CERES SYN1deg All Sky Surface Shortwave Downward Irradiance (${unit})
-END HEADER-
${columns},T2M_MAX,T2M_MIN,TS,PRECTOTCORR,ALLSKY_SFC_SW_DWN
${rows.join('\n')}`;
  it('of NASA POWER, by month and day or by day of year, in MJ or kWh', () => {
    const days = ['2024-01-01 2.5/8.1/4.4/3.6', '2024-01-02 1/7/-'];
    const text = power('YEAR,MO,DY', ['2024,1,1,8.1,2.5,3,4.4,3.6', '2024,1,2,7,1,2,-999,-999']);
    expect(daysRead(text)).toEqual(days);
    expect(foundIn(text)).toMatchObject({
      format: 'nasa-power-table',
      timeBase: 'local-standard',
      station: { latitudeDeg: 52.08, longitudeDeg: -3.13, elevationM: 231.34 },
    });
    const byDay = ['2024,1,8.1,2.5,3,4.4,1.0', '2024,2,7,1,2,-999,-999'];
    expect(daysRead(power('YEAR,DOY', byDay, 'kW-hr/m^2/day'))).toEqual(days);
  });

  it('of NASA POWER, hours', () => {
    const text = `YEAR,MO,DY,HR,T2M,PRECTOTCORR\n${hours((hour) => `2024,1,1,${hour},${degrees(hour, 2, 8)},0.1`)}`;
    expect(daysRead(text)).toEqual(['2024-01-01 2/8/2.3']);
  });

  const openMeteo = (offset: number, ...blocks: string[]) =>
    [
      `latitude,longitude,elevation,utc_offset_seconds,timezone,timezone_abbreviation\n52.08,-3.13,120.0,${offset},GMT,GMT`,
      ...blocks,
    ].join('\n\n');
  const hourly = `time,temperature_2m (°F),precipitation (inch),shortwave_radiation (W/m²)\n${[1, 2]
    .map((date) =>
      hours(
        (hour) =>
          `2025-06-0${date}T${two(hour)}:00,${degrees(hour, 50, 68)},${hour === 4 ? 0.1 : 0},${hour === 12 ? 500 : 0}`,
      ),
    )
    .join('\n')}`;
  it('of Open-Meteo, hours as printed, or moved to the place that is asked for', () => {
    const text = openMeteo(0, hourly);
    expect(daysRead(text)).toEqual(['2025-06-01 10/20/2.54/1.8', '2025-06-02 10/20/2.54/1.8']);
    expect(foundIn(text)).toMatchObject({ format: 'open-meteo-table', timeBase: 'utc' });
    // ten hours ahead the warmest hour of the first day is that of the next
    expect(daysRead(text, {}, 10)).toEqual([
      // its sun is all there, from dark to dark
      '2025-06-01 -/-/-/1.8',
      '2025-06-02 10/20/2.54/1.8',
      '2025-06-03 -/-/-',
    ]);
  });

  it('of Open-Meteo, days before hours', () => {
    const daily =
      'time,temperature_2m_max (°C),temperature_2m_min (°C),temperature_2m_mean (°C),precipitation_sum (mm),rain_sum (mm)\n2025-06-01,21.5,9.5,15,3.1,3\n2025-06-02,22.5,10.5,16,0,0';
    const days = ['2025-06-01 9.5/21.5/3.1/1.8', '2025-06-02 10.5/22.5/0/1.8'];
    expect(daysRead(openMeteo(3600, hourly, daily))).toEqual(days);
    expect(daysRead(daily)).toEqual(days.map((day) => day.replace('/1.8', '')));
  });

  it('of Open-Meteo, in seconds since 1970, at the midnights of the file', () => {
    // 2025-05-31T22:00Z, midnight two hours ahead
    const daily =
      'time,temperature_2m_max (°C),temperature_2m_min (°C)\n1748728800,21.5,9.5\n1748815200,22.5,10.5';
    expect(daysRead(openMeteo(7200, daily))).toEqual(['2025-06-01 9.5/21.5/-', '2025-06-02 10.5/22.5/-']);
  });

  it('of DWD: days, hours in UTC and ten minutes', () => {
    const head = 'STATIONS_ID;MESS_DATUM;QN_3;  FX;QN_4; RSK;RSKF; TMK; UPM; TXK; TNK; TGK;eor';
    const text = `${head}\r\n        430;20240301;   10;  10.3;    3;   1.1;   6;   5.1;   90.42;   9.0;   1.6;   0.6;eor\r\n        430;20240302;   10;  -999;    3;  -999;-999;   5.1;   90.42;   8.0;-999;-999;eor\r\n`;
    expect(daysRead(text)).toEqual(['2024-03-01 1.6/9/1.1', '2024-03-02 -/8/-']);
    const byHour = `STATIONS_ID;MESS_DATUM;QN_9;TT_TU;RF_TU;eor\n${[1, 2].map((date) => hours((hour) => `  430;2024030${date}${two(hour)};    3;  ${degrees(hour, 2, 8)};  80.0;eor`)).join('\n')}`;
    expect(daysRead(byHour, {}, 1)).toEqual(['2024-03-01 2/8/-', '2024-03-02 2/8/-', '2024-03-03 -/-/-']);
    expect(foundIn(byHour, {}, 1).timeBase).toBe('utc');
    const tens = `STATIONS_ID;MESS_DATUM;  QN;PP_10;TT_10;TM5_10;RF_10;TD_10;eor\n${hours((hour) => [0, 10, 20, 30, 40, 50].map((minute) => `430;20240301${two(hour)}${two(minute)};3;-999;${degrees(hour, 2, 8)};30;80;-20;eor`).join('\n'))}`;
    expect(daysRead(tens)).toEqual(['2024-03-01 2/8/-']);
  });

  it('of Canada: days with a preamble of old, in French, and hours of standard time', () => {
    const old = `"Station Name","PENCARREG"\n"Province","ONTARIO"\n"Latitude","43.67"\n"Longitude","-79.40"\n"Elevation","112.50"\n"Climate Identifier","6158355"\n"WMO Identifier",""\n\n"Legend"\n"E","Estimated"\n"M","Missing"\n\n"Date/Time","Year","Month","Day","Data Quality","Max Temp (°C)","Max Temp Flag","Min Temp (°C)","Min Temp Flag","Mean Temp (°C)","Mean Temp Flag","Heat Deg Days (°C)","Heat Deg Days Flag","Total Rain (mm)","Total Rain Flag","Total Precip (mm)","Total Precip Flag"\n"2015-01-01","2015","01","01","","-0.9","","-6.9","E","-3.9","","21.9","","","M","0.0","T"\n"2015-01-02","2015","01","02","","","M","-4.0","","-2.3","","20.3","","","M","12.3",""`;
    expect(daysRead(old)).toEqual(['2015-01-01 -6.9/-0.9/0', '2015-01-02 -4/-/12.3']);
    expect(foundIn(old)).toMatchObject({
      format: 'environment-canada-daily',
      station: { name: 'PENCARREG', latitudeDeg: 43.67, longitudeDeg: -79.4, elevationM: 112.5 },
      flagged: [{ field: 'tempMinC', value: -6.9, why: 'quality-flag', leftOut: false }],
    });
    const french = `"Longitude (x)","Latitude (y)","Nom de la Station","ID climatologique","Date/Heure","Année","Mois","Jour","Qualité des données","Temp max.(°C)","Temp max. Indicateur","Temp min.(°C)","Temp min. Indicateur","Temp moy.(°C)","Temp moy. Indicateur","DJC (°C)","DJC Indicateur","Pluie tot. (mm)","Pluie tot. Indicateur","Neige tot. (cm)","Neige tot. Indicateur","Précip. tot. (mm)","Précip. tot. Indicateur"\n"-73,75","45,47","PENCARREG","702S006","2023-05-01","2023","05","01","","12,1","","4,2","","8,1","","9,9","","3,0","","0,0","","3,4",""`;
    expect(daysRead(french)).toEqual(['2023-05-01 4.2/12.1/3.4']);
    const byHour = `"Longitude (x)","Latitude (y)","Station Name","Climate ID","Date/Time (LST)","Year","Month","Day","Time (LST)","Flag","Temp (°C)","Temp Flag","Dew Point Temp (°C)","Dew Point Temp Flag","Rel Hum (%)","Rel Hum Flag","Precip. Amount (mm)","Precip. Amount Flag","Wind Chill"\n${hours((hour) => `"-79.40","43.67","TORONTO CITY","6158355","2023-05-01 ${two(hour)}:00","2023","05","01","${two(hour)}:00","","${degrees(hour, 4, 12)}","","1.0","","70","","0.1","",""`)}`;
    expect(daysRead(byHour, {}, -8)).toEqual(['2023-05-01 4/12/2.3']);
  });

  it('of Australia: rain of several days is told and stands', () => {
    const text =
      'Product code,Bureau of Meteorology station number,Year,Month,Day,Rainfall amount (millimetres),Period over which rainfall was measured (days),Quality\nIDCJAC0009,086338,2024,01,01,,,\nIDCJAC0009,086338,2024,01,02,,,\nIDCJAC0009,086338,2024,01,03,45.2,3,Y\nIDCJAC0009,086338,2024,01,04,0.4,1,N';
    expect(daysRead(text)).toEqual([
      '2024-01-01 -/-/-',
      '2024-01-02 -/-/-',
      '2024-01-03 -/-/45.2',
      '2024-01-04 -/-/0.4',
    ]);
    expect(foundIn(text)).toMatchObject({
      format: 'bom-daily',
      flagged: [{ field: 'rainMm', value: 45.2, why: 'accumulated', leftOut: false }],
    });
    const sun =
      'Product code,Bureau of Meteorology station number,Year,Month,Day,Daily global solar exposure (MJ/m*m)\nIDCJAC0016,086338,2024,01,01,28.4';
    expect(daysRead(sun)).toEqual(['2024-01-01 -/-/-/28.4']);
  });

  it('of Brazil: hours in UTC at the offset of the longitude, also in the newer names', () => {
    const rows = (stamp: (date: number, hour: number) => string) =>
      [1, 2]
        .map((date) =>
          hours(
            (hour) =>
              `${stamp(date, hour)};${hour === 3 ? '1,2' : ',0'};-9999;${String(degrees(hour, 20.5, 30.5)).replace('.', ',')};35,1;12,2;`,
          ),
        )
        .join('\n');
    const columns =
      'PRECIPITA\uFFFD\uFFFDO TOTAL, HOR\uFFFDRIO (mm);RADIACAO GLOBAL (Kj/m\uFFFD);TEMPERATURA DO AR - BULBO SECO, HORARIA (\uFFFDC);TEMPERATURA M\uFFFDXIMA NA HORA ANT. (AUT) (\uFFFDC);TEMPERATURA DO PONTO DE ORVALHO (\uFFFDC);';
    const meta =
      'REGIAO:;S\nUF:;SC\nESTACAO:;PENCARREG\nCODIGO (WMO):;A806\nLATITUDE:;-27,6\nLONGITUDE:;-48,6\nALTITUDE:;1,8\n';
    // what is stamped 3:00 fell before midnight
    const days = ['2024-01-01 20.5/30.5/1.2', '2024-01-02 20.5/30.5/0'];
    const older = `${meta}DATA (YYYY-MM-DD);HORA (UTC);${columns}\n${rows((date, hour) => `2024-01-0${date};${two(hour)}:00`)}`;
    // of the first day 21 hours are left, of the day before three
    expect(daysRead(older)).toEqual(['2023-12-31 -/-/-', ...days]);
    expect(foundIn(older)).toMatchObject({
      format: 'inmet-hourly',
      timeBase: 'utc',
      utcOffset: { offsetH: -3, from: 'longitude' },
      station: { name: 'PENCARREG' },
    });
    const newer = `${meta}Data;Hora UTC;${columns}\n${rows((date, hour) => `2024/01/0${date};${two(hour)}00 UTC`)}`;
    expect(daysRead(newer)).toEqual(['2023-12-31 -/-/-', ...days]);
  });
});
