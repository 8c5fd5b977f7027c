import { useQuery } from '@tanstack/react-query'
import { getRouteApi, Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { AffectedView } from '../../../api/index.ts'
import { client } from '../../data/client.ts'
import { look } from '../../data/queries.ts'
import { Asked } from '../../parts/asked.tsx'
import { FileLink } from '../../parts/file-link.tsx'
import { HoldList } from '../../parts/hold-list.tsx'
import { useOpened } from '../../parts/use-opened.ts'
import { useFormat } from '../../text/use-format.tsx'
import './affected.css'
import { Carriers } from './carriers.tsx'
import { HoldFamily } from './hold-family.tsx'
import { Letters } from './letters.tsx'
import { WiderCircle } from './wider-circle.tsx'

const route = getRouteApi('/lineage/$what/$id/affected')

/** Something was found in a tree: where it may have got to, who has of it, and one hold that stops it all. */
export function AffectedScreen() {
  const { t } = useTranslation()
  const params = route.useParams()
  const what = params.what === 'mother' ? 'mother' : 'batch'
  const affected = useQuery(look.affected(what, params.id))
  return (
    <Asked query={affected} what={t('lineage.affected.open')}>
      {view => <Shown view={view} />}
    </Asked>
  )
}

function Shown({ view }: { readonly view: AffectedView }) {
  const { t } = useTranslation()
  const format = useFormat()
  const [opened, open] = useOpened()
  const { what, id, name } = view.of
  const isHeld = view.holds.some(hold => hold.what === 'lineage' && hold.of.id === id)
  const sum = (number: (carrier: AffectedView['carriers'][number]) => number) =>
    format.number(view.carriers.reduce((total, carrier) => total + number(carrier), 0))
  return (
    <div className="stack">
      <div className="page-head">
        <div>
          <h1>{t('lineage.affected.title', { name })}</h1>
          <p>
            {view.carriers.length === 0
              ? t('lineage.affected.nothing')
              : t('lineage.affected.says', {
                  batches: t('common.batches', {
                    count: view.carriers.length,
                    shown: format.number(view.carriers.length),
                  }),
                  alive: sum(({ alive }) => alive),
                  sent: sum(({ sent }) => sent),
                })}
          </p>
        </div>
        <div className="row">
          {!isHeld && (
            <Button className="deed" onPress={() => open('hold')}>
              {t('lineage.hold')}
            </Button>
          )}
          <Link to="/lineage/$what/$id" params={{ what, id }} className="plain">
            {t('lineage.affected.family')}
          </Link>
        </div>
      </div>
      {view.holds.length > 0 && (
        <section className="sheet">
          <h2>{t('holds.title')}</h2>
          <HoldList holds={view.holds} />
          <p className="soft small">
            {t('lineage.affected.plan')}{' '}
            <Link to="/season" className="in-words">
              {t('lineage.affected.season')}
            </Link>
          </p>
        </section>
      )}
      <div className="row">
        <FileLink className="plain" href={client.downloads.family(what, id, 'family.csv')}>
          {t('lineage.affected.table')}
        </FileLink>
        <FileLink className="plain" href={client.downloads.family(what, id, 'letters.csv')}>
          {t('lineage.affected.letters')}
        </FileLink>
        <FileLink className="plain" href={client.downloads.family(what, id, 'nearby.csv')}>
          {t('lineage.affected.nearby')}
        </FileLink>
      </div>
      <Letters view={view} />
      <Carriers view={view} />
      <WiderCircle view={view} />
      {opened === 'hold' && <HoldFamily what={what} id={id} name={name} onClose={() => open(null)} />}
    </div>
  )
}
