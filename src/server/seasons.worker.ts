import { parentPort } from 'node:worker_threads'
import { takeRuns } from '../planning/index.ts'

/** A thread that takes a hand in simulating seasons. */
if (parentPort) takeRuns(parentPort)
