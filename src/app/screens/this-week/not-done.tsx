import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { deedOf, type Entry } from '../../../record/index.ts'
import { outbox } from '../../data/outbox/use-outbox.ts'
import { painted } from '../../data/painted.ts'
import { strike } from '../../data/say.ts'
import { struckHere } from '../../data/struck-here.ts'
import { deedsDone } from '../../data/task-deeds.ts'
import { useDone } from '../../parts/done.tsx'
import { isTaskDone } from './done-here.ts'

/** Takes back that tasks are done, with all that was said in the same deed: days later too, and from another device. */
export function NotDone({ tasks, name }: { readonly tasks: readonly string[]; readonly name: string }) {
  const { t } = useTranslation()
  const done = useDone()
  /** Gone with what was done, it gives the focus to what is to be done again. */
  const takeBack = async (line: Element | null) => {
    const deeds = await deedsOf(tasks).catch(() => null)
    if (deeds === null) return done.tell(t('work.notDoneAway', { task: name }))
    const said = await strike(deeds, t('work.notDone'))
    done.tell(t('work.notDoneKept', { task: name }), said)
    await painted()
    line?.querySelector<HTMLElement>('.task-tick')?.focus()
  }
  return (
    <Button
      className="quiet"
      aria-label={t('work.notDoneLabel', { task: name })}
      onPress={({ target }) => void takeBack(target.closest('.task'))}
    >
      {t('work.notDone')}
    </Button>
  )
}

/** The entries of the deeds, the last first: of what was done here lately as this device knows it, of the rest as the office does or did. */
async function deedsOf(tasks: readonly string[]): Promise<readonly string[]> {
  const { lately, waiting } = outbox.state()
  const newest = [...lately, ...waiting.map(({ entry }) => entry)].toReversed()
  const struck = struckHere(newest.toReversed())
  const here = new Map<string, readonly Entry[]>()
  for (const [at, entry] of newest.entries())
    if (isTaskDone(entry.body) && !struck.has(entry.id) && !here.has(entry.body.task))
      here.set(entry.body.task, deedOf(entry, newest.slice(at + 1)))
  const elsewhere = tasks.filter(task => !here.has(task))
  const local = tasks.flatMap(task => here.get(task)?.map(({ id }) => id) ?? []).filter(id => !struck.has(id))
  return [...local, ...(elsewhere.length === 0 ? [] : await deedsDone(elsewhere))]
}
