export { type Client, createClient, Refused } from './client.ts'
export * from './shapes.ts'
