import { Drill } from '../../parts/drill.tsx'
import type { Asking } from './asking.ts'

/** A number of a batch that shows the entries behind it when it is asked. */
export function BatchDrill({ onAsk, ...asking }: Asking & { readonly onAsk: (asking: Asking) => void }) {
  return <Drill says={asking.says} onAsk={() => onAsk(asking)} />
}
