import {
  growthParameters,
  type OnionType,
  onionTypes,
  type Parameter,
  typeParameters,
} from '../../packages/engine/src/plant/index.ts';
import { readRecord } from '../calibrate/fit-record.ts';

export type ParameterEntry = { name: string; type: OnionType | null; parameter: Parameter };

/** Every parameter of the plant: those shared by all types, then each type's own. */
export function parameterEntries(): ParameterEntry[] {
  return [
    ...Object.entries(growthParameters).map(([name, parameter]) => ({ name, type: null, parameter })),
    ...Object.entries(typeParameters).flatMap(([name, byType]) =>
      onionTypes.map((type) => ({ name, type, parameter: byType[type] as Parameter })),
    ),
  ];
}

/** The page docs/parameters.md, from the tables of the engine. */
export function parametersPage(): string {
  const shared = Object.entries(growthParameters).map(([name, { value, unit, low, high, origin }]) =>
    row(`\`${name}\``, unit, value, `${low}–${high}`, origin),
  );
  const byType = Object.entries(typeParameters).map(([name, parameters]) => {
    const ofTypes = onionTypes.map((type) => parameters[type] as Parameter);
    const cells = ofTypes.map(({ value, low, high }) => `${value} (${low}–${high})`);
    return row(`\`${name}\``, ofTypes[0].unit, ...cells, originsOf(ofTypes));
  });
  const atBound = parameterEntries()
    .filter(({ parameter: { value, low, high } }) => value === low || value === high)
    .map(({ name, type }) => (type === null ? `\`${name}\`` : `\`${name}\` of ${type}`));
  return [
    '# Parameters of the plant',
    '',
    "Written by `npx tsx tools/docs/parameters.ts` from `packages/engine/src/plant/parameters.ts`; don't edit it here.",
    'What each one does is said in [how it works](how-it-works.md).',
    '',
    'A fit may move a value only within its bounds. Origins: *seen* was read in the named source, *derived* is worked out from',
    'figures seen, *memory* comes from general knowledge and was not checked, *fit* was fitted here to published crops',
    '([validation](validation.md)), *common practice, no source* is what the trade says. A value whose origin is not a fit may',
    'still have been moved by one, within bounds that its origin allows.',
    '',
    '## Shared by all types',
    '',
    ...head('parameter', 'unit', 'value', 'bounds', 'origin'),
    ...shared,
    '',
    '## What makes a type',
    '',
    'Value and, in brackets, bounds.',
    '',
    ...head('parameter', 'unit', ...onionTypes, 'origin'),
    ...byType,
    '',
    '## What the fit hangs on',
    '',
    'How much the loss of its stage rises, at most, when one value moves a tenth of its bounds either way and all others stay',
    '(tools/calibrate/fit-record.json). Little means: these data hardly know it.',
    '',
    ...readRecord().stages.flatMap(({ name, knobs }) => [
      `### ${name[0].toUpperCase()}${name.slice(1)}`,
      '',
      ...head('parameter', 'start', 'fitted', 'loss rises by'),
      ...[...knobs]
        .sort((a, b) => b.sensitivity - a.sensitivity)
        .map((knob) => row(knob.name, knob.start, knob.value, knob.sensitivity.toFixed(3))),
      '',
    ]),
    '## At a bound',
    '',
    atBound.length > 0 ? `${atBound.join(', ')}.` : 'None.',
    '',
  ].join('\n');
}

function row(...cells: (string | number)[]): string {
  return `| ${cells.join(' | ')} |`;
}

function head(...names: string[]): string[] {
  return [row(...names), row(...names.map(() => '---'))];
}

/** One origin where all types share it, else each with its types. */
function originsOf(parameters: Parameter[]): string {
  const origins = [...new Set(parameters.map(({ origin }) => origin))];
  if (origins.length === 1) return origins[0];
  return origins
    .map((origin) => {
      const types = onionTypes.filter((_, i) => parameters[i].origin === origin);
      return `${types.join(', ')}: ${origin}`;
    })
    .join('; ');
}
