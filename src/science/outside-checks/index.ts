import { numberToStartChecks } from './number-to-start.ts'
import type { OutsideCheck } from './outside-check.ts'

/** Every check of the science against something outside the project. */
export const outsideChecks = (): readonly OutsideCheck[] => [...numberToStartChecks()]
