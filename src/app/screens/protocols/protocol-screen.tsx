import { useQuery } from '@tanstack/react-query'
import { getRouteApi, Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import { look } from '../../data/queries.ts'
import { useNames } from '../../data/use-names.tsx'
import { Asked, Fetching } from '../../parts/asked.tsx'
import { ProtocolEditor } from './protocol-editor.tsx'

const route = getRouteApi('/protocols/$protocol')

/** One protocol: read it, change it and see at once what that does to the count-back, keep it or copy it. */
export function ProtocolScreen() {
  const { t } = useTranslation()
  const { protocol: id } = route.useParams()
  const { nursery } = useNames()
  const query = useQuery(look.protocol(id))
  if (nursery === undefined) return <Fetching what={t('protocols.title')} />
  return (
    <div className="stack">
      <p>
        <Link to="/settings">{t('settings.title')}</Link>
      </p>
      <Asked query={query} what={t('protocols.title')}>
        {protocol => (
          <ProtocolEditor key={`${protocol.id} ${protocol.version}`} protocol={protocol} nursery={nursery} />
        )}
      </Asked>
    </div>
  )
}
