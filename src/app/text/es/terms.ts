/** What records and facts say in English, in Spanish. */
export const terms: Readonly<Record<string, string>> = {}
