/** Simulated chances are known to about this much; nearer than that to the wish is as asked. */
const KNOWN_TO = 0.015

/** Less sure than was asked, beyond what the simulation can tell. */
export const isUnsure = (chance: number | null, asked: number): boolean =>
  chance !== null && chance < asked - KNOWN_TO
