import { createRoute, z } from '@hono/zod-openapi'
import { PersonId } from '../../trade/index.ts'
import {
  AcceptedReading,
  BroughtRow,
  EmptySheet,
  KeptNursery,
  Mapping,
  PutBack,
  Reading,
  TakenBack,
} from '../exchange-shapes.ts'
import { Refusal } from '../shapes.ts'

const json = <S extends z.ZodType>(schema: S, description: string) => ({
  content: { 'application/json': { schema } },
  description,
})
const refused = json(Refusal, 'Refused: what is wrong, where, and how to mend it')
const file = (type: string, description: string) => ({
  content: { [type]: { schema: z.any().openapi({ type: 'string', format: 'binary' }) } },
  description,
})

/** Files in and out. What is read is looked at before anything of it is written. */
export const exchangeRoutes = {
  readFiles: createRoute({
    method: 'post',
    path: '/api/exchange/read',
    request: {
      body: {
        content: {
          'multipart/form-data': {
            schema: z.object({
              files: z.any().openapi({
                type: 'array',
                items: { type: 'string', format: 'binary' },
                description: 'Spreadsheets: CSV, TSV or XLSX',
              }),
              mapping: z
                .string()
                .optional()
                .openapi({ description: 'What the user says of the sheets, as JSON' }),
            }),
          },
        },
        required: true,
      },
    },
    responses: {
      200: json(Reading, 'What the files say; nothing is written yet'),
      400: refused,
      413: refused,
    },
  }),
  readAgain: createRoute({
    method: 'post',
    path: '/api/exchange/read/{id}',
    request: {
      params: z.object({ id: z.string() }),
      body: { content: { 'application/json': { schema: z.object({ mapping: Mapping }) } }, required: true },
    },
    responses: { 200: json(Reading, 'The same files, read as the user says'), 404: refused },
  }),
  acceptReading: createRoute({
    method: 'post',
    path: '/api/exchange/accept',
    request: {
      body: {
        content: {
          'application/json': {
            schema: z.object({ reading: z.string(), by: z.string().nullable().default(null) }),
          },
        },
        required: true,
      },
    },
    responses: {
      200: json(AcceptedReading, 'What was written, and how the sheets were mapped is remembered'),
      404: refused,
      409: refused,
    },
  }),
  broughtIn: createRoute({
    method: 'get',
    path: '/api/exchange/brought',
    responses: { 200: json(z.array(BroughtRow), 'What was brought in from spreadsheets, the latest first') },
  }),
  takeBack: createRoute({
    method: 'post',
    path: '/api/exchange/brought/{id}/strike',
    request: {
      params: z.object({ id: z.string() }),
      body: {
        content: { 'application/json': { schema: z.object({ by: PersonId.nullable().default(null) }) } },
        required: true,
      },
    },
    responses: {
      200: json(
        TakenBack,
        'Each entry that was brought in is struck, but for those on which later ones rest',
      ),
      404: refused,
    },
  }),
  emptySheets: createRoute({
    method: 'get',
    path: '/api/exchange/sheets',
    responses: { 200: json(z.array(EmptySheet), 'The sheets that can be saved empty, with their fields') },
  }),
  emptySheet: createRoute({
    method: 'get',
    path: '/api/exchange/sheets/{file}',
    request: {
      params: z.object({
        file: z
          .string()
          .openapi({ description: 'orders.csv, orders.xlsx, all.xlsx', example: 'orders.xlsx' }),
      }),
    },
    responses: {
      200: file('application/octet-stream', 'Headers and one example'),
      404: refused,
    },
  }),
  exportEntries: createRoute({
    method: 'get',
    path: '/api/exchange/export',
    responses: { 200: file('application/x-ndjson', 'The whole record: one entry a line, as JSON') },
  }),
  exportPackage: createRoute({
    method: 'get',
    path: '/api/exchange/export/{file}',
    request: {
      params: z.object({
        file: z.string().openapi({
          description: 'datapackage.json (which describes the others), entries.jsonl, or a table by name',
          example: 'orders.csv',
        }),
      }),
    },
    responses: { 200: file('application/octet-stream', 'One file of the data package'), 404: refused },
  }),
  restore: createRoute({
    method: 'post',
    path: '/api/restore',
    request: {
      body: {
        content: {
          'application/octet-stream': { schema: z.any().openapi({ type: 'string', format: 'binary' }) },
        },
        required: true,
      },
    },
    responses: {
      200: json(PutBack, 'The backup stands in the place of the nursery, which is kept as a backup itself'),
      422: refused,
    },
  }),
  kept: createRoute({
    method: 'get',
    path: '/api/kept',
    responses: {
      200: json(z.array(KeptNursery), 'Nurseries kept when another was put in their place, the latest first'),
    },
  }),
  restoreKept: createRoute({
    method: 'post',
    path: '/api/kept/{name}/restore',
    request: { params: z.object({ name: z.string() }) },
    responses: {
      200: json(
        PutBack,
        'The kept nursery stands in its place again, and what was there is kept in its turn',
      ),
      404: refused,
      422: refused,
    },
  }),
  beginOwn: createRoute({
    method: 'post',
    path: '/api/own-nursery',
    responses: {
      200: json(PutBack, 'The invented nursery is kept as a backup, and an empty one stands in its place'),
      409: refused,
    },
  }),
  openInvented: createRoute({
    method: 'post',
    path: '/api/invented-nursery',
    responses: {
      200: json(PutBack, 'The invented nursery stands here, and the empty one of before is kept as a backup'),
      409: refused,
    },
  }),
  backup: createRoute({
    method: 'get',
    path: '/api/backup',
    responses: {
      200: file('application/octet-stream', 'The whole nursery in one file, for budstick restore'),
    },
  }),
} as const
