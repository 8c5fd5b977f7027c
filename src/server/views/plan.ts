import type { PlanHead, SeasonPlan } from '../../api/index.ts'
import type { Plan } from '../../planning/index.ts'

export const planHead = ({ id, madeOn, throughSeq, firstWeek, outcome, weeks, loads }: Plan): PlanHead => {
  const skills = loads.filter(({ what }) => what === 'skill')
  return {
    id,
    madeOn,
    throughSeq,
    firstWeek,
    outcome,
    hands: Array.from({ length: weeks }, (_, week) => ({
      hours: skills.reduce((sum, { expected }) => sum + (expected[week] ?? 0), 0),
      isOver: skills.some(({ expected, capacity }) => (expected[week] ?? 0) > (capacity[week] ?? 0) * 1.001),
    })),
  }
}

export const seasonPlan = (plan: Plan): SeasonPlan => {
  const { tasks, plannedWith, restsOn, ...season } = plan
  return {
    ...season,
    orders: plan.orders.map(({ order, asked, chance, ladders }) => ({
      order,
      asked,
      chance,
      batches: [...new Set(ladders.flatMap(({ batch }) => (batch === null ? [] : [batch])))],
    })),
  }
}
