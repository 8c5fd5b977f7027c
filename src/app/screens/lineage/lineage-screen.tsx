import { useQuery } from '@tanstack/react-query'
import { getRouteApi, Link, useNavigate } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { client } from '../../data/client.ts'
import { look } from '../../data/queries.ts'
import { Asked } from '../../parts/asked.tsx'
import { FileLink } from '../../parts/file-link.tsx'
import { useOpened } from '../../parts/use-opened.ts'
import { LineagePicture } from '../../pictures/lineage/lineage-picture.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { HoldFamily } from './hold-family.tsx'
import { LineageLinks } from './lineage-links.tsx'

const route = getRouteApi('/lineage/$what/$id')

/** The family of a batch or mother tree, both ways; all of it can be held at once. */
export function LineageScreen() {
  const { t } = useTranslation()
  const format = useFormat()
  const navigate = useNavigate()
  const params = route.useParams()
  const what = params.what === 'mother' ? 'mother' : 'batch'
  const family = useQuery(look.lineage(what, params.id))
  const [opened, open] = useOpened()
  return (
    <Asked query={family} what={t('lineage.title', { name: '' })}>
      {view => {
        const own = view.things.find(({ generation }) => generation === 0)
        const name = [own?.name, own?.detail].filter(Boolean).join(', ')
        const count = (side: 1 | -1) =>
          view.things.filter(({ generation }) => Math.sign(generation) === side).length
        return (
          <div className="stack">
            <div className="page-head">
              <div>
                <h1>{t('lineage.title', { name })}</h1>
                <p className="soft">
                  {t('lineage.says', { before: format.number(count(-1)), after: format.number(count(1)) })}{' '}
                  {view.notShown > 0 &&
                    t('lineage.notShown', { count: view.notShown, shown: format.number(view.notShown) })}
                </p>
              </div>
              <div className="row">
                <Button
                  className="plain"
                  onPress={() =>
                    void (what === 'batch'
                      ? navigate({ to: '/batches/$batch', params: { batch: params.id } })
                      : navigate({ to: '/mothers', search: { mother: params.id } }))
                  }
                >
                  {t(what === 'batch' ? 'lineage.openBatch' : 'lineage.openMother', {
                    name: own?.name ?? '',
                  })}
                </Button>
                <Link to="/lineage/$what/$id/affected" params={{ what, id: params.id }} className="plain">
                  {t('lineage.affected.open')}
                </Link>
                <FileLink className="plain" href={client.downloads.family(what, params.id, 'family.csv')}>
                  {t('lineage.affected.table')}
                </FileLink>
                <Button className="quiet" onPress={() => open('hold')}>
                  {t('lineage.hold')}
                </Button>
              </div>
            </div>
            <LineagePicture
              title={t('lineage.title', { name: own?.name ?? '' })}
              view={view}
              onOpen={({ what: kind, id }) => {
                if (kind === 'batch' || kind === 'mother')
                  void navigate({ to: '/lineage/$what/$id', params: { what: kind, id } })
              }}
            />
            <LineageLinks view={view} />
            {opened === 'hold' && (
              <HoldFamily what={what} id={params.id} name={own?.name ?? ''} onClose={() => open(null)} />
            )}
          </div>
        )
      }}
    </Asked>
  )
}
