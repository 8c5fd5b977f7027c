import { countsChecks } from './counts.ts'
import { numberToStartChecks } from './number-to-start.ts'
import type { OutsideCheck } from './outside-check.ts'

/** Every check of the science against something outside the project, one list a subject. */
export const outsideChecks = (): readonly OutsideCheck[] => [...numberToStartChecks(), ...countsChecks()]
