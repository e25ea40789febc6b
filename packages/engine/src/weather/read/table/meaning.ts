import type { WeatherQuantity } from '../found.ts';
import { type UnitName, unitIsOf } from '../units.ts';
import type { HeaderName } from './header-name.ts';

/** What a column seems to be by its name, and how well it serves: of several the highest rank is taken. */
export type Meaning = { as: WeatherQuantity; rank: number; unit: UnitName | null };

/*
 * Words of the trade in English, German, French, Spanish, Portuguese, Italian, Dutch, Polish, Swedish, Norwegian and
 * Danish, without accents. `?` stands for
 * a letter lost to a wrong encoding.
 */
const temperature =
  /temp|tmp|thermo|t2m|airt|grader| t(?:air|a|out|ext|aussen|m|g|x|n|xk|nk|mk|avg|mean|moy|mit|med|med)? | tm(?:ax|in|oy|ed|it)| air (?:max|min) /;
const otherTemperature =
  /dew|taupunkt|rosee|ros.e |rocio|roc.o |orvalho|rugiada|dauw|feel|gefuhl|gefuehl|empfund|ressent|sensa|percepi|aparente|wet ?bulb|bulbo (?:um|hum)|feuchtk|soil| sol |boden|suelo|suolo|grond|bodem|water|wasser| eau|agua|acqua|pool|sea |meer|chill|heat|hitze|hissa|humidex|thw|thsw|gras|tgk|surface|skin|road|battery|batt|cpu|device|globe|green ?house|gewachsh|invernadero|estufa|fridge|kuhl|range|spread|differ|amplitud|ecart|depart|normal|anomal|deg(?:ree)? day|gdd|hdd|cdd|growing|variation|trend|tendenz| rate|stdev| std|flag|qual|attribut|t2mdew|t2mwet|t2m range|wind|humid|feucht|press|druck|leaf|blatt|record|vapou?r|wet |humeda|umida| time | zeit | heure | hora | ora |previous|d[aou]gg?punkt|rosy |odczuw|upplevd|kanns|opplevd|foles|foler|gleb|grunt|wody|jord|markt|vatten|vann|vand/;
const indoors =
  / in $|temp(?:erature?)? in (?!the |last |shade|screen|air|\d)|^ in |indoor|inside|innen|inter[ni]|interieur|int.rieur| int |binnen|dentro| room|zimmer|wohn|salon|living|house|basement|console| tempin| intemp|stanza|habitacion| casa |kitchen|office|attic|keller|cave |maison|wewn|inomhus|innomhus|innendors|indendors| inne | inde |inne ?temp|inde ?temp|pokoj/;
const outdoors =
  / out|outdoor|outtemp|tempout|outside|aussen|au.en|exter|ext |buiten|estern|fuera|fora |exterieur|ambient|air|luft|ext.rieur|zewn|utomhus|utendors|udendors| ute | ude |ute ?temp|ude ?temp/;
const most =
  /max|h.?.?chst|hoechst|hochste| hi | high|highest|hoogst|massim| txk? | alta |m.ximo|m.xima|temphigh|hightemp|hitemp|maks|hogst|hojest|hoyest|najwyz/;
const least =
  /min(?!ut)|tiefst|niedrigst|lowest| low| lo |laagst| tnk? | baja |m.nimo|m.nima|templow|lowtemp|lagst|lavest|najniz/;
const average =
  /mean|avg|average|mittel|moyen|medi[ao]|m.di[ao]|promedio|gemiddeld|durchschn|tmed|tmoy|tmit| tg | tmk | tm |sredni|medel|middel|snitt/;
const extraSensor =
  / ch ?\d|kanal|canal|channel|sensor|sonde|probe|extra|aux|\d f | temp\w*? ?[2-9] | t[2-9] /;

const rain =
  /rain|precip|prcp|prec |regen|niederschl|pluie|pluvi|lluvia|lluv|chuva|pioggia|neerslag| rr(?:24|r)? | rsk? | pcp | ppt |prectot|rainfall|pr.cip|tp |opad|deszcz|nederb|nedb.r|regn/;
const broadRain = /precip|prcp|prec |niederschl|neerslag|prectot|pr.cip| rr|opad|nederb|nedb.r/;
const otherRain =
  / rate|rainrate|raterain|intens|probab|chance|wahrsch|dura|dauer|uren|stunden|hours|minutes| type|form|flag|qual|attribut|rskf|storm|normal|since last|max|last rain|piezo rate|period| days|tage |jours |dias |hail|snow|schnee|neige|nieve|neve|sneeuw|convective|showers|water temp|temp|humid|status|battery|drainage|train|natezen|intensyw|typ |varaktig/;
const oneDay =
  /dail|day|today|heute|tages|taglich|t.glich|journ|jour|quotid|diari|di.ri| dia | hoy|hoje|giorn| oggi| dag| tag |vandaag|since midnight|precip total|dzien|dzis|dobow|dygn|dogn/;
const oneHour = /hour|stund|heure|horaire| hora |horari|hor.ri|orari| ora |uur|1 ?h |60 ?min|godz|timme|timm/;
const longer =
  /week|woche|semana|semaine|settiman|month|monat|mois|mensu| mes |mens|mese|maand|year|jahr|annee|ann.e|annu|anual|a.o |ano |anno|jaar|tydz|vecka|veck|miesi|manad|maned|rok |roku|roczn| ar | aar |arlig/;
const year = /year|jahr|ann|anual|a.o |ano |jaar|rok |roku|roczn| ar | aar |arlig/;
const total = /total|gesamt|summe|cumul|kumul|acumul|counter|zahler|totaal|totale|accum|suma |ackum/;
const event = /event|ereignis|evenement|evento/;

const sun =
  /solar|slr|sol ?rad|radiat|strahl|rayonn|radiac|radiaz|straling|ghi| irrad|insol|shortwave|allsky sfc sw dwn|srad| rg |fg (?:lberg|strahl)|zonnestr|promieniow|solinstr|solstral|globalstr/;
const otherSun =
  /uv|ultra|max| high| hi |dhi|dni|diffus|direct|difus|infrar|longwave|langw|terrestr| net |clear|clrsky| par |panel|yield|batter|index|theoret|potential|hours|stunden|duration|dauer|percent|flag|qual|minutes|min |instant|normal/;

/** Written in many ways, with words that mean something else by themselves. */
const ofOneDay =
  / (?:(?:in|over|for|of|within) )?(?:the )?(?:last |past |previous )?24 ?(?:hours|hour|hrs|hr|h|std|stunden|heures|horas|ore|uur) /;

/** What a column of that name holds; null for nothing of use. Columns of dates are told by what stands in them. */
export function meaningOf(name: HeaderName): Meaning | null {
  const { unit } = name;
  const words = name.words.replace(ofOneDay, ' 24h ');
  const of = unit === null ? null : unitIsOf(unit);
  if (of === null || of === 'temperature') {
    const found = temperatureMeaning(words, of !== null);
    if (found !== null) return { ...found, unit };
  }
  if ((of === null || of === 'rain') && rain.test(words)) {
    const found = rainMeaning(words, name.isRate);
    return found === null ? null : { ...found, unit };
  }
  if ((of === null || of === 'energy' || of === 'power') && sun.test(words) && !otherSun.test(words)) {
    return { as: of === 'energy' ? 'solarMJ' : 'solarW', rank: unit === null ? 1 : 2, unit };
  }
  return null;
}

function temperatureMeaning(words: string, hasUnit: boolean): { as: WeatherQuantity; rank: number } | null {
  const bare =
    /^ (?:(?:air|daily|day|tages\w*|absolut\w*) )?(?:max(?:im\w*|i)?|min(?:im\w*|i)?|high|low|hi|lo|mean|avg|average|m.xim[ao]|m.nim[ao]|massima|minima|media|mittel\w*|hochst\w*|hoechst\w*|tiefst\w*|out|outdoor|outside|aussen|air|ambient) $/;
  // degrees with a word for the highest, the lowest or outdoors need no other
  const isOfDegrees = hasUnit && (most.test(words) || least.test(words) || outdoors.test(words));
  if (!temperature.test(words) && !bare.test(words) && !isOfDegrees) return null;
  if (otherTemperature.test(words) || rain.test(words) || sun.test(words)) return null;
  if (indoors.test(words) && !/ out|outdoor|aussen|exter/.test(words)) return null;
  const isAverage = average.test(words.replace(/ tm(?:ax|in) /, ' '));
  const as = most.test(words) ? 'tempMaxC' : least.test(words) ? 'tempMinC' : 'tempC';
  let rank = 4 + (hasUnit ? 1 : 0) + (outdoors.test(words) ? 2 : 0);
  if (extraSensor.test(words)) rank -= 3;
  // a reading at one hour of the day is no mean
  if (as === 'tempC' && isAverage) rank += 1;
  if (/ \d{1,2} ?(?:am|pm|h|uhr|utc|hs) /.test(words)) rank -= 3;
  return { as, rank };
}

function rainMeaning(words: string, isRate: boolean): { as: WeatherQuantity; rank: number } | null {
  if (otherRain.test(words)) return null;
  const isHour = oneHour.test(words);
  if (isRate && !isHour) return null;
  if (event.test(words)) return null;
  const broad = broadRain.test(words) ? 1 : 0;
  // of the last 24 hours: a day's amount in a row a day, else one that overlaps the next
  if (/ 24h /.test(words)) return { as: 'rainDayMm', rank: 2 };
  if (oneDay.test(words)) return { as: 'rainDayMm', rank: 8 + broad };
  if (longer.test(words))
    return { as: 'rainSumMm', rank: year.test(words) ? 3 : /month|monat|mois|mes|maand/.test(words) ? 2 : 1 };
  if (isHour) return { as: 'rainMm', rank: 4 + broad };
  if (total.test(words)) return { as: 'rainSumMm', rank: 5 + broad };
  return { as: 'rainMm', rank: 6 + broad };
}

/** Whether a name is one of dates or times; content decides. */
const dates =
  /date|datum|when| ts |unix|moment|fecha|^ data |dato |day|jour|tag |giorno|dia |time|zeit|stamp|hora|heure| ora |uhr|tijd|uur|horodat|epoch|valid|observ|utc|gmt|lst|yyyy|yymm|aaaammjj| dt |czas|dzien| tid |tidspunkt|tidpunkt|klokke|klock/;
export function isDateName({ words }: HeaderName): boolean {
  return dates.test(words);
}

/** Part of a date or time that a column of plain numbers holds, by its name. */
export function partOfDate({
  words,
}: HeaderName): 'year' | 'month' | 'day' | 'dayOfYear' | 'hour' | 'minute' | null {
  if (/^ (?:year|yr|yyyy|jahr|annee|ann.e|an|ano|a.o|anno|jaar|iyear|rok|ar|aar) $/.test(words))
    return 'year';
  if (/^ (?:month|mon|mo|mm|monat|mois|mes|m.s|mese|maand|imonth|miesiac|manad|maned) $/.test(words))
    return 'month';
  if (
    /^ (?:doy|day ?of ?year|jday|julian(?: day)?|yday|jul|jour julien|tag des jahres|dia juliano) $/.test(
      words,
    )
  ) {
    return 'dayOfYear';
  }
  if (/^ (?:day|dy|dd|dom|day of month|tag|jour|dia|d.a|giorno|dag|dzien|dygn|dogn) $/.test(words))
    return 'day';
  if (
    /^ (?:hour|hr|hh|h|hours|stunde|std|heure|hora(?: utc| medicao)?|ora|uur|time|uhrzeit|zeit|tijd|heures|hora utc|hour utc|hhmm|godzina|timme|tid|tid utc|klockslag|klokkeslett) $/.test(
      words,
    )
  ) {
    return 'hour';
  }
  return /^ (?:minute|minutes|min|mins|mi|minuto|minuten) $/.test(words) ? 'minute' : null;
}
