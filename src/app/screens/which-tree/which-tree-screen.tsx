import { useQueries, useQuery } from '@tanstack/react-query'
import { getRouteApi } from '@tanstack/react-router'
import { useCallback, useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { Question } from '../../../advice/index.ts'
import type { CouldBePromised } from '../../../api/index.ts'
import type { Kind } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { deviceDay } from '../../data/today.ts'
import { useFruits } from '../../data/use-fruits.ts'
import { useNames } from '../../data/use-names.tsx'
import { Choices } from '../../parts/choices.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { AnswerView } from './answer-view.tsx'
import { AskForm } from './ask-form.tsx'
import { askedInWords } from './asked-in-words.ts'
import { MakingView } from './making-view.tsx'
import { nurseryOffers } from './nursery-offers.ts'
import { linkOfQuestion, questionFromLink } from './question-link.ts'
import { ShareIt } from './share-it.tsx'
import { Tick } from './tick.tsx'
import { useAnswered } from './use-answer.ts'
import './which-tree.css'
import './ways-table.css'
import './buyers-sheet.css'
import { useTerm } from '../../text/use-term.ts'

const route = getRouteApi('/which-tree')

/** How sure a promise to a buyer is to be. */
const SURE = 0.8
/** Kinds of a fruit that are asked about, one by one: each is a look at the whole plan. */
const KINDS_AT_ONCE = 6
/** Asked of first where the nursery makes nothing that the facts know. */
const USUAL_FRUIT = 'apple'
const none: readonly CouldBePromised[] = []

/** What the plan could promise of the kinds of a fruit; nothing while there is no plan. */
const usePromises = (kinds: readonly Kind[], trees: number): readonly CouldBePromised[] =>
  useQueries({
    queries: kinds.slice(0, KINDS_AT_ONCE).map(({ id }) => ({
      ...look.promise({ kind: id, number: trees, sure: SURE }),
      retry: false,
      staleTime: 60_000,
    })),
    combine: asked => {
      const known = asked.flatMap(({ data }) => (data === undefined ? [] : [data]))
      return known.length === 0 ? none : known
    },
  })

/** Which tree for a buyer, and which way for the nursery. */
export function WhichTreeScreen() {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const { nursery } = useNames()
  const fruits = useFruits()
  const { data: batches } = useQuery(look.batchesAlive())
  const { data: rates } = useQuery(look.rates())
  const search = route.useSearch()
  const { view = 'buyer', only } = search
  const navigate = route.useNavigate()
  const [isAsking, setAsking] = useState(false)

  const first = useMemo(
    () =>
      nursery?.kinds.find(({ species, form }) => form !== 'rootstock' && fruits.byId(species) !== undefined)
        ?.species ?? USUAL_FRUIT,
    [nursery, fruits],
  )
  const asked = useMemo(() => {
    const said = questionFromLink(search, first)
    return fruits.byId(said.species) === undefined
      ? questionFromLink({ ...search, fruit: first }, first)
      : said
  }, [search, first, fruits])
  const species = fruits.byId(asked.species)!
  const trees = asked.amount.kind === 'trees' ? asked.amount.trees : 1
  const promises = usePromises(
    nursery?.kinds.filter(({ species, form }) => species === asked.species && form !== 'rootstock') ?? [],
    trees,
  )
  const offers = useMemo(
    () =>
      nurseryOffers(
        { species, trees, cultivar: asked.wanted === 'named' ? asked.cultivar : '' },
        nursery?.kinds ?? [],
        batches ?? [],
        promises,
      ),
    [asked, species, trees, nursery, batches, promises],
  )
  const question = useMemo<Question>(
    () => ({ ...asked, offers, onlyOffered: only === 'offered' && offers.length > 0 }),
    [asked, offers, only],
  )
  const answered = useAnswered(question, species)
  const ask = useCallback(
    (next: Question) =>
      void navigate({
        search: was => ({ ...linkOfQuestion(next, false), view: was.view, only: was.only }),
        replace: true,
        resetScroll: false,
      }),
    [navigate],
  )
  const worth = answered.answer.assumptions.find(({ key }) => key === 'fruitWorthPerKg')?.figure.typical ?? 1
  return (
    <div className="stack which-tree">
      <div className="page-head">
        <div>
          <h1>
            <span className="on-screen">{t('whichTree.title')}</span>
            <span className="on-paper">
              {t('whichTree.sheet.title', { fruit: term(species.commonName) })}
            </span>
          </h1>
          <p className="soft on-screen">{t('whichTree.says')}</p>
          <p className="on-paper">
            {[nursery?.site?.name, t('whichTree.sheet.made', { day: format.fullDay(deviceDay()) })]
              .filter(Boolean)
              .join('. ')}
            . {t('whichTree.sheet.asked')}: {askedInWords(question, t, format)}.
          </p>
        </div>
        <Choices
          label={t('whichTree.view.label')}
          value={view}
          options={(['buyer', 'nursery'] as const).map(id => ({ id, name: t(`whichTree.view.${id}`) }))}
          onPick={id =>
            void navigate({
              search: was => ({ ...was, view: id === 'buyer' ? undefined : id }),
              replace: true,
            })
          }
        />
      </div>
      <div className={view === 'nursery' ? 'which-tree-columns making' : 'which-tree-columns'}>
        <div className={isAsking ? 'which-tree-ask asking' : 'which-tree-ask'}>
          <Button
            className="plain wide ask-toggle"
            aria-expanded={isAsking}
            onPress={() => setAsking(!isAsking)}
          >
            {t(isAsking ? 'whichTree.askDone' : 'whichTree.askChange')}
          </Button>
          <p className="soft small ask-toggle">
            {term(species.commonName)}: {askedInWords(question, t, format)}
          </p>
          <AskForm
            key={question.species}
            question={question}
            fruits={fruits}
            worthPerKg={worth}
            isMaker={view === 'nursery'}
            onAsk={ask}
          />
          {offers.length > 0 && view === 'buyer' && (
            <Tick
              isOn={only === 'offered'}
              onTick={on =>
                void navigate({
                  search: was => ({ ...was, only: on ? ('offered' as const) : undefined }),
                  replace: true,
                })
              }
            >
              {t('whichTree.onlyOffered')}
            </Tick>
          )}
        </div>
        {view === 'nursery' ? (
          nursery !== undefined && (
            <MakingView species={species} nursery={nursery} rates={rates ?? []} format={format} />
          )
        ) : (
          <div className="stack">
            <AnswerView {...answered} format={format} onAsk={ask} />
            <ShareIt {...answered} units={format.units} />
            <p className="on-paper small">{t('whichTree.sheet.estimate')}</p>
          </div>
        )}
      </div>
    </div>
  )
}
