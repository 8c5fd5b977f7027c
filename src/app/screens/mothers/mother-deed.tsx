import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { MotherView } from '../../../api/index.ts'
import type { Body } from '../../../record/index.ts'
import { say } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'

const DONE = {
  observe: 'mothers.observed',
  hold: 'mothers.held',
  retire: 'mothers.retiredDone',
} as const
const ASKS = { observe: 'mothers.health', hold: 'mothers.holdWhy', retire: 'mothers.retireWhy' } as const

/** Says what a mother tree looks like, or stops it from giving. */
export function MotherDeed({
  view: {
    row: { mother },
  },
  deed,
  onClose,
}: {
  readonly view: MotherView
  readonly deed: 'observe' | 'hold' | 'retire'
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const done = useDone()
  const [words, setWords] = useState('')
  const [bbch, setBbch] = useState('')
  const [isShort, setShort] = useState(false)
  const isGood =
    deed !== 'observe'
      ? words.trim() !== ''
      : (bbch === '' || /^\d\d$/.test(bbch)) && (words.trim() !== '' || bbch !== '')

  const keep = async () => {
    if (!isGood) return setShort(true)
    const body: Body =
      deed === 'retire'
        ? { kind: 'mother-retired/1', mother: mother.id, why: words.trim() }
        : deed === 'hold'
          ? { kind: 'hold-placed/1', on: { what: 'mother', mother: mother.id }, why: words.trim() }
          : {
              kind: 'mother-observed/1',
              mother: mother.id,
              bbch: bbch === '' ? null : bbch,
              health: words.trim(),
            }
    const said = await say([body])
    if (!said.kept) return
    done.tell(t(DONE[deed], { name: mother.name }), said)
    onClose()
  }
  return (
    <Leaf title={`${mother.name}: ${t(`mothers.${deed}`)}`} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          void keep()
        }}
      >
        {deed === 'observe' && (
          <Field label={t('mothers.bbch')} inputMode="numeric" value={bbch} onChange={setBbch} />
        )}
        <Field
          label={t(ASKS[deed])}
          {...(deed === 'observe' ? { placeholder: t('mothers.healthHint') } : {})}
          value={words}
          onChange={setWords}
        />
        {isShort && !isGood && (
          <p className="warn" role="alert">
            {t(deed === 'observe' ? 'mothers.need' : 'holds.need')}
          </p>
        )}
        <Button type="submit" className="deed large">
          {t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
