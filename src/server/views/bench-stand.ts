import type { BenchStand } from '../../api/index.ts'
import { finishedStep, heldBatches } from '../../record/index.ts'
import { BenchId, markOfMethod } from '../../trade/index.ts'
import type { NurseryMemory } from '../nursery-memory.ts'
import { behindOf } from './batch.ts'
import { holdRow } from './holds.ts'

/** What the record has on a bench now, a line for each step of each batch. */
export const benchStand = (memory: NurseryMemory, asked: string): BenchStand | null => {
  const nursery = memory.nursery()
  const id = BenchId.parse(asked)
  const bench = nursery.benches.get(id)
  if (bench === undefined) return null
  const held = heldBatches(nursery)
  const lines: BenchStand['lines'] = []
  for (const batch of nursery.batches.values()) {
    const numbers = new Map<(typeof lines)[number]['step'], number>()
    for (const { bench: at, step, number } of batch.portions)
      if (at === id) numbers.set(step, (numbers.get(step) ?? 0) + number)
    for (const { bench: at, number } of batch.finishedPortions)
      if (at === id) numbers.set(finishedStep, (numbers.get(finishedStep) ?? 0) + number)
    if (numbers.size === 0) continue
    const protocol = nursery.protocols.get(batch.protocol)
    const behind = behindOf(memory, batch)
    for (const [step, number] of numbers)
      lines.push({
        batch: batch.id,
        name: batch.name,
        kind: batch.kind,
        kindName: nursery.kinds.get(batch.kind)?.name ?? batch.kind,
        mark: markOfMethod(protocol?.method ?? 'seed'),
        step,
        stepName: protocol?.steps.find(one => one.id === step)?.name ?? step,
        number,
        behind: behind[`stands ${step}`] ?? [],
        onHold: held.has(batch.id),
      })
  }
  return {
    bench: id,
    name: bench.name,
    lastCounted: nursery.benchCounts.get(id)?.on ?? null,
    lines: lines.sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0)),
    holds: [...nursery.holds.values()]
      .filter(({ on, released }) => released === null && on.what === 'bench' && on.bench === id)
      .map(hold => holdRow(memory, hold)),
  }
}
