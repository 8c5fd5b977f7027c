export const lineage = {
  title: 'Family of {{name}}',
  says: '{{before}} before it, {{after}} after it.',
  notShown_one: '{{shown}} further relative is not drawn.',
  notShown_other: '{{shown}} further relatives are not drawn.',
  openBatch: 'Open batch {{name}}',
  openMother: 'Open mother tree {{name}}',
  what: { mother: 'mother tree', batch: 'batch', lot: 'collected', bought: 'bought' },
  hold: 'Hold all of it',
  holdWhy: 'Why nothing of this family may leave',
  held: 'The family of {{name}} is on hold.',
  earlier: 'What it came from',
  later: 'What came of it',
} as const
