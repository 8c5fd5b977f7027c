import { useMutation } from '@tanstack/react-query'
import { useState } from 'react'
import { Button, FileTrigger } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { client } from '../../data/client.ts'
import { Leaf } from '../../parts/leaf.tsx'
import { useFormat } from '../../text/use-format.tsx'

/** A backup in the place of the nursery: asked once more, for no undo on this page takes it back. */
export function PutBackup() {
  const { t } = useTranslation()
  const format = useFormat()
  const [file, setFile] = useState<File | null>(null)
  const put = useMutation({ mutationFn: client.putBack })
  const close = () => {
    if (put.isSuccess) location.reload()
    if (put.isPending) return
    setFile(null)
    put.reset()
  }
  return (
    <>
      <FileTrigger acceptedFileTypes={['.budstick']} onSelect={list => setFile(list?.[0] ?? null)}>
        <Button className="plain">{t('settings.putBack.choose')}</Button>
      </FileTrigger>
      <Leaf title={t('settings.putBack.title')} isOpen={file !== null} onClose={close}>
        {put.isSuccess ? (
          <div className="stack" role="status">
            <p>
              {t('settings.putBack.done', {
                count: put.data.entries,
                shown: format.number(put.data.entries),
                kept: put.data.keptAs,
              })}
            </p>
            <p>
              <Button className="deed" onPress={close}>
                {t('settings.putBack.look')}
              </Button>
            </p>
          </div>
        ) : (
          <div className="stack">
            <p>{t('settings.putBack.says', { file: file?.name ?? '' })}</p>
            <p className="caution">{t('settings.putBack.warns')}</p>
            {put.error !== null && (
              <p className="warn" role="alert">
                {put.error.message}
              </p>
            )}
            <div className="row">
              <Button
                className="deed"
                isDisabled={put.isPending}
                onPress={() => file !== null && put.mutate(file)}
              >
                {t(put.isPending ? 'settings.putBack.putting' : 'settings.putBack.put')}
              </Button>
              <Button className="plain" isDisabled={put.isPending} onPress={close}>
                {t('settings.putBack.leave')}
              </Button>
            </div>
          </div>
        )}
      </Leaf>
    </>
  )
}
