import './theme/fonts.ts'
import './theme/tokens.css'
import './theme/base.css'
import './parts/controls.css'
import { QueryClientProvider } from '@tanstack/react-query'
import { RouterProvider } from '@tanstack/react-router'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { keepAhead } from './data/ahead.ts'
import { clearOldViews } from './data/kept-views.ts'
import { keepPages } from './data/newer-version.ts'
import { keepSending } from './data/outbox/use-outbox.ts'
import { look } from './data/queries.ts'
import { queryClient } from './data/query-client.ts'
import { hearServer } from './data/server-news.ts'
import { NamesProvider } from './data/use-names.tsx'
import { whenIdle } from './data/when-idle.ts'
import { router } from './router.tsx'
import { startText } from './text/i18n.ts'
import { FormatProvider } from './text/use-format.tsx'

const IDLE_AT_LATEST_MS = 5000
/** Where the server takes longer to say what nursery it is, the frame is drawn before. */
const AT_ONCE_MS = 100

/** What every line of a page stands on: a page drawn without it is drawn twice. */
const nurseryKnown = (): Promise<unknown> =>
  Promise.race([
    Promise.all([queryClient.prefetchQuery(look.nursery()), queryClient.prefetchQuery(look.plan())]),
    new Promise(late => setTimeout(late, AT_ONCE_MS)),
  ])

/** The server is asked, and the screen fetched, before anything is drawn: drawing takes a phone longer than the way there. */
void router.load()
// No `await` at the top of a module: with one, the scripts of a build are not put together.
void Promise.all([startText(), nurseryKnown()]).then(() => {
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
