import { airAndSunChecks } from './air-and-sun.ts'
import { calendarChecks } from './calendar.ts'
import { countsChecks } from './counts.ts'
import { crossedRatesChecks } from './crossed-rates.ts'
import { evaporationChecks } from './evaporation.ts'
import { extremesChecks } from './extremes.ts'
import { heatAndChillChecks } from './heat-and-chill.ts'
import { moneyChecks } from './money.ts'
import { numberToStartChecks } from './number-to-start.ts'
import type { OutsideCheck } from './outside-check.ts'
import { overdispersedCountsChecks } from './overdispersed-counts.ts'
import { pairingChecks } from './pairing.ts'
import { plumRootCuttingsChecks } from './plum-root-cuttings.ts'
import { posteriorChecks } from './posterior.ts'
import { quasiLikelihoodChecks } from './quasi-likelihood.ts'
import { rootingCountsChecks } from './rooting-counts.ts'
import { samplingChecks } from './sampling.ts'
import { survivalChecks } from './survival.ts'
import { timeInStepChecks } from './time-in-step.ts'
import { trialTablesChecks } from './trial-tables.ts'

/** Every check of the science against something outside the project, one list a subject. */
export const outsideChecks = (): readonly OutsideCheck[] => [
  ...numberToStartChecks(),
  ...countsChecks(),
  ...samplingChecks(),
  ...pairingChecks(),
  ...calendarChecks(),
  ...airAndSunChecks(),
  ...evaporationChecks(),
  ...heatAndChillChecks(),
  ...crossedRatesChecks(),
  ...overdispersedCountsChecks(),
  ...plumRootCuttingsChecks(),
  ...posteriorChecks(),
  ...quasiLikelihoodChecks(),
  ...rootingCountsChecks(),
  ...survivalChecks(),
  ...timeInStepChecks(),
  ...trialTablesChecks(),
  ...moneyChecks(),
  ...extremesChecks(),
]
