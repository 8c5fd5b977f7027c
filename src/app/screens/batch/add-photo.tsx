import { useEffect, useState } from 'react'
import { Button, FileTrigger } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { sayPicture, shrunk } from '../../data/pictures.ts'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'

/** A picture of a batch, from the camera or from what is on the device. */
export function AddPhoto({ batch, name }: { readonly batch: string; readonly name: string }) {
  const { t } = useTranslation()
  const done = useDone()
  const [photo, setPhoto] = useState<{ readonly small: Blob; readonly address: string } | null>(null)
  const [caption, setCaption] = useState('')
  const [isNone, setNone] = useState(false)
  useEffect(() => () => void (photo && URL.revokeObjectURL(photo.address)), [photo])

  const choose = async (file: File | undefined) => {
    if (file === undefined) return
    const small = await shrunk(file).catch(() => null)
    setNone(small === null)
    setCaption('')
    if (small !== null) setPhoto({ small, address: URL.createObjectURL(small) })
  }
  const keep = async () => {
    if (photo === null) return
    const said = await sayPicture(batch, photo.small, caption.trim())
    if (!said.kept) return
    done.tell(t('batch.photo.kept', { name }), said)
    setPhoto(null)
  }
  return (
    <>
      <FileTrigger acceptedFileTypes={['image/*']} onSelect={list => void choose(list?.[0])}>
        <Button className="plain">{t('batch.photo.add')}</Button>
      </FileTrigger>
      {isNone && (
        <p className="warn" role="alert">
          {t('batch.photo.none')}
        </p>
      )}
      <Leaf title={t('batch.photo.title', { name })} isOpen={photo !== null} onClose={() => setPhoto(null)}>
        <form
          className="stack"
          onSubmit={event => {
            event.preventDefault()
            void keep()
          }}
        >
          {photo !== null && <img className="photo" src={photo.address} alt={t('batch.photo.taken')} />}
          <Field label={t('batch.photo.caption')} value={caption} onChange={setCaption} />
          <Button type="submit" className="deed large">
            {t('batch.photo.keep')}
          </Button>
        </form>
      </Leaf>
    </>
  )
}
