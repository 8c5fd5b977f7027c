export const journal = {
  title: 'Journal',
  says: 'All that was said, the newest first. What is wrong is struck, however old: it stays to be seen and counts no more. A striking can itself be struck.',
  findHint: 'Batch, person or words',
  none: 'Nothing that was said has these words.',
  looking: 'Looking further back than {{day}} …',
  lookedBack: 'Looked back to {{day}}.',
  further: 'Look further back',
  batch: 'batch {{name}}',
  order: 'order {{name}}',
} as const
