/** The About page of the app. */
export const appAbout = {
  'app.about.what': 'What this is',
  'app.about.what.text':
    'Neckfall helps people who grow bulb onions in gardens to choose the type, the start and the day. The neck of an onion softens and its top falls when it has finished; a good crop is steered toward that day from the sowing on.',
  'app.about.privacy': 'Privacy',
  'app.about.privacy.text':
    'Nothing leaves this device. Everything is worked out here; there is no account, no tracking and no server of ours. The place stands in the address after the # sign, which browsers do not send.',
  'app.about.forget': 'Forget the place and settings kept in this browser',
  'app.about.limits': 'Limits',
  'app.about.limits.text':
    'Answers are likelihoods from a model of the plant and a model of the climate. Each answer says how far apart its own dates and sizes lie; what no answer knows is pest, hail and neglect. Land from 60° S to 72° N is covered, within {distance} of a climate point.',
  'app.about.sources': 'Sources and licences',
  'app.about.libraries': 'Licences of the data and of the libraries inside',
  'app.about.defer': 'Labels, local rules and licensed advice come first.',
  'app.about.version': 'Version {version}, free software under the MIT licence.',
} as const;
