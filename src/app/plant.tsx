import './theme/fonts.ts'
import './theme/tokens.css'
import './theme/base.css'
import './parts/controls.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { PlantPage } from './screens/which-tree/plant-page.tsx'
import { linkFromSearch, questionFromLink } from './screens/which-tree/question-link.ts'
import { startText } from './text/i18n.ts'

/**
 * The page for a nursery's own web site: the question stands in its address, the answer is reckoned in the reader's
 * browser. It knows no API, keeps nothing and sends nothing.
 */
await startText()
createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <PlantPage asked={questionFromLink(linkFromSearch(location.search), 'apple')} />
  </StrictMode>,
)
