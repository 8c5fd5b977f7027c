import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

/** The app: sources and index.html in src/app, built into dist/app, from where the server serves it. */
export default defineConfig({
  root: 'src/app',
  plugins: [react()],
  build: { outDir: '../../dist/app', emptyOutDir: true, target: 'es2023' },
})
