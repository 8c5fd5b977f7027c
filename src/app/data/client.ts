import { createClient } from '../../api/index.ts'

/** The server that served this page. */
export const client = createClient()
