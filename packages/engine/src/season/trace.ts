/** Day-by-day state of one season, for tables and pictures; index = days from the start. */
export type DayTrace = {
  leavesMade: Float64Array;
  leavesGreen: Float64Array;
  shootG: Float64Array;
  bulbG: Float64Array;
  bulbing: Float64Array;
  ripening: Float64Array;
  /** One past the last day written. */
  length: number;
  /** Writes a day: leaves, g of dry matter a plant, and how far bulbing and ripening have come (1: done). */
  put(
    day: number,
    leavesMade: number,
    leavesGreen: number,
    shootG: number,
    bulbG: number,
    bulbing: number,
    ripening: number,
  ): void;
};

/** An empty trace for so many days. */
export function dayTrace(days: number): DayTrace {
  const column = () => new Float64Array(days);
  return {
    leavesMade: column(),
    leavesGreen: column(),
    shootG: column(),
    bulbG: column(),
    bulbing: column(),
    ripening: column(),
    length: 0,
    put(day, leavesMade, leavesGreen, shootG, bulbG, bulbing, ripening) {
      this.leavesMade[day] = leavesMade;
      this.leavesGreen[day] = leavesGreen;
      this.shootG[day] = shootG;
      this.bulbG[day] = bulbG;
      this.bulbing[day] = bulbing;
      this.ripening[day] = ripening;
      this.length = day + 1;
    },
  };
}
