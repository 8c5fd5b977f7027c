export { type Client, createClient, Refused } from './client.ts'
export * from './exchange-shapes.ts'
export * from './shapes.ts'
