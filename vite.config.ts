import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import react from '@vitejs/plugin-react'
import { defineConfig, type Plugin, type Rolldown } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'

const sources = `${import.meta.dirname}/src/app/`

/** Which modules of the app these cannot do without: they import them, or others that they import. */
const neededBy = (...roots: readonly string[]) => {
  const needed = new Set<string>()
  return (module: string, modules: Rolldown.ChunkingContext): boolean => {
    const take = (one: string): void => {
      if (needed.has(one) || !one.startsWith(sources)) return
      needed.add(one)
      for (const other of modules.getModuleInfo(one)?.importedIds ?? []) take(other)
    }
    for (const root of roots) take(sources + root)
    return needed.has(module)
  }
}
const byEveryScreen = neededBy('main.tsx', 'parts/asked.tsx', 'pictures/marks/mark.tsx')
const byThePageThatReads = neededBy('plant.tsx')
const byLists = neededBy('parts/find-field.tsx', 'parts/virtual-list.tsx')

/** What every screen stands on. */
const LIBRARIES =
  /node_modules\/(react|react-dom|scheduler|i18next|react-i18next|use-sync-external-store|html-parse-stringify|void-elements|@tanstack\/[^/]+|idb|uuidv7)\//
const LIST_LIBRARIES = /node_modules\/@tanstack\/(react-virtual|virtual-core)\//
const CONTROLS = /node_modules\/(react-aria|react-stately|@react-[^/]+|@internationalized)/

/** What is in these runs at once: a browser that knows the comment compiles it whole, beside the page (v8.dev/blog/explicit-compile-hints). */
const compiledWhole: Plugin = {
  name: 'compiled-whole',
  enforce: 'post',
  generateBundle(_, files) {
    for (const file of Object.values(files))
      if (file.type === 'chunk' && /^(every-screen|both-pages|libraries|controls)/.test(file.name))
        file.code = `//# allFunctionsCalledOnLoad\n${file.code}`
  },
}

const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(file => /(?<!\.test)\.ts$/.test(file))
    .map(file => `${folder}/${file}`)

/** The rooms that give the server's answers their shapes: one hash over what is written there. */
const answersShapedBy = (): string => {
  const rooms = ['api', 'planning', 'advice', 'record', 'trade']
  const files = rooms.flatMap(room => filesBelow(`${import.meta.dirname}/src/${room}`)).sort()
  const hash = createHash('sha256')
  for (const file of files) hash.update(readFileSync(file))
  return hash.digest('hex').slice(0, 16)
}

/** The app: sources and index.html in src/app, built into dist/app, from where the server serves it. */
export default defineConfig({
  root: 'src/app',
  plugins: [
    react(),
    compiledWhole,
    /** Keeps the pages on the device, so that they open without the server. What the API says is kept apart, as data. */
    VitePWA({
      registerType: 'prompt',
      workbox: {
        globPatterns: ['**/*.{html,js,css,woff2,svg}'],
        navigateFallback: 'index.html',
        navigateFallbackDenylist: [/^\/api\//, /^\/plant\.html/],
      },
      manifest: {
        name: 'Budstick',
        short_name: 'Budstick',
        description: 'Season planning, bench records and lineage for fruit-tree propagators',
        start_url: '/work',
        display: 'standalone',
        background_color: '#f5f3ec',
        theme_color: '#f5f3ec',
        icons: [{ src: '/budstick.svg', type: 'image/svg+xml', sizes: 'any', purpose: 'any' }],
      },
    }),
  ],
  define: { ANSWERS_SHAPED_BY: JSON.stringify(answersShapedBy()) },
  /** For work on the screens: `npx vite` beside `npm start -- --no-open`, whose server answers. */
  server: { proxy: { '/api': 'http://127.0.0.1:7320' } },
  build: {
    outDir: '../../dist/app',
    emptyOutDir: true,
    target: 'es2023',
    /** Browsers that know this language fetch modules ahead by themselves. */
    modulePreload: { polyfill: false },
    /** Two pages: the app, and the one that only reads, for a nursery's own web site. */
    rolldownOptions: {
      input: ['index.html', 'plant.html'].map(page => sources + page),
      /** The solver stays with the server: shapes of its answers lead past it, and to look into it emits its WebAssembly. */
      external: ['highs'],
      /**
       * Each script costs a phone time: what every screen needs is put together in few. Of the controls each screen needs
       * others: they go by who needs them, small parts put to their neighbours. Not so the program's other rooms, nor the
       * library that checks their shapes: put together, a small part takes all of them into the first view with it.
       */
      output: {
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [
            {
              debugName: 'the app itself',
              name: (module, modules) => {
                if (module.includes('vite/preload-helper')) return 'both-pages'
                if (byEveryScreen(module, modules))
                  return byThePageThatReads(module, modules) ? 'both-pages' : 'every-screen'
                return byLists(module, modules) || LIST_LIBRARIES.test(module) ? 'lists' : null
              },
            },
            { name: 'libraries', tags: ['$initial'], test: LIBRARIES },
            {
              name: 'controls',
              tags: ['$initial'],
              test: CONTROLS,
              minShareCount: 2,
              entriesAware: true,
              entriesAwareMergeThreshold: 40_000,
            },
          ],
        },
      },
    },
  },
})
