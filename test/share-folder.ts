import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { TestProject } from 'vitest/node'

declare module 'vitest' {
  interface ProvidedContext {
    /** A folder that all processes of one run of the tests know: for what is made once for all. */
    shared: string
  }
}

export default function shareFolder(project: TestProject): () => void {
  const shared = mkdtempSync(join(tmpdir(), 'shared-by-tests-'))
  project.provide('shared', shared)
  return () => rmSync(shared, { recursive: true })
}
