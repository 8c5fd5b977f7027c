import './theme/fonts.ts'
import './theme/tokens.css'
import './theme/base.css'
import './parts/controls.css'
import './theme/print.css'
import { QueryClientProvider } from '@tanstack/react-query'
import { RouterProvider } from '@tanstack/react-router'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { keepAhead } from './data/ahead.ts'
import { answered } from './data/answered.ts'
import { clearOldViews } from './data/kept-views.ts'
import { keepPages } from './data/newer-version.ts'
import { keepSending } from './data/outbox/use-outbox.ts'
import { queryClient } from './data/query-client.ts'
import { hearServer } from './data/server-news.ts'
import { NamesProvider } from './data/use-names.tsx'
import { whenIdle } from './data/when-idle.ts'
import { router } from './router.tsx'
import { startText } from './text/i18n.ts'
import { FormatProvider } from './text/use-format.tsx'

const IDLE_AT_LATEST_MS = 5000
/** Where the screen and its answers take longer, the page is drawn before, and says what it waits for. */
const DRAWN_AT_LATEST_MS = 400

/** Drawing takes a phone longer than the way to the server: the first page is drawn once, with its screen and answers. */
const firstPage = Promise.race([
  router.load().then(() => answered(queryClient)),
  new Promise(late => setTimeout(late, DRAWN_AT_LATEST_MS)),
])
// No `await` at the top of a module: with one, the scripts of a build are not put together.
void Promise.all([startText(), firstPage]).then(() => {
  keepSending()
  hearServer(queryClient)

  createRoot(document.getElementById('root')!).render(
    <StrictMode>
      <QueryClientProvider client={queryClient}>
        <FormatProvider>
          <NamesProvider>
            <RouterProvider router={router} />
          </NamesProvider>
        </FormatProvider>
      </QueryClientProvider>
    </StrictMode>,
  )

  whenIdle(keepPages, IDLE_AT_LATEST_MS)
  whenIdle(clearOldViews, IDLE_AT_LATEST_MS)
  keepAhead(queryClient)
})
