import type { Fit } from './fit.ts';
import type { LeaveOut } from './leave-out.ts';
import type { Stations } from './stations.ts';

export type ReportInput = { stations: Stations; fit: Fit; zippedBytes: number; ways: LeaveOut[] };

export function climateReport(input: ReportInput): string {
  return JSON.stringify({ bytes: input.zippedBytes });
}
