import './theme/fonts.ts'
import './theme/tokens.css'
import './theme/base.css'
import './parts/controls.css'
import './theme/print.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { pageFromSearch } from './screens/which-tree/page-link.ts'
import { PlantPage } from './screens/which-tree/plant-page.tsx'
import { startText } from './text/i18n.ts'

/**
 * The page for a nursery's own web site: the question stands in its address, the answer is reckoned in the reader's
 * browser. It knows no API, keeps nothing and sends nothing.
 */
const asked = pageFromSearch(location.search)
void startText(asked?.language).then(() =>
  createRoot(document.getElementById('root')!).render(
    <StrictMode>
      <PlantPage asked={asked} />
    </StrictMode>,
  ),
)
