/** A number of a batch that is asked for the entries behind it: as `behind` names it, and in words. */
export interface Asking {
  readonly number: string
  readonly says: string
}
