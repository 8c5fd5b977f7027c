import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

/** The app: sources and index.html in src/app, built into dist/app, from where the server serves it. */
export default defineConfig({
  root: 'src/app',
  plugins: [react()],
  /** For work on the screens: `npx vite` beside `npm start -- --no-open`, whose server answers. */
  server: { proxy: { '/api': 'http://127.0.0.1:7320' } },
  build: {
    outDir: '../../dist/app',
    emptyOutDir: true,
    target: 'es2023',
  },
})
