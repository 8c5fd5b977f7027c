import type { Entry } from '../record/index.ts'
import { dayNumber, dayText, seededRandom } from '../science/index.ts'
import { tellHistory } from './history.ts'
import { nurseryList } from './nursery-list.ts'
import { tellOddThings } from './odd-things.ts'
import { drawOrders } from './orders.ts'
import { benches, people, prices, site } from './place.ts'
import { createTeller } from './teller.ts'
import { drawTruth } from './truth.ts'

/** Registers are told before anything that happened. */
const BEGAN_DAYS_AGO = 1_130

/**
 * An invented nursery with three years behind it and a season before it. Everything follows from one number and the
 * day: the same two give the same entries.
 */
export const makeDemoEntries = ({
  seed,
  today,
}: {
  readonly seed: number
  readonly today: string
}): Entry[] => {
  const random = seededRandom(seed)
  const teller = createTeller(random.stream(1), today)
  const began = dayText(dayNumber(today) - BEGAN_DAYS_AGO)
  const list = nurseryList()
  const manager = people[0]!.id

  teller.tell(began, manager, { kind: 'site-set/1', site })
  teller.tell(began, manager, { kind: 'prices-set/1', prices })
  for (const bench of benches) teller.tell(began, manager, { kind: 'bench-set/1', bench })
  for (const person of people) teller.tell(began, manager, { kind: 'person-set/1', person })
  const told = new Set<string>()
  const once = (id: string, tell: () => void): void => {
    if (told.has(id)) return
    told.add(id)
    tell()
  }
  for (const cultivar of [...list.trees.flatMap(({ cultivars }) => cultivars), ...list.extraCultivars])
    once(`cultivar ${cultivar.id}`, () => teller.tell(began, manager, { kind: 'cultivar-set/1', cultivar }))
  for (const item of [...list.stocks, ...list.trees]) {
    for (const protocol of item.protocols)
      once(`protocol ${protocol.id}`, () => teller.tell(began, manager, { kind: 'protocol-set/1', protocol }))
    teller.tell(began, manager, { kind: 'kind-set/1', kindOfTree: item.kind })
  }
  for (const mother of list.mothers) teller.tell(began, manager, { kind: 'mother-set/1', mother })

  const finishing = tellHistory(list, drawTruth(random.stream(2)), random.stream(3), teller, today)
  for (const { order, placed } of drawOrders(list, finishing, random.stream(4), today))
    teller.tell(placed, manager, { kind: 'order-placed/1', order })
  tellOddThings(teller, today, manager)
  return teller.entries()
}
