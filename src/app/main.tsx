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
import { queryClient } from './data/query-client.ts'
import { hearServer } from './data/server-news.ts'
import { NamesProvider } from './data/use-names.tsx'
import { router } from './router.tsx'
import { startText } from './text/i18n.ts'
import { FormatProvider } from './text/use-format.tsx'

/** The server is asked, and the screen fetched, before anything is drawn: drawing takes a phone longer than the way there. */
void router.load()
await startText()
keepPages()
keepSending()
clearOldViews()
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

keepAhead(queryClient)
