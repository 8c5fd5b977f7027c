import { useState } from 'react'
import { Button, FieldError, Input, Label, TextField } from 'react-aria-components'
import { flushSync } from 'react-dom'
import { useTranslation } from 'react-i18next'
import { uuidv7 } from 'uuidv7'
import type { Task } from '../../../planning/index.ts'
import type { BatchId } from '../../../trade/index.ts'
import { outbox } from '../../data/outbox/use-outbox.ts'
import { say } from '../../data/say.ts'
import { deviceDay } from '../../data/today.ts'
import { useNames } from '../../data/use-names.tsx'
import { whoNow } from '../../data/who.ts'
import { useDone } from '../../parts/done.tsx'
import { focusWrong } from '../../parts/focus-wrong.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'
import { deedOf, nextBatchName } from './deed.ts'
import type { TaskGround } from './task-ground.ts'

/** Asks for the number that really happened, and nothing else. */
export function TickTask({
  task,
  ground,
  onKept,
  onLeave,
}: {
  readonly task: Task
  readonly ground: TaskGround
  readonly onKept: () => void
  readonly onLeave: () => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const tell = useTell()
  const names = useNames()
  const done = useDone()
  const plannedNumber = Math.round(task.number)
  const [said, setSaid] = useState(String(plannedNumber))
  const [isTried, setTried] = useState(false)
  const number = Number(said)
  const isNumber = said.trim() !== '' && Number.isInteger(number) && number >= 0

  /** The last name that the office knew of, and those of batches begun here of which it does not know yet. */
  const namesTaken = (): readonly string[] => [
    ...(names.nursery?.lastBatchName == null ? [] : [names.nursery.lastBatchName]),
    ...outbox
      .state()
      .waiting.flatMap(({ entry: { body } }) => (body.kind === 'batch-started/1' ? [body.name] : [])),
  ]

  const keep = async (form: HTMLFormElement) => {
    if (!isNumber) {
      flushSync(() => setTried(true))
      focusWrong(form)
      return
    }
    const batch = ground.batch(task.batch)
    const noteOf = (_: Task, really: number) =>
      t('work.noteOther', {
        task: tell(task.task),
        number: format.number(really),
        planned: format.number(plannedNumber),
      })
    const bodies = deedOf(task, number, {
      start: ground.start(task.start),
      finished: ground.finished(task.kind),
      protocol: batch === undefined ? undefined : names.protocols.get(batch.protocol),
      by: whoNow(),
      newBatch: () => ({
        id: uuidv7() as BatchId,
        name: nextBatchName(namesTaken(), names.nursery?.today ?? deviceDay()),
      }),
      noteOf,
    })
    const made = await say(bodies)
    if (!made.kept) return
    done.tell(
      number === plannedNumber
        ? t('work.kept', { task: tell(task.task), number: format.number(number) })
        : t('work.keptOther', {
            task: tell(task.task),
            number: format.number(number),
            planned: format.number(plannedNumber),
          }),
      made,
    )
    onKept()
  }

  return (
    <form
      className="tick"
      onSubmit={event => {
        event.preventDefault()
        void keep(event.currentTarget)
      }}
      onKeyDown={event => event.key === 'Escape' && onLeave()}
    >
      <TextField
        className="field"
        value={said}
        onChange={setSaid}
        inputMode="numeric"
        isInvalid={isTried && !isNumber}
        autoFocus
      >
        <Label>{t('work.howMany')}</Label>
        <Input onFocus={event => event.currentTarget.select()} />
        <FieldError>{t('work.needsNumber')}</FieldError>
      </TextField>
      <Button type="submit" className="deed large">
        {t('work.keep')}
      </Button>
      <Button className="plain large" onPress={onLeave}>
        {t('work.leave')}
      </Button>
    </form>
  )
}
