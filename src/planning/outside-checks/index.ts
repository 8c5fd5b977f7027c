import {
  casesOf,
  type Fixture,
  type FixtureCase,
  type OutsideCheck,
  outsideCheck,
  sourceOf,
} from '../../science/index.ts'
import { benchPlan, lotSizing, transport } from '../fixtures/lot-sizing.ts'
import optima from '../fixtures/planning-optimisation.json' with { type: 'json' }
import { buildSeasonModel, withoutMargins } from '../model/build-season-model.ts'
import { openSolver } from '../model/solve.ts'
import type { Season } from '../season.ts'
import { reckonedAgainst } from '../whole/reckon.ts'
import { wholeTrays } from '../whole/whole-trays.ts'
import { plainModels } from './plain-models.ts'
import { simulatedChances } from './simulated-chances.ts'

const fixture: Fixture = optima

/** Known optima, found through the season model: its rules, its rounding to whole numbers and its solver. */
export async function outsideChecks(): Promise<readonly OutsideCheck[]> {
  const lots = [
    'wagner-whitin-1958',
    'hillier-aircraft',
    'winston-capacitated',
    'snyder-shen-3.9',
    'factory-physics-10',
  ]
  const checks: OutsideCheck[] = []
  for (const id of lots) {
    const [lot] = casesOf<LotInputs, { cost: number }>(fixture, id)
    checks.push(
      await costCheck(
        'Lot sizing with set-up costs, made and held as batches and finished plants',
        lot!,
        lotSeason(lot!.inputs),
      ),
    )
  }
  const [freight] = casesOf<FreightInputs, { cost: number }>(fixture, 'transport-dantzig')
  const { supply, demand, distance, freight: rate } = freight!.inputs
  const costPerUnit = (from: number, to: number) => (distance[from]![to]! * rate) / 1000
  checks.push(
    await costCheck(
      'Transport, supplies as mother trees and routes as ways',
      freight!,
      transport({ supply, demand, costPerUnit }),
    ),
  )
  const [bench] = casesOf<BenchInputs, { cost: number }>(fixture, 'bench-plan-constructed')
  checks.push(
    await costCheck('Whole trays on one bench, planned for whole trays', bench!, benchSeason(bench!.inputs)),
  )
  return [...checks, ...(await plainModels()), ...simulatedChances()]
}

/** Differences are those of the solver's tolerances. */
const TOLERANCE = 1e-6

async function costCheck<Inputs>(
  what: string,
  known: FixtureCase<Inputs, { cost: number }>,
  season: Season,
): Promise<OutsideCheck> {
  const margins = withoutMargins(season)
  const model = buildSeasonModel(season, margins)
  const solver = await openSolver(model)
  const relaxed = solver.solve()
  solver.dispose()
  const { starts, bought } = await wholeTrays({ season, relaxed, model }).round({ margins, proveSeconds: 20 })
  const { cost } = await reckonedAgainst(relaxed, season, margins, starts, bought)
  return outsideCheck({
    what: `${what} (${known.id})`,
    source: sourceOf(fixture, known),
    basis: known.basis,
    expected: known.expected.cost,
    got: cost,
    tolerance: TOLERANCE,
  })
}

interface LotInputs {
  readonly demand: readonly number[]
  readonly setup: number | readonly number[]
  readonly holding: number
  readonly variable?: number
  readonly productionCapacity?: number
  readonly storageCapacity?: number
}

const lotSeason = ({
  demand,
  setup,
  holding,
  variable,
  productionCapacity,
  storageCapacity,
}: LotInputs): Season =>
  lotSizing({
    demand,
    setup: period => (typeof setup === 'number' ? setup : setup[period]!),
    holding,
    ...(variable === undefined ? {} : { each: variable }),
    ...(productionCapacity === undefined ? {} : { most: productionCapacity }),
    ...(storageCapacity === undefined ? {} : { room: storageCapacity }),
  })

interface FreightInputs {
  readonly supply: readonly number[]
  readonly demand: readonly number[]
  readonly distance: readonly (readonly number[])[]
  readonly freight: number
}

interface BenchInputs {
  readonly trays: readonly number[]
  readonly weeksOnBench: readonly number[]
  readonly area_m2: readonly number[]
  readonly need: readonly number[]
  readonly dueWeek: readonly number[]
  readonly benchCapacity_m2ByWeek: readonly number[]
  readonly costPerTray: number
  readonly holdPerTrayWeekEarly: number
}

const benchSeason = (inputs: BenchInputs): Season =>
  benchPlan({
    trays: inputs.trays,
    weeksOnBench: inputs.weeksOnBench,
    squareMetresPerTray: inputs.area_m2,
    need: inputs.need,
    dueWeek: inputs.dueWeek,
    squareMetresByWeek: inputs.benchCapacity_m2ByWeek,
    costPerTray: inputs.costPerTray,
    holdPerTrayWeek: inputs.holdPerTrayWeekEarly,
  })
