export const holds = {
  title: 'Holds',
  stands: 'On hold since {{day}}{{by}}: {{why}}',
  by: ' by {{person}}',
  of: {
    mother: 'Mother tree {{name}}',
    batch: 'Batch {{name}}',
    bench: 'Bench {{name}}',
    lineage: '{{name}} and all that came from it',
  },
  wasReleased: 'Released {{day}}{{by}}: {{why}}',
  release: 'Release',
  releaseTitle: 'Release the hold on {{name}}',
  releaseWhy: 'Why it may go on',
  released: 'The hold on {{name}} is released.',
  none: 'Nothing is on hold.',
  history: 'Released holds',
  need: 'Write why.',
} as const
