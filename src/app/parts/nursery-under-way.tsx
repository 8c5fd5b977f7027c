import { useHowFar } from '../data/use-how-far.ts'
import { useTell } from '../text/use-tell.ts'
import { UnderWay } from './under-way.tsx'

/** How far the server is with another nursery in the place of this one; stopped before it is there, all is as it was. */
export function NurseryUnderWay({ says, onStop }: { readonly says: string; readonly onStop: () => void }) {
  const tell = useTell()
  const progress = useHowFar('backup', true)
  return (
    <UnderWay
      says={progress === null ? says : tell(progress.says)}
      share={progress?.share ?? null}
      onStop={progress?.share === 1 ? undefined : onStop}
    />
  )
}
