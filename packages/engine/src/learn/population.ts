import { evenNormals, type RandomSource } from '../math/index.ts';
import { densityAt, drawFrom, fitCloud, type NormalCloud, standardCloud } from './normal-cloud.ts';
import { effectiveNumber, tempered, weightsOf } from './weights.ts';

/** A draw in standard deviations from what was believed, the weather year it met, and how well it fits what was seen. */
export type Member = { z: Float64Array; weatherYear: number; logLikelihood: number };

export type Population = { members: Member[]; weights: Float64Array; effective: number };

export const roundSize = 300;
const mostRounds = 5;
/** With so many effective draws no further round is needed. */
const enoughEffective = 150;
/**
 * The fewest effective draws that tell the width of anything: laws are fitted to so many, and answers are worth so many.
 * What no draw comes near to, such as a count of the wrong bed, is believed the less.
 */
const leastEffective = 30;
/** Of each later round this part comes from the first law again, so that nothing is left out. */
const priorPart = 0.1;
/** The narrowest that a law gets, in standard deviations of the first. */
const leastSd = 0.05;

/**
 * Draws weighed by what was seen, without collapse: population Monte Carlo (Cappé et al. 2004, Journal of Computational
 * and Graphical Statistics 13:907–929) with every round weighed against the mixture of all (Cornuet et al. 2012,
 * Scandinavian Journal of Statistics 39:798–812). The first round is spread evenly over what was believed.
 *
 * @param tell log likelihood of a season of draw `z` in a weather year
 */
export function weighPopulation(
  dimensions: number,
  weatherYears: number,
  random: RandomSource,
  tell: (z: Float64Array, weatherYear: number, isFirst: boolean) => number,
): Population {
  const prior = standardCloud(dimensions);
  const members: Member[] = [];
  // density of each member summed over the laws of all rounds
  const proposed: number[] = [];
  const laws: NormalCloud[] = [];
  const densityOf = (law: NormalCloud, z: Float64Array) =>
    law === prior
      ? densityAt(prior, z)
      : priorPart * densityAt(prior, z) + (1 - priorPart) * densityAt(law, z);
  const add = (law: NormalCloud, points: readonly Float64Array[]) => {
    members.forEach(({ z }, at) => {
      proposed[at] += densityOf(law, z);
    });
    laws.push(law);
    points.forEach((z, at) => {
      const weatherYear = at % weatherYears;
      const isFirst = laws.length === 1;
      members.push({ z, weatherYear, logLikelihood: tell(z, weatherYear, isFirst) });
      proposed.push(laws.reduce((sum, of) => sum + densityOf(of, z), 0));
    });
  };
  const weigh = () =>
    weightsOf(
      members.map(({ z, logLikelihood }, at) => logLikelihood + Math.log(densityAt(prior, z) / proposed[at])),
    );
  add(prior, evenCloud(dimensions, random));
  let weights = weigh();
  for (let round = 1; round < mostRounds && effectiveNumber(weights) < enoughEffective; round++) {
    const law = fitCloud(
      members.map(({ z }) => z),
      tempered(weights, leastEffective),
      leastSd,
    );
    add(
      law,
      Array.from({ length: roundSize }, () => drawFrom(random.uniform() < priorPart ? prior : law, random)),
    );
    weights = weigh();
  }
  const believed = tempered(weights, leastEffective);
  return { members, weights: believed, effective: effectiveNumber(believed) };
}

function evenCloud(dimensions: number, random: RandomSource): Float64Array[] {
  const columns = Array.from({ length: dimensions }, () => evenNormals(roundSize, random));
  return Array.from({ length: roundSize }, (_, at) => Float64Array.from(columns, (column) => column[at]));
}
