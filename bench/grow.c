/*
 * The daily loop of packages/engine/src/season/grow.ts in C, with the same equations and names: the yardstick of
 * bench/grow-in-c.ts, which holds both to each other. No part of the product, and built only while the bench runs.
 *
 * Reads plans and their seasons from a file of doubles, grows all of them `repeats` times and writes as doubles the
 * processor time a time, in µs, then what each season came to.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

enum { LEAVES = 42, IDLE = 28, COLUMNS = 13 };

typedef struct {
  const double *tempMeanC, *tempMinC, *rainMm, *soilMeanC, *wetness, *lifeTT, *leafTT, *growthTT, *growthLight;
  const double *cold, *ripen, *warmth, *referenceEt;
} Air;

typedef struct {
  double youngG, standPerM2, densityHaste, lightShare, followsWater, covered, coverShelterC, watered;
  double availableMmPerM, readilyShare, lastDay;
  double firstLeavesFactor, leafLifeTT, shootPerLeafArea, growthRate, radiationUseGMJ, frostHeaveLoss, extinction;
  double bulbingRate, bulbingLossPerDay, boltingSizeSpan, photoperiodRampH;
  double boltingSizeG, minimumLeaves, ripeningPhotoperiodSlope;
  double areaTotals[LEAVES];
} Crop;

typedef struct {
  double leaves, green, dead, lifeTT, age, rootingTT, shootG, bulbG, bulbing, hasBulb, ripening, turnBack, reverted;
  double coldDays, storeColdDays, coldPace, recentC, aliveShare, liftedShare, snowMm, depletionMm, thirstyDays;
  double leafBorn[LEAVES], recentCold[IDLE];
} Plant;

typedef struct {
  double at, photoAt, beddedOn, phyllochron, criticalH, competenceTT, ripeningTT;
  Plant plant;
} Season;

typedef struct { double day, onsetOn, leaves, green, shootG, bulbG, ripening, coldDays, aliveShare, liftedShare, thirstyDays; } Result;

static inline double least(double a, double b) { return a < b ? a : b; }
static inline double most(double a, double b) { return a > b ? a : b; }
static inline double ramp(double x, double zero, double full) {
  const double share = (x - zero) / (full - zero);
  return share < 0 ? 0 : share > 1 ? 1 : share;
}
static inline double youngLeafArea(double shootG) { return 0.5 * exp(0.973 * log(shootG / 0.00227)); }
static inline double areaUpTo(const double *totals, double leaves) {
  const int whole = (int)leaves;
  return totals[whole] + (totals[whole + 1] - totals[whole]) * (leaves - whole);
}
static double intercept[8 * 512 + 2];
static inline double interceptedShare(double depth) {
  if (depth >= 8) return 1;
  const double place = depth * 512;
  const int below = (int)place;
  return intercept[below] + (intercept[below + 1] - intercept[below]) * (place - below);
}
static inline double killingTempC(double leaves, double hardening) {
  const double byLeaves = leaves < 2 ? -4 - leaves : -6 - 2.5 * least(1, leaves - 2);
  return byLeaves - 2.5 * hardening * ramp(leaves, 1, 3);
}
static inline double heavedShare(double nightC, double meanC, double wetness, double shootG, double loss) {
  if (nightC > -1 || meanC < 0 || shootG > 0.15) return 0;
  return loss * ramp(wetness, 0.25, 0.45) * ramp(shootG, 0.15, 0.06);
}
static inline double wetSpellFactor(double wetness, double meanC) {
  if (wetness <= 0.45 || meanC <= 14) return 1;
  return 1 - 0.35 * ramp(wetness, 0.45, 0.9) * ramp(meanC, 14, 20);
}
static inline double cropCoefficient(double cover, double ripening) {
  const double byCover = cover <= 0.1 ? 0.7 : cover >= 0.8 ? 1.05 : 0.7 + (1.05 - 0.7) / (0.8 - 0.1) * (cover - 0.1);
  if (ripening <= 0.3) return byCover;
  return least(1.05 + (0.75 - 1.05) * ((ripening - 0.3) / (1 - 0.3)), byCover);
}
static inline double depletionShare(double readilyShare, double cropEt) {
  const double share = readilyShare + 0.04 * (5 - cropEt);
  return share < 0.1 ? 0.1 : share > 0.8 ? 0.8 : share;
}
static inline double waterStress(double depletionMm, double available, double readilyShare) {
  if (depletionMm <= readilyShare * available) return 1;
  return depletionMm >= available ? 0 : (available - depletionMm) / ((1 - readilyShare) * available);
}
static inline double ripeningByDays(double P, double criticalH, double slope) {
  const double beyond = P - criticalH - 2;
  return beyond <= 0 ? 1 : 1 + slope * least(beyond, 6);
}

static int grow(Plant *plant, const Crop *c, const Season *s, const Air *open, const Air *covered, const double *photoperiodH, Result *out) {
  double leaves = plant->leaves, green = plant->green, lifeTT = plant->lifeTT, age = plant->age;
  double rootingTT = plant->rootingTT, shootG = plant->shootG, bulbG = plant->bulbG, bulbing = plant->bulbing;
  double ripening = plant->ripening, coldDays = plant->coldDays, recentC = plant->recentC;
  double aliveShare = plant->aliveShare, liftedShare = plant->liftedShare, snowMm = plant->snowMm;
  double depletionMm = plant->depletionMm;
  int thirstyDays = (int)plant->thirstyDays, turnBack = (int)plant->turnBack, dead = (int)plant->dead;
  int hasBulb = plant->hasBulb != 0, made = (int)leaves;
  const int at = (int)s->at, photoAt = (int)s->photoAt, until = (int)c->lastDay, isEverCovered = c->covered != 0;
  const int coverEnds = (int)s->beddedOn + 42, stalksUntil = until - 120;
  const int followsWater = c->followsWater != 0, watered = c->watered != 0;
  const double criticalH = s->criticalH, storeColdDays = plant->storeColdDays;
  int day = (int)s->beddedOn;
  for (; day < until; day++) {
    const int i = at + day;
    const double outsideMinC = open->tempMinC[i];
    const int isCovered = isEverCovered && (day < coverEnds || outsideMinC < 0);
    const Air *air = isCovered ? covered : open;
    const double meanC = air->tempMeanC[i], P = photoperiodH[photoAt + day];

    /* winter */
    if (outsideMinC < 0 || snowMm > 0) {
      const double sheltered =
          (outsideMinC + open->soilMeanC[i]) / 2 + (isCovered ? c->coverShelterC : 0) + 10 * ramp(snowMm, 10, 80);
      if (sheltered < -4) {
        const double killing = killingTempC(leaves, ramp(recentC, 14, 5));
        aliveShare *= 1 - ramp(sheltered, killing, killing - 4);
        if (aliveShare < 0.02) {
          aliveShare = 0;
          break;
        }
      }
      if (snowMm == 0 && !isCovered) {
        const double lost = aliveShare * heavedShare(outsideMinC, meanC, open->wetness[i], shootG, c->frostHeaveLoss);
        aliveShare -= lost;
        liftedShare += lost;
      }
      snowMm = open->tempMeanC[i] < 0 ? snowMm + open->rainMm[i] : most(0, snowMm - 3 * open->tempMeanC[i]);
    }
    recentC += (meanC - recentC) / 14;

    /* leaves */
    lifeTT += air->lifeTT[i];
    const int isRooted = rootingTT <= 0;
    if (isRooted) {
      if (ripening < 0.25 && leaves < 39) {
        leaves += air->leafTT[i] / ((leaves < 3 ? c->firstLeavesFactor : 1) * s->phyllochron) * (hasBulb ? 0.6 : 1);
        if (leaves > 39) leaves = 39;
        while (made + 1 <= leaves) plant->leafBorn[++made] = lifeTT;
      }
      age += air->leafTT[i];
    } else
      rootingTT -= air->leafTT[i];
    while (dead < made && lifeTT - plant->leafBorn[dead + 1] > c->leafLifeTT) dead++;
    green = least(leaves - dead, 9);

    /* canopy */
    const double standing = areaUpTo(c->areaTotals, leaves) - areaUpTo(c->areaTotals, leaves - green);
    const double greenShare = ripening < 0.3 ? 1 : 1 - 0.85 / 0.7 * (ripening - 0.3);
    const double lai = least(youngLeafArea(shootG), standing) * greenShare * c->standPerM2 * 1e-4;
    const double intercepted = interceptedShare(c->extinction * lai);

    /* water */
    double stress = 1;
    if (followsWater) {
      const double et = open->referenceEt[i], cropEt = et * cropCoefficient(intercepted, ripening);
      const double available = c->availableMmPerM * (leaves >= 8 ? 0.4 : 0.15 + (0.4 - 0.15) / 8 * leaves);
      stress = waterStress(depletionMm, available, depletionShare(c->readilyShare, cropEt));
      if (stress < 1) {
        thirstyDays++;
        if (watered) {
          depletionMm = 0;
          stress = 1;
        }
      }
      const double rain = open->rainMm[i] < 0.2 * et ? 0 : open->rainMm[i];
      depletionMm = least((depletionMm > rain ? depletionMm - rain : 0) + cropEt * stress, available);
    }

    /* gain */
    if (isRooted) {
      const double byLight = c->radiationUseGMJ * air->growthLight[i] * c->lightShare * intercepted / c->standPerM2;
      const double byAge = (shootG + bulbG) * c->growthRate * air->growthTT[i];
      const double gain = least(byAge, byLight) * stress * wetSpellFactor(air->wetness[i], meanC);
      if (hasBulb) {
        const double toBulb = (ripening < 0.3 ? 0.4 + 2 * ripening : 1) * gain;
        bulbG += toBulb;
        shootG += gain - toBulb;
      } else
        shootG = most(shootG, least(shootG + gain, most(standing * c->shootPerLeafArea, c->youngG)));
    }

    if (hasBulb) {
      /* ripening */
      ripening += air->ripen[i] / s->ripeningTT * ripeningByDays(P, criticalH, c->ripeningPhotoperiodSlope) * c->densityHaste;
      if (ripening < 0.6) {
        turnBack = P < criticalH - 0.5 || meanC < 10 ? turnBack + 1 : turnBack > 0 ? turnBack - 1 : 0;
        if (turnBack > 10) break;
      }
      if (ripening >= 1) break;
      continue;
    }

    /* cold */
    double *recent = &plant->recentCold[day % IDLE];
    *recent = 0;
    if (air->cold[i] > 0 && shootG > c->boltingSizeG && day < stalksUntil) {
      *recent = plant->coldPace * air->cold[i] * least(log(shootG / c->boltingSizeG) / c->boltingSizeSpan, 1);
      coldDays += *recent;
    }
    if (meanC > 20 && coldDays > storeColdDays) coldDays = most(storeColdDays, coldDays - 0.5);

    /* bulbing */
    if (isRooted || P < criticalH) {
      if (P > criticalH && age >= s->competenceTT * (1 - 0.67 * ramp(P - criticalH, 2, 4.5)) && leaves >= c->minimumLeaves)
        bulbing += c->bulbingRate * ramp(P, criticalH, criticalH + c->photoperiodRampH) * air->warmth[i] * (1 + 0.06 * least(lai, 3));
      bulbing = most(bulbing - c->bulbingLossPerDay, 0);
    }
    if (bulbing >= 1) {
      hasBulb = 1;
      bulbing = 1;
      for (int back = 0; back < IDLE; back++) coldDays -= plant->recentCold[back];
      coldDays = most(coldDays, storeColdDays);
      out->onsetOn = day;
    }
  }
  out->day = day;
  out->leaves = leaves;
  out->green = green;
  out->shootG = shootG;
  out->bulbG = bulbG;
  out->ripening = ripening;
  out->coldDays = coldDays;
  out->aliveShare = aliveShare;
  out->liftedShare = liftedShare;
  out->thirstyDays = thirstyDays;
  return day;
}

typedef struct { const Crop *crop; const Season *seasons; const double *photoperiodH; Air open, covered; int count; Result *results; } Plan;

static Air airAt(const double *columns, size_t days) {
  Air air;
  const double **fields = (const double **)&air;
  for (int k = 0; k < COLUMNS; k++) fields[k] = columns + k * days;
  return air;
}

static void growAll(const Plan *plans, int count) {
  Plant plant;
  for (int p = 0; p < count; p++)
    for (int y = 0; y < plans[p].count; y++) {
      const Plan *plan = &plans[p];
      memcpy(&plant, &plan->seasons[y].plant, sizeof plant);
      plan->results[y].onsetOn = 0;
      grow(&plant, plan->crop, &plan->seasons[y], &plan->open, &plan->covered, plan->photoperiodH, &plan->results[y]);
    }
}

int main(int argc, char **argv) {
  if (argc != 4) return 2;
  FILE *file = fopen(argv[1], "rb");
  if (!file || fseek(file, 0, SEEK_END)) return 3;
  const long bytes = ftell(file);
  double *data = malloc(bytes);
  rewind(file);
  if (!data || fread(data, 1, bytes, file) != (size_t)bytes) return 3;
  fclose(file);
  for (int i = 0; i < 8 * 512 + 2; i++) intercept[i] = 1 - exp(-i / 512.0);
  const int count = (int)*data++;
  Plan *plans = calloc(count, sizeof *plans);
  for (int p = 0; p < count; p++) {
    const size_t days = (size_t)data[0], photoDays = (size_t)data[1];
    plans[p].count = (int)data[2];
    plans[p].crop = (const Crop *)(data += 3);
    plans[p].photoperiodH = (data += sizeof(Crop) / 8);
    plans[p].open = airAt(data += photoDays, days);
    plans[p].covered = airAt(data += COLUMNS * days, days);
    plans[p].seasons = (const Season *)(data += COLUMNS * days);
    data += plans[p].count * sizeof(Season) / 8;
    plans[p].results = calloc(plans[p].count, sizeof(Result));
  }
  const int repeats = atoi(argv[2]);
  for (int r = 0; r < repeats / 5 + 1; r++) growAll(plans, count);
  const clock_t from = clock();
  for (int r = 0; r < repeats; r++) growAll(plans, count);
  const double took = (double)(clock() - from) * 1e6 / CLOCKS_PER_SEC / repeats;
  FILE *out = fopen(argv[3], "wb");
  if (!out) return 3;
  fwrite(&took, 8, 1, out);
  for (int p = 0; p < count; p++) fwrite(plans[p].results, sizeof(Result), plans[p].count, out);
  return fclose(out) ? 3 : 0;
}
