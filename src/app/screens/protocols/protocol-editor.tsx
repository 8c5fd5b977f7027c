import { Link, useNavigate } from '@tanstack/react-router'
import { useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { uuidv7 } from 'uuidv7'
import type { NurseryView } from '../../../api/index.ts'
import { copyProtocol, markOfMethod, type Protocol, ProtocolId, windowMonths } from '../../../trade/index.ts'
import { say } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { MonthsField } from '../../parts/months-field.tsx'
import { Mark } from '../../pictures/marks/mark.tsx'
import { useFormat } from '../../text/use-format.tsx'
import './protocols.css'
import { Given } from '../../parts/given.tsx'
import { useTerm } from '../../text/use-term.ts'
import { draftOf, type ProtocolDraft, readProtocol } from './protocol-draft.ts'
import { Reckoned } from './reckoned.tsx'
import { StepFields } from './step-fields.tsx'

/** A protocol being read and changed. Nothing is kept until it is asked for; the version before stays in the record. */
export function ProtocolEditor({
  protocol,
  nursery: { site, today, kinds },
}: {
  readonly protocol: Protocol
  readonly nursery: NurseryView
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const done = useDone()
  const navigate = useNavigate()
  const perArea = format.areaNumber(1)
  const isSouth = (site?.latitudeDegrees ?? 0) < 0
  const fresh = useMemo(
    () => draftOf(protocol, windowMonths(protocol.window, isSouth ? 'south' : 'north'), perArea),
    [protocol, isSouth, perArea],
  )
  const [draft, setDraft] = useState<ProtocolDraft>(fresh)
  const [copyName, setCopyName] = useState('')
  const read = useMemo(
    () => readProtocol(protocol, draft, { perArea, isSouth }),
    [protocol, draft, perArea, isSouth],
  )
  const isChanged = JSON.stringify(read.protocol) !== JSON.stringify(protocol)
  const change = (part: Partial<ProtocolDraft>) => setDraft({ ...draft, ...part })
  const usedBy = kinds.filter(({ ways }) => ways.some(way => way.protocol === protocol.id))

  const keep = async () => {
    const next = { ...read.protocol, version: protocol.version + 1 }
    const said = await say([{ kind: 'protocol-set/1', protocol: next }])
    done.tell(t('protocols.kept', { name: next.name, version: format.number(next.version) }), said)
  }
  const copy = async () => {
    const own = copyProtocol(read.protocol, { id: ProtocolId.parse(uuidv7()), name: copyName.trim() })
    const said = await say([{ kind: 'protocol-set/1', protocol: own }])
    done.tell(t('protocols.copied', { name: own.name }), said)
    if (said.kept) await navigate({ to: '/nursery' })
  }

  return (
    <>
      <div className="page-head">
        <div>
          <h1 className="row">
            <Mark mark={markOfMethod(protocol.method)} size={36} />
            {term(protocol.name)}
          </h1>
          <p className="soft">
            {t('protocols.head', {
              version: format.number(protocol.version),
              kinds:
                usedBy.length === 0 ? t('protocols.noKind') : format.list(usedBy.map(({ name }) => name)),
            })}{' '}
            <Link to="/methods/$method" params={{ method: protocol.method }} className="in-words">
              {t('methods.how')}
            </Link>
          </p>
        </div>
        <div className="row">
          <Button className="plain" isDisabled={!isChanged} onPress={() => setDraft(fresh)}>
            {t('protocols.undo')}
          </Button>
          <Button className="deed" isDisabled={!isChanged || read.wrong.size > 0} onPress={() => void keep()}>
            {t('protocols.keep', { version: format.number(protocol.version + 1) })}
          </Button>
        </div>
      </div>
      {protocol.cautions.length > 0 && (
        <div className="protocol-cautions">
          {protocol.cautions.map(caution => (
            <p key={caution} className="caution">
              <Given says={format.sentence(caution)} />
            </p>
          ))}
        </div>
      )}
      <div className="protocol-columns">
        <div className="stack">
          <section className="sheet stack">
            <div>
              <h2>{t('protocols.window')}</h2>
              <p>
                <Given says={format.sentence(protocol.window.condition)} />
              </p>
              <p className="soft small">{t('protocols.windowSays')}</p>
            </div>
            <MonthsField
              label={t('protocols.window')}
              months={draft.months}
              onChange={months => change({ months })}
            />
            <div className="form-grid">
              {(['tray', 'smallestBatch', 'usableDays'] as const).map(key => (
                <Field
                  key={key}
                  label={t(`protocols.${key}`)}
                  inputMode="numeric"
                  value={draft[key]}
                  wrong={read.wrong.has(key) ? t('protocols.wrong.whole') : undefined}
                  onChange={value => change({ [key]: value })}
                />
              ))}
            </div>
          </section>
          {protocol.steps.map(step => (
            <StepFields
              key={step.id}
              step={step}
              figures={draft.figures}
              wrong={read.wrong}
              onChange={(key, figure) => change({ figures: { ...draft.figures, [key]: figure } })}
            />
          ))}
          <form
            className="sheet stack"
            onSubmit={event => {
              event.preventDefault()
              void copy()
            }}
          >
            <div>
              <h2>{t('protocols.copyTitle')}</h2>
              <p className="soft small">{t('protocols.copySays')}</p>
            </div>
            <Field label={t('protocols.copyName')} value={copyName} onChange={setCopyName} />
            <div>
              <Button
                type="submit"
                className="plain"
                isDisabled={copyName.trim() === '' || read.wrong.size > 0}
              >
                {t('protocols.copy')}
              </Button>
            </div>
          </form>
        </div>
        <Reckoned draft={read.protocol} kept={protocol} today={today} />
      </div>
    </>
  )
}
