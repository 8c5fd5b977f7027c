import type { ReactNode } from 'react'
import type { Body } from '../../../record/index.ts'

/** A thing of the nursery in a list, and how it is retired. */
export interface Line {
  readonly id: string
  readonly name: string
  readonly says: ReactNode
  readonly retired: (why: string) => Body
}
