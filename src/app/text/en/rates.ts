export const rates = {
  title: 'Rates',
  says: {
    steps:
      'What takes, step by step: the point is the rate used in the plan, the line holds nine of ten next batches. Press one to try another.',
    kinds: 'Which kind does how well in which step, with months, people and years allowed for.',
    rootstocks:
      'What takes on which rootstock in each method, with kinds, months, people and years allowed for. Where a fruit stands on one rootstock alone, the two cannot be told apart.',
    methods:
      'What takes by which method in each fruit: the first count of roots, unions or shoots, with kinds, months, people and years allowed for.',
    cultivars:
      'Which cultivar does how well in each method of its fruit, with steps, months, people and years allowed for. Where a cultivar stands on one rootstock alone, the two cannot be told apart.',
    months: 'What the month of the start does, with kinds, people and years allowed for.',
    people:
      'Who works which method how well, as if all had had the same kinds in the same years. Few counts are drawn towards the others.',
    slumps:
      'What has done worse in the last half-year than all before it let expect: the point is what came of a batch, the line holds nine of ten such batches. Press one to open it.',
  },
  findHint: 'Kind, protocol or step',
  show: { label: 'Which rates', own: 'With your records', set: 'Set by you', all: 'All' },
  empty: 'No rate fits.',
  view: {
    label: 'What to see',
    steps: 'Steps',
    kinds: 'Kinds',
    rootstocks: 'Rootstocks',
    methods: 'Methods',
    cultivars: 'Cultivars',
    months: 'Months',
    people: 'People',
    slumps: 'Slumps',
  },
  compared: {
    funnel: '{{of}}: who stands out',
    funnelOf: '{{of}}: what stands out',
    none: 'There are too few counts to compare.',
    who: 'Of',
    batches_one: '{{shown}} batch: {{survived}} of {{entered}}',
    batches_other: '{{shown}} batches: {{survived}} of {{entered}}',
    finding: {
      'hardly-chance': '{{first}} does better than {{last}}: this is hardly chance.',
      'probably-different':
        '{{first}} probably does better than {{last}} (with a chance of {{chance}}); a small part of such differences is chance.',
      'no-difference-shown':
        'No difference shown between {{first}} and {{last}}; one that matters would most likely have been seen.',
      'cannot-tell-yet':
        'Cannot tell yet between {{first}} and {{last}}: this may be chance. About {{more}} plants more would tell.',
    },
  },
  slumps: {
    none: 'Nothing does worse than before.',
    named_one: 'Doing worse than before: {{first}}',
    named_other: '{{shown}} do worse than before, first {{first}}',
    says_one:
      'Since {{since}}, {{shown}} batch: {{survived}} of {{entered}}, where {{expected}} were expected; odds {{odds}} times those before. Something is wrong with a chance of {{chance}}.',
    says_other:
      'Since {{since}}, {{shown}} batches: {{survived}} of {{entered}}, where {{expected}} were expected; odds {{odds}} times those before. Something is wrong with a chance of {{chance}}.',
    batch: '{{survived}} of {{entered}}, expected {{expected}}',
    worst: 'Shown are the batches that lost most.',
    column: { batch: 'Batch', expected: 'Expected' },
  },
  group: '{{protocol}}',
  batches_one: 'yours, {{shown}} batch: {{survived}} of {{entered}}',
  batches_other: 'yours, {{shown}} batches: {{survived}} of {{entered}}',
  assumed: 'assumed: {{basis}}',
  set: 'set by you: {{basis}}',
  overrule: 'Overrule with this',
  takeBack: 'Take back',
  takenBack: '{{step}} of {{kind}}: what was set is struck.',
  overruleTitle: 'What if another number took?',
  overruleSays:
    '{{kind}}, {{step}}. Try another rate; with a reason it overrules facts and records until you strike it.',
  tried: 'What if so many took',
  triedSays: '{{tried}} (now {{now}})',
  why: 'Why',
  kept: 'Rate set: {{step}} of {{kind}}.',
  column: {
    kind: 'Kind',
    step: 'Step',
    rate: 'Rate',
    low: 'Low',
    high: 'High',
    source: 'Source',
    entered: 'Entered',
    survived: 'Survived',
  },
  more: 'Show {{shown}} more kinds',
  anyKind: 'any kind',
} as const
