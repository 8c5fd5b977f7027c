import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { Button, FileTrigger } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { client } from '../../data/client.ts'
import { look } from '../../data/queries.ts'
import { deviceDay, deviceTime } from '../../data/today.ts'
import { useCarried } from '../../data/use-carried.ts'
import { Leaf } from '../../parts/leaf.tsx'
import { NurseryUnderWay } from '../../parts/nursery-under-way.tsx'
import { RefusedLine } from '../../parts/refused-line.tsx'
import { UnderWay } from '../../parts/under-way.tsx'
import { useFormat } from '../../text/use-format.tsx'

/** A backup that was saved somewhere, in the place of the nursery: asked once more, for it is another nursery from then on. */
export function PutBackup() {
  const { t } = useTranslation()
  const format = useFormat()
  const [file, setFile] = useState<File | null>(null)
  const put = useCarried(client.putBack)
  const back = useCarried(client.putBackKept, () => location.reload())
  const there = put.data
  const isBusy = put.isPending || back.isPending
  const problem = put.error ?? back.error
  const close = () => {
    if (isBusy) return
    if (put.isSuccess) location.reload()
    setFile(null)
    put.reset()
  }
  return (
    <>
      <FileTrigger acceptedFileTypes={['.budstick']} onSelect={list => setFile(list?.[0] ?? null)}>
        <Button className="plain">{t('settings.putBack.choose')}</Button>
      </FileTrigger>
      <Leaf title={t('settings.putBack.title')} isOpen={file !== null} onClose={close}>
        {there !== undefined ? (
          <div className="stack">
            <p role="status">
              {t('settings.putBack.done', {
                count: there.entries,
                shown: format.number(there.entries),
                kept: there.keptAs,
              })}
            </p>
            <p className="caution">{t('settings.putBack.backWarns')}</p>
            {problem !== null && <RefusedLine problem={problem} />}
            {back.isPending && <NurseryUnderWay says={t('settings.putBack.putting')} onStop={back.stop} />}
            {back.isStopped && <p className="soft">{t('settings.putBack.stopped')}</p>}
            <div className="row">
              <Button className="deed" isDisabled={isBusy} onPress={close}>
                {t('settings.putBack.look')}
              </Button>
              <Button className="plain" isDisabled={isBusy} onPress={() => back.start(there.kept)}>
                {t('settings.putBack.back')}
              </Button>
            </div>
          </div>
        ) : (
          <div className="stack">
            <p>{t('settings.putBack.says', { file: file?.name ?? '' })}</p>
            <p className="caution">{t('settings.putBack.warns')}</p>
            {problem !== null && <RefusedLine problem={problem} />}
            {put.isPending &&
              (put.share === null ? (
                <NurseryUnderWay says={t('settings.putBack.putting')} onStop={put.stop} />
              ) : (
                <UnderWay says={t('settings.putBack.sending')} share={put.share} onStop={put.stop} />
              ))}
            {put.isStopped && <p className="soft">{t('settings.putBack.stopped')}</p>}
            <div className="row">
              <Button className="deed" isDisabled={isBusy} onPress={() => file !== null && put.start(file)}>
                {t('settings.putBack.put')}
              </Button>
              <Button className="plain" isDisabled={isBusy} onPress={close}>
                {t('settings.putBack.leave')}
              </Button>
            </div>
          </div>
        )}
      </Leaf>
    </>
  )
}

/** The nurseries that were kept when a backup was put in their place: each stands there again by one press. */
export function KeptNurseries() {
  const { t } = useTranslation()
  const format = useFormat()
  const { data: kept } = useQuery(look.kept())
  const [putting, setPutting] = useState<string | null>(null)
  const back = useCarried(client.putBackKept, () => location.reload())
  if (kept === undefined || kept.length === 0) return null
  return (
    <div className="stack">
      <h3>{t('settings.kept.title')}</h3>
      <p className="caution">{t('settings.putBack.backWarns')}</p>
      {back.error !== null && <RefusedLine problem={back.error} />}
      <ul className="stack">
        {kept.map(({ name, at }) => {
          const when = `${format.fullDay(deviceDay(new Date(at)))}, ${deviceTime(new Date(at))}`
          return (
            <li key={name} className="row">
              <span>{t('settings.kept.one', { when })}</span>
              <Button
                className="plain"
                isDisabled={back.isPending}
                aria-label={`${t('settings.putBack.put')}: ${when}`}
                onPress={() => {
                  setPutting(name)
                  back.start(name)
                }}
              >
                {t('settings.putBack.put')}
              </Button>
              {back.isPending && putting === name && (
                <NurseryUnderWay says={t('settings.putBack.putting')} onStop={back.stop} />
              )}
            </li>
          )
        })}
      </ul>
    </div>
  )
}
