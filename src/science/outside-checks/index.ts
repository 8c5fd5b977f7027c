import { numberToStartChecks } from './number-to-start.ts'
import type { OutsideCheck } from './outside-check.ts'
import { overdispersedCountsChecks } from './overdispersed-counts.ts'
import { plumRootCuttingsChecks } from './plum-root-cuttings.ts'
import { rootingCountsChecks } from './rooting-counts.ts'
import { survivalChecks } from './survival.ts'

/** Every check of the science against something outside the project. */
export const outsideChecks = (): readonly OutsideCheck[] => [
  ...numberToStartChecks(),
  ...overdispersedCountsChecks(),
  ...plumRootCuttingsChecks(),
  ...rootingCountsChecks(),
  ...survivalChecks(),
]
