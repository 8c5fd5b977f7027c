import type { FetchQueryOptions, QueryKey } from '@tanstack/react-query'
import {
  createRootRoute,
  createRoute,
  createRouter,
  lazyRouteComponent,
  redirect,
} from '@tanstack/react-router'
import { look } from './data/queries.ts'
import { queryClient } from './data/query-client.ts'
import { LINK_KEYS, type QuestionLink } from './screens/which-tree/link-keys.ts'
import { PageBroken, PageMissing } from './shell/page-broken.tsx'
import { Shell } from './shell/shell.tsx'

/** Every view has an address; what it is filtered by stands in the address too, so that a link reopens it. */

const text = (value: unknown): string | undefined =>
  typeof value === 'string' && value !== '' ? value : typeof value === 'number' ? String(value) : undefined
const shortWord = (value: unknown): string | number | undefined =>
  typeof value === 'number' ? value : text(value)
const week = (value: unknown): string | undefined =>
  typeof value === 'string' && /^\d{4}-W\d{2}$/.test(value) ? value : undefined
const oneOf = <K extends string>(value: unknown, ...allowed: readonly K[]): K | undefined =>
  allowed.find(one => one === value)
const given = <T extends object>(values: T): { [K in keyof T]?: T[K] } =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as never

/** Asks the server while the screen itself is still on its way. */
const ask = <T, K extends QueryKey>(question: FetchQueryOptions<T, Error, T, K>): void =>
  void queryClient.prefetchQuery(question)

const root = createRootRoute({
  /** What lies open over the page, and what is tried there. */
  validateSearch: said => given({ open: text(said.open), tries: text(said.tries) }),
  loader: () => {
    ask(look.nursery())
    ask(look.plan())
  },
  component: Shell,
  errorComponent: PageBroken,
  notFoundComponent: PageMissing,
})
const under = <P extends string>(path: P) => ({ getParentRoute: () => root, path })

const home = createRoute({
  ...under('/'),
  beforeLoad: () => {
    throw redirect({ to: '/work' })
  },
})
const work = createRoute({
  ...under('/work'),
  validateSearch: said => given({ week: week(said.week), person: text(said.person), task: text(said.task) }),
  loaderDeps: ({ search }) => ({ week: search.week }),
  // A pointer that only rests on the way here does not fetch the week, which is large.
  loader: ({ deps, preload }) => {
    if (!preload) ask(look.work(deps.week))
  },
  component: lazyRouteComponent(() => import('./screens/this-week/work-screen.tsx'), 'WorkScreen'),
})
const season = createRoute({
  ...under('/season'),
  validateSearch: said =>
    given({
      from: week(said.from),
      span: oneOf(text(said.span), '13', '26', '52', '104'),
      find: text(said.find),
      start: text(said.start),
      tried: week(said.tried),
      load: oneOf(said.load, 'place', 'skill', 'mother'),
      /** What of a bench or a person is tried. */
      suppose: text(said.suppose),
    }),
  component: lazyRouteComponent(() => import('./screens/season/season-screen.tsx'), 'SeasonScreen'),
})
const orders = createRoute({
  ...under('/orders'),
  validateSearch: said =>
    given({
      order: text(said.order),
      find: text(said.find),
      show: oneOf(said.show, 'open', 'risk', 'all'),
      /** What could be promised: of which kind, how many, as sure as so many in a hundred. */
      promise: text(said.promise),
      number: text(said.number),
      sure: text(said.sure),
    }),
  loader: () => ask(look.orders()),
  component: lazyRouteComponent(() => import('./screens/orders/orders-screen.tsx'), 'OrdersScreen'),
})
const newOrders = createRoute({
  ...under('/orders/new'),
  component: lazyRouteComponent(() => import('./screens/orders/new-orders-screen.tsx'), 'NewOrdersScreen'),
})
const batches = createRoute({
  ...under('/batches'),
  validateSearch: said =>
    given({ find: text(said.find), state: oneOf(said.state, 'alive', 'past', 'all'), mark: text(said.mark) }),
  loader: ({ preload }) => {
    if (!preload) ask(look.batchesAlive())
  },
  component: lazyRouteComponent(() => import('./screens/batches/batches-screen.tsx'), 'BatchesScreen'),
})
const batch = createRoute({
  ...under('/batches/$batch'),
  validateSearch: said => given({ behind: text(said.behind) }),
  loader: ({ params }) => {
    ask(look.batch(params.batch))
    ask(look.batchExpected(params.batch))
  },
  component: lazyRouteComponent(() => import('./screens/batch/batch-screen.tsx'), 'BatchScreen'),
})
const count = createRoute({
  ...under('/batches/$batch/count'),
  validateSearch: said => given({ step: text(said.step), task: text(said.task) }),
  loader: ({ params }) => {
    ask(look.batch(params.batch))
    ask(look.orders())
  },
  component: lazyRouteComponent(() => import('./screens/batch/count-screen.tsx'), 'CountScreen'),
})
const mothers = createRoute({
  ...under('/mothers'),
  validateSearch: said =>
    given({ mother: text(said.mother), block: text(said.block), find: text(said.find) }),
  loader: () => ask(look.mothers()),
  component: lazyRouteComponent(() => import('./screens/mothers/mothers-screen.tsx'), 'MothersScreen'),
})
const benches = createRoute({
  ...under('/benches'),
  validateSearch: said => given({ bench: text(said.bench), week: week(said.week) }),
  component: lazyRouteComponent(() => import('./screens/benches/benches-screen.tsx'), 'BenchesScreen'),
})
const benchCount = createRoute({
  ...under('/benches/$bench/count'),
  component: lazyRouteComponent(() => import('./screens/benches/bench-count-screen.tsx'), 'BenchCountScreen'),
})
const rates = createRoute({
  ...under('/rates'),
  validateSearch: said =>
    given({
      find: text(said.find),
      show: oneOf(said.show, 'own', 'set', 'all'),
      view: oneOf(
        said.view,
        'steps',
        'kinds',
        'rootstocks',
        'methods',
        'cultivars',
        'months',
        'people',
        'slumps',
      ),
    }),
  loader: () => ask(look.rates()),
  component: lazyRouteComponent(() => import('./screens/rates/rates-screen.tsx'), 'RatesScreen'),
})
const lineage = createRoute({
  ...under('/lineage/$what/$id'),
  component: lazyRouteComponent(() => import('./screens/lineage/lineage-screen.tsx'), 'LineageScreen'),
})
const affected = createRoute({
  ...under('/lineage/$what/$id/affected'),
  component: lazyRouteComponent(() => import('./screens/lineage/affected-screen.tsx'), 'AffectedScreen'),
})
const year = createRoute({
  ...under('/year'),
  validateSearch: said => given({ species: text(said.species) }),
  component: lazyRouteComponent(() => import('./screens/year/year-screen.tsx'), 'YearScreen'),
})
const whichTree = createRoute({
  ...under('/which-tree'),
  validateSearch: said =>
    given({
      ...(Object.fromEntries(LINK_KEYS.map(key => [key, shortWord(said[key])])) as QuestionLink),
      view: oneOf(said.view, 'buyer', 'nursery'),
      only: oneOf(said.only, 'offered', 'all'),
    }),
  component: lazyRouteComponent(
    () => import('./screens/which-tree/which-tree-screen.tsx'),
    'WhichTreeScreen',
  ),
})
const checks = createRoute({
  ...under('/checks'),
  component: lazyRouteComponent(() => import('./screens/checks/checks-screen.tsx'), 'ChecksScreen'),
})
const journal = createRoute({
  ...under('/journal'),
  validateSearch: said => given({ find: text(said.find) }),
  component: lazyRouteComponent(() => import('./screens/journal/journal-screen.tsx'), 'JournalScreen'),
})
const imports = createRoute({
  ...under('/import'),
  component: lazyRouteComponent(() => import('./screens/import/import-screen.tsx'), 'ImportScreen'),
})
const nursery = createRoute({
  ...under('/nursery'),
  component: lazyRouteComponent(() => import('./screens/nursery/nursery-screen.tsx'), 'NurseryScreen'),
})
const settings = createRoute({
  ...under('/settings'),
  component: lazyRouteComponent(() => import('./screens/settings/settings-screen.tsx'), 'SettingsScreen'),
})

const protocol = createRoute({
  ...under('/protocols/$protocol'),
  component: lazyRouteComponent(() => import('./screens/protocols/protocol-screen.tsx'), 'ProtocolScreen'),
})

const methods = createRoute({
  ...under('/methods'),
  validateSearch: said => given({ find: text(said.find) }),
  component: lazyRouteComponent(() => import('./screens/methods/methods-screen.tsx'), 'MethodsScreen'),
})
const method = createRoute({
  ...under('/methods/$method'),
  component: lazyRouteComponent(() => import('./screens/methods/method-screen.tsx'), 'MethodScreen'),
})
const allSpecies = createRoute({
  ...under('/species'),
  validateSearch: said => given({ find: text(said.find) }),
  component: lazyRouteComponent(() => import('./screens/species/species-screen.tsx'), 'SpeciesScreen'),
})
const oneSpecies = createRoute({
  ...under('/species/$species'),
  component: lazyRouteComponent(() => import('./screens/species/one-species-screen.tsx'), 'OneSpeciesScreen'),
})

export const router = createRouter({
  routeTree: root.addChildren([
    home,
    work,
    season,
    orders,
    newOrders,
    batches,
    batch,
    count,
    mothers,
    benches,
    benchCount,
    rates,
    lineage,
    affected,
    year,
    whichTree,
    checks,
    journal,
    imports,
    nursery,
    settings,
    protocol,
    methods,
    method,
    allSpecies,
    oneSpecies,
  ]),
  defaultPreload: 'intent',
  scrollRestoration: true,
})

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router
  }
}
