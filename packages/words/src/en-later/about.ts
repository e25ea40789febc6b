/** `neckfall --about`. */
export const about = {
  'about.title': 'Neckfall {version}: onion crops planned for any place on land.',
  'about.licence': 'Free software under the MIT licence. Works offline; nothing leaves this computer.',
  'about.sources': 'What it rests on',
  'about.chelsa':
    'Temperatures: fitted by us to CHELSA V1.1, 1979–2013. Karger et al. 2017, Scientific Data 4:170122. Open with citation.',
  'about.cru':
    'Rain, wet days, humidity, sunshine, wind, frost, daily range: fitted by us to CRU CL 2.0, 1961–1990. New et al. 2002, Climate Research 21:1–25. Open with citation.',
  'about.geonames': 'Towns, their elevation and time zones: GeoNames, geonames.org, licence CC BY 4.0.',
  'about.land': 'Land: Natural Earth, public domain.',
  'about.sun': 'Day length: the NOAA solar equations after Meeus, Astronomical Algorithms.',
  'about.water': 'Water need: FAO Irrigation and Drainage Paper 56, Allen et al. 1998.',
  'about.plant':
    'The plant: published trials and growth-room work, named beside each figure in docs/how-it-works.md; figures from memory are marked as such.',
  'about.caution':
    'Answers are likelihoods, not promises. Labels, local rules and licensed advice come first.',
} as const;
