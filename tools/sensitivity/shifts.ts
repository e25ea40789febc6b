import {
  type CultivarTraits,
  openSite,
  type Plan,
  type PlantValues,
  plantValuesOf,
  type Site,
  warmed,
} from '../../packages/engine/src/index.ts';

/** A crop at a place. */
export type Case = { site: Site; plan: Plan };

/** One thing made otherwise, by a stated step. */
export type Shift = { words: string; apply: (usual: Case) => Case };

/** A cause with its steps: `more` is warmer, longer days needed, later, denser, slower, or without watering. */
export type Factor = {
  /** Inside a sentence. */
  name: string;
  /** With its step, at the head of a row. */
  label: string;
  less: Shift | null;
  more: Shift;
};

const noTraits: CultivarTraits = {
  criticalPhotoperiodH: null,
  ripeningFactor: null,
  boltingFactor: null,
  dryMatterShare: null,
};

/** Size of the steps: the errors that the model's own draws have, and what a grower may easily do otherwise. */
export const factors: readonly Factor[] = [
  {
    name: 'temperature',
    label: 'Temperature, ±1 °C',
    less: { words: '1 °C cooler', apply: warmer(-1) },
    more: { words: '1 °C warmer', apply: warmer(1) },
  },
  {
    name: 'the day length needed',
    label: 'Day length needed, ±0.3 h',
    less: { words: 'bulbs on 0.3 h less of day', apply: needing(-0.3) },
    more: { words: 'bulbs on 0.3 h more of day', apply: needing(0.3) },
  },
  {
    name: 'the day of the start',
    label: 'Start, ±10 days',
    less: { words: 'started 10 days earlier', apply: startedLater(-10) },
    more: { words: 'started 10 days later', apply: startedLater(10) },
  },
  {
    name: 'how dense plants stand',
    label: 'Density, ÷2, ×2',
    less: { words: 'half the plants', apply: denser(0.5) },
    more: { words: 'twice the plants', apply: denser(2) },
  },
  {
    name: 'watering',
    label: 'No watering',
    less: null,
    more: {
      words: 'on rain alone',
      apply: ({ site, plan }) => ({ site, plan: { ...plan, water: 'rain' } }),
    },
  },
  {
    name: 'how fast leaves come',
    label: 'Leaf pace, ±8 %',
    less: { words: 'leaves 8 % faster', apply: slowerLeaves(0.92) },
    more: { words: 'leaves 8 % slower', apply: slowerLeaves(1.08) },
  },
  {
    name: 'how fast bulbs ripen',
    label: 'Ripening, ±6 %',
    less: { words: 'ripening 6 % faster', apply: slowerRipening(0.94) },
    more: { words: 'ripening 6 % slower', apply: slowerRipening(1.06) },
  },
];

/** The same place reopened: the same years of weather and days of the year. */
function reopened(site: Site, climate: Site['climate'], values: PlantValues): Site {
  const { years, seed, dayTable } = site;
  return { ...openSite({ climate, years, seed, values }), dayTable };
}

function warmer(byC: number): Shift['apply'] {
  return ({ site, plan }) => ({ site: reopened(site, warmed(site.climate, byC), site.values), plan });
}

function needing(moreH: number): Shift['apply'] {
  return ({ site, plan }) => {
    const { criticalPhotoperiodH } = plantValuesOf(site.values, plan);
    const traits = { ...noTraits, ...plan.traits, criticalPhotoperiodH: criticalPhotoperiodH + moreH };
    return { site, plan: { ...plan, traits } };
  };
}

function startedLater(days: number): Shift['apply'] {
  return ({ site, plan }) => ({ site, plan: { ...plan, startDay: plan.startDay + days } });
}

function denser(times: number): Shift['apply'] {
  return ({ site, plan }) => ({ site, plan: { ...plan, densityPerM2: plan.densityPerM2 * times } });
}

function slowerLeaves(times: number): Shift['apply'] {
  return ({ site, plan }) => {
    const { growth, types } = site.values;
    const values = { growth: { ...growth, phyllochron: growth.phyllochron * times }, types };
    return { site: reopened(site, site.climate, values), plan };
  };
}

function slowerRipening(times: number): Shift['apply'] {
  return ({ site, plan }) => {
    const ripeningFactor = (plan.traits?.ripeningFactor ?? 1) * times;
    return { site, plan: { ...plan, traits: { ...noTraits, ...plan.traits, ripeningFactor } } };
  };
}
