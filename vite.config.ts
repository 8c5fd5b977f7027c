import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'

/** Those that the first view may need. */
const LIBRARY = /node_modules\/(?!zod\/)/

/** The app: sources and index.html in src/app, built into dist/app, from where the server serves it. */
export default defineConfig({
  root: 'src/app',
  plugins: [
    react(),
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
  /** For work on the screens: `npx vite` beside `npm start -- --no-open`, whose server answers. */
  server: { proxy: { '/api': 'http://127.0.0.1:7320' } },
  build: {
    outDir: '../../dist/app',
    emptyOutDir: true,
    target: 'es2023',
    /** Two pages: the app, and the one that only reads, for a nursery's own web site. */
    rolldownOptions: {
      input: ['index.html', 'plant.html'].map(page => `${import.meta.dirname}/src/app/${page}`),
      /**
       * What several pages share of the libraries, small parts put to their neighbours. Not the program's own rooms, nor the
       * library that checks their shapes: put together, a small part takes all of them into the first view with it.
       */
      output: {
        codeSplitting: {
          groups: [
            {
              name: 'shared',
              tags: ['$initial'],
              test: LIBRARY,
              includeDependenciesRecursively: false,
              minShareCount: 2,
              entriesAware: true,
              entriesAwareMergeThreshold: 12_000,
            },
          ],
        },
      },
    },
  },
})
