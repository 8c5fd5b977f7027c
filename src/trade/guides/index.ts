/** The third door of the trade: how each method is done with the hands. */
export { Drawing } from './drawing.ts'
